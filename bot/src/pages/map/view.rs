//! The part of the world that a map shows, and where things are on it.
//!
//! Takes coordinates; gives pixels, a graticule of round degrees and a scale bar of a round length.

/// Size of the map. Units: px.
pub const WIDE: f64 = 720.0;
const TALL_LEAST: f64 = 260.0;
const TALL_MOST: f64 = 520.0;
/// Room around the outermost households. Units: px.
const MARGIN: f64 = 48.0;
/// Least part of the world that is shown across: a town's surroundings. Units: °. Source: our choice.
const LEAST_DEG: f64 = 0.4;
/// Mean over the globe. Units: km.
const KM_PER_DEG: f64 = 111.2;

/// A level map, true to scale at its middle.
#[derive(Debug, Clone, Copy)]
pub struct View {
    west: f64,
    north: f64,
    /// Units: px/°.
    per_east: f64,
    per_north: f64,
    pub tall: f64,
}

impl View {
    /// Around points of longitude and latitude; none without any. Units: °.
    pub fn around(points: impl Iterator<Item = (f64, f64)>) -> Option<View> {
        let ends = points.fold(None, |ends: Option<[f64; 4]>, (east, north)| {
            let [west, south, to_east, to_north] = ends.unwrap_or([east, north, east, north]);
            Some([west.min(east), south.min(north), to_east.max(east), to_north.max(north)])
        });
        let [west, south, east, north] = ends?;
        let (middle_east, middle_north) = ((west + east) / 2.0, (south + north) / 2.0);
        let narrow = middle_north.to_radians().cos().max(0.2);
        let (across, along) = ((east - west).max(LEAST_DEG), (north - south).max(LEAST_DEG / 2.0));
        let per_north = ((WIDE - 2.0 * MARGIN) / (across * narrow)).min((TALL_MOST - 2.0 * MARGIN) / along);
        let per_east = per_north * narrow;
        let tall = (along * per_north + 2.0 * MARGIN).clamp(TALL_LEAST, TALL_MOST);
        Some(View {
            west: middle_east - WIDE / 2.0 / per_east,
            north: middle_north + tall / 2.0 / per_north,
            per_east,
            per_north,
            tall,
        })
    }

    /// Where a place is. Units: ° in, px out.
    pub fn at(&self, east: f64, north: f64) -> (f64, f64) {
        ((east - self.west) * self.per_east, (self.north - north) * self.per_north)
    }

    /// Whether a stroke between two points may be seen.
    pub fn may_cross(&self, from: (f64, f64), to: (f64, f64)) -> bool {
        from.0.max(to.0) >= 0.0
            && from.0.min(to.0) <= WIDE
            && from.1.max(to.1) >= 0.0
            && from.1.min(to.1) <= self.tall
            // A border along the date line is no border.
            && (from.0 - to.0).abs() < 180.0 * self.per_east
    }

    /// Meridians and parallels at round degrees: where, and how they are named.
    pub fn graticule(&self) -> (Vec<(f64, String)>, Vec<(f64, String)>) {
        let step = round_down(220.0 / self.per_north);
        let digits = usize::from(step < 1.0);
        let name = |deg: f64, plus: char, minus: char| {
            let side = if deg < 0.0 { minus } else { plus };
            format!("{:.digits$}° {side}", deg.abs())
        };
        let lines = |first: f64, last: f64| {
            let from = (first / step).ceil() as i64;
            (from..from + 40).map(move |n| n as f64 * step).take_while(move |deg| *deg <= last)
        };
        let east = lines(self.west, self.west + WIDE / self.per_east);
        let north = lines(self.north - self.tall / self.per_north, self.north);
        (
            east.map(|deg| (self.at(deg, 0.0).0, name(deg, 'E', 'W'))).collect(),
            north.map(|deg| (self.at(0.0, deg).1, name(deg, 'N', 'S'))).collect(),
        )
    }

    /// Length and name of the scale bar. Units: px.
    pub fn scale(&self) -> (f64, String) {
        let km = round_down(160.0 / self.per_north * KM_PER_DEG);
        (km / KM_PER_DEG * self.per_north, format!("{km} km"))
    }
}

/// The next of 1, 2, 5, 10, 20, ... (and their tenths) that is not more.
fn round_down(value: f64) -> f64 {
    let power = 10_f64.powf(value.max(1e-6).log10().floor());
    let lead = [5.0, 2.0, 1.0].into_iter().find(|lead| lead * power <= value).unwrap_or(1.0);
    // Off by a bit after powers of a tenth, and these are shown.
    (lead * power * 1e6).round() / 1e6
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn north_is_up_east_is_right_and_all_is_within() {
        for points in [vec![(34.75, -0.1)], vec![(34.75, -0.1), (36.8, -1.3)], vec![(-170.0, 60.0), (170.0, -40.0)]] {
            let view = View::around(points.iter().copied()).expect("points");
            for (east, north) in &points {
                let (x, y) = view.at(*east, *north);
                assert!((0.0..=WIDE).contains(&x) && (0.0..=view.tall).contains(&y), "{points:?}: {x} {y}");
            }
            let (x, y) = view.at(points[0].0, points[0].1);
            assert!(view.at(points[0].0 + 0.1, points[0].1).0 > x && view.at(points[0].0, points[0].1 + 0.1).1 < y);
        }
        assert!(View::around(std::iter::empty()).is_none());
    }

    /// 2° of longitude at the equator are 222 km.
    #[test]
    fn the_scale_bar_is_as_long_as_it_says() {
        let view = View::around([(34.0, 0.0), (36.0, 0.0)].into_iter()).expect("points");
        let (long, named) = view.scale();
        let km: f64 = named.strip_suffix(" km").expect("in km").parse().expect("a number");
        let two_degrees = view.at(36.0, 0.0).0 - view.at(34.0, 0.0).0;
        assert!((long / km - two_degrees / 222.4).abs() < 1e-3, "{long} for {named}");
        assert_eq!([0.3, 7.0, 49.0, 0.05].map(round_down), [0.2, 5.0, 20.0, 0.05]);
    }
}
