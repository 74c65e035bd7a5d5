//! Coasts and borders for the plain outline behind the map (`bot/data/README.md` names their source).
//!
//! Takes the part of the world that is shown; gives one path, coarse enough for a cheap phone.

use super::view::View;
use std::fmt::Write;
use std::io::Read;
use std::sync::LazyLock;

type Line = Vec<(f64, f64)>;

/// Longitude and latitude along each line. Units: °.
static LINES: LazyLock<Vec<Line>> =
    LazyLock::new(|| read(include_bytes!("../../../data/borders.txt.gz")).expect("the test reads the same bytes"));

fn read(packed: &[u8]) -> Option<Vec<Line>> {
    let mut text = String::new();
    flate2::read::GzDecoder::new(packed).read_to_string(&mut text).ok()?;
    text.lines()
        .map(|line| {
            let steps: Option<Vec<f64>> = line.split(' ').map(|step| step.parse().ok()).collect();
            let (mut east, mut north) = (0.0, 0.0);
            let steps = steps?;
            let points = steps.chunks_exact(2).map(|step| {
                (east, north) = (east + step[0], north + step[1]);
                (east / 100.0, north / 100.0)
            });
            Some(points.collect())
        })
        .collect()
}

/// Longest path. Units: bytes. Source: our choice.
const PATH_MOST: usize = 12_000;

/// The borders in view, as the `d` of a path. The less is shown, the finer.
pub fn path(view: &View) -> String {
    let mut coarse = 1.0;
    loop {
        let path = drawn(view, coarse);
        if path.len() <= PATH_MOST {
            return path;
        }
        coarse *= 2.0;
    }
}

/// Points nearer than `coarse` to the one before are left out. Units: px.
fn drawn(view: &View, coarse: f64) -> String {
    let mut path = String::new();
    for line in LINES.iter() {
        let mut pen: Option<(f64, f64)> = None;
        for (n, ends) in line.windows(2).enumerate() {
            let (from, to) = (view.at(ends[0].0, ends[0].1), view.at(ends[1].0, ends[1].1));
            if !view.may_cross(from, to) {
                pen = None;
                continue;
            }
            if pen.is_none() {
                let _ = write!(path, "M{:.0},{:.0}", from.0, from.1);
                pen = Some(from);
            }
            let last = n + 2 == line.len();
            if let Some(pen) = pen.as_mut().filter(|pen| last || (to.0 - pen.0).hypot(to.1 - pen.1) >= coarse) {
                let _ = write!(path, "L{:.0},{:.0}", to.0, to.1);
                *pen = to;
            }
        }
    }
    path
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_borders_read_and_a_path_is_never_too_long() {
        assert!(LINES.len() > 500);
        assert!(LINES.iter().flatten().all(|(east, north)| east.abs() <= 180.0 && north.abs() <= 90.0));
        let world = View::around([(-170.0, -50.0), (170.0, 75.0)].into_iter()).expect("two points");
        let lake = View::around([(33.5, -1.0), (35.5, 0.5)].into_iter()).expect("two points");
        let (world, lake) = (path(&world), path(&lake));
        assert!((2_000..=PATH_MOST).contains(&world.len()), "{}", world.len());
        assert!(!lake.is_empty() && lake.len() < 2_000, "{lake}");
    }
}
