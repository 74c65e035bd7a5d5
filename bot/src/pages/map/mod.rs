//! Map: the households of today's page by place, as SVG that needs neither tiles nor scripts.
//!
//! Takes households in the order of need; gives a drawing in which each mark tells its need by shape as well as by
//! colour and leads to its household. Many households are drawn as bundles that lead to a nearer look.

mod borders;
mod view;

use super::Tongue;
use super::need::Need;
use super::today::Placed;
use super::tongue::counted;
use crate::places;
use crate::staff::name_of;
use crate::store::Seen;
use askama::filters::{Html, escape};
use std::collections::BTreeMap;
use std::fmt::{Display, Write};
use std::sync::Mutex;
use view::{View, WIDE};

/// Marks of single households; more are bundled. Source: our choice, for the page's weight.
const MARKS_MOST: usize = 120;
/// Side of the square whose households make one bundle. Units: px.
const BUNDLE: f64 = 64.0;
/// Households nearer than this are set around their middle. Units: px.
const NEAR: f64 = 18.0;
/// Between marks that are set around a middle. Units: px.
const APART: f64 = 17.0;

/// A drawing and what is not on it.
pub struct Map {
    pub svg: String,
    pub title: String,
    /// Shapes and the needs that they stand for.
    pub legend: Vec<(String, &'static str, String)>,
    /// Of households without a known place, or beyond what can be shown; empty if there are none.
    pub beside: Vec<String>,
}

/// The part of the world that was asked for: west, south, east, north. Units: °.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Within([f64; 4]);

/// Coordinates are known to about a kilometre. Units: °.
const ROUNDED: f64 = 0.005;

impl Within {
    /// Of four numbers with commas between.
    pub fn read(typed: &str) -> Option<Within> {
        let ends: Vec<f64> = typed.split(',').map(|part| part.trim().parse().ok()).collect::<Option<_>>()?;
        let ends: [f64; 4] = ends.try_into().ok()?;
        ends.iter().all(|end| end.is_finite()).then_some(Within(ends))
    }

    pub fn holds(&self, seen: &Seen) -> bool {
        let Within([west, south, east, north]) = self;
        spot(seen).is_some_and(|(x, y)| {
            x >= west - ROUNDED && x <= east + ROUNDED && y >= south - ROUNDED && y <= north + ROUNDED
        })
    }
}

impl Display for Within {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let Within([west, south, east, north]) = self;
        write!(f, "{west:.2},{south:.2},{east:.2},{north:.2}")
    }
}

/// Longitude and latitude of a household's town, where it told one that is known.
fn spot(seen: &Seen) -> Option<(f64, f64)> {
    type Known = BTreeMap<(String, Option<String>), Option<(f64, f64)>>;
    /// A name with a slip in it is looked for among all towns, which takes too long to do anew for each page.
    static KNOWN: Mutex<Known> = Mutex::new(BTreeMap::new());
    const KNOWN_MOST: usize = 20_000;
    if seen.place.is_empty() {
        return None;
    }
    let key = (seen.place.clone(), seen.household.country.clone());
    let mut known = KNOWN.lock().unwrap_or_else(|poisoned| poisoned.into_inner());
    if let Some(spot) = known.get(&key) {
        return *spot;
    }
    let found = places::find(&seen.place, seen.household.country.as_deref());
    let spot = found.map(|found| (found.place.normals.longitude_deg, found.place.normals.latitude_deg));
    if known.len() >= KNOWN_MOST {
        known.clear();
    }
    known.insert(key, spot);
    spot
}

/// A household that can be drawn.
struct Mark<'a> {
    placed: &'a Placed,
    spot: (f64, f64),
    at: (f64, f64),
}

/// The map of some households, the most pressing first. None when nobody's place is known. `need` narrows the lists
/// that bundles lead to.
pub fn drawn(tongue: &Tongue, placed: &[Placed], need: &str) -> Option<Map> {
    let spots: Vec<((f64, f64), &Placed)> =
        placed.iter().filter_map(|placed| Some((spot(&placed.seen)?, placed))).collect();
    let view = View::around(spots.iter().map(|(spot, _)| *spot))?;
    let marks: Vec<Mark> =
        spots.iter().map(|(spot, placed)| Mark { placed, spot: *spot, at: view.at(spot.0, spot.1) }).collect();
    let one_place = marks.iter().all(|mark| mark.spot == marks[0].spot);
    let single = marks.len() <= MARKS_MOST || one_place;
    let mut svg = ground(&view);
    if single {
        singles(&mut svg, tongue, &view, &marks[..marks.len().min(MARKS_MOST)]);
    } else {
        bundles(&mut svg, tongue, &marks, need);
    }
    svg.push_str("</svg>");
    let beside = [
        ("map-unplaced", placed.len() - marks.len()),
        ("map-more", if single { marks.len().saturating_sub(MARKS_MOST) } else { 0 }),
    ];
    Some(Map {
        svg,
        title: tongue.count("map-title", marks.len()),
        legend: Need::ALL
            .iter()
            .filter(|need| placed.iter().any(|placed| placed.need == **need))
            .map(|need| {
                let drawn = format!(
                    "<svg class=\"map-key\" viewBox=\"-10 -10 20 20\" aria-hidden=\"true\">{}</svg>",
                    shape(*need, 0.0, 0.0)
                );
                (drawn, need.class(), need.label(tongue))
            })
            .collect(),
        beside: beside.into_iter().filter(|(_, n)| *n > 0).map(|(id, n)| tongue.count(id, n)).collect(),
    })
}

/// Outline, graticule and scale, below all marks.
fn ground(view: &View) -> String {
    let tall = view.tall;
    let mut svg = format!("<svg class=\"map\" viewBox=\"0 0 {WIDE} {tall:.0}\" role=\"group\">");
    let (meridians, parallels) = view.graticule();
    svg.push_str("<g aria-hidden=\"true\">");
    for (x, name) in &meridians {
        let _ = write!(
            svg,
            "<path class=\"grid\" d=\"M{x:.0},0V{tall:.0}\"/><text x=\"{:.0}\" y=\"12\">{name}</text>",
            x + 3.0
        );
    }
    // The names of the meridians stand along the upper edge.
    for (y, name) in parallels.iter().filter(|(y, _)| *y > 32.0) {
        let _ = write!(
            svg,
            "<path class=\"grid\" d=\"M0,{y:.0}H{WIDE}\"/><text x=\"3\" y=\"{:.0}\">{name}</text>",
            y - 3.0
        );
    }
    let _ = write!(svg, "<path class=\"border\" d=\"{}\"/>", borders::path(view));
    let (long, name) = view.scale();
    let (from, foot) = (WIDE - 14.0 - long, tall - 12.0);
    let _ = write!(
        svg,
        "<path class=\"scale\" d=\"M{from:.0},{:.0}v6h{long:.0}v-6\"/><text class=\"end\" x=\"{:.0}\" y=\"{:.0}\">{name}</text></g>",
        foot - 6.0,
        WIDE - 14.0,
        foot - 10.0
    );
    svg
}

/// A mark a household; those that would hide each other are set around their middle, the most pressing inmost.
fn singles(svg: &mut String, tongue: &Tongue, view: &View, marks: &[Mark]) {
    let mut groups: BTreeMap<(i64, i64), Vec<&Mark>> = BTreeMap::new();
    for mark in marks {
        groups.entry(((mark.at.0 / NEAR) as i64, (mark.at.1 / NEAR) as i64)).or_default().push(mark);
    }
    for group in groups.values() {
        let (x, y) = middle(group.iter().map(|mark| mark.at));
        for (n, mark) in group.iter().enumerate() {
            // Seeds of a sunflower: each as far from its neighbours as any.
            let (away, turn) = (APART * (n as f64).sqrt(), n as f64 * 2.399_963);
            let x = (x + away * turn.cos()).clamp(10.0, WIDE - 10.0);
            let y = (y + away * turn.sin()).clamp(10.0, view.tall - 10.0);
            let Placed { need, seen, .. } = mark.placed;
            let said = format!("{}, {}: {}", name_of(&seen.household), seen.place, need.label(tongue));
            let _ = write!(
                svg,
                "<a class=\"{}\" href=\"/household/{}\"{}{}</a>",
                need.class(),
                seen.household.id,
                named(&said),
                shape(*need, x, y)
            );
        }
    }
}

/// A mark for all households of a square, with their number and the most pressing need among them.
fn bundles(svg: &mut String, tongue: &Tongue, marks: &[Mark], need: &str) {
    let mut squares: BTreeMap<(i64, i64), Vec<&Mark>> = BTreeMap::new();
    for mark in marks {
        squares.entry(((mark.at.0 / BUNDLE) as i64, (mark.at.1 / BUNDLE) as i64)).or_default().push(mark);
    }
    for square in squares.values() {
        let (x, y) = middle(square.iter().map(|mark| mark.at));
        let worst = square.iter().map(|mark| mark.placed.need).min().unwrap_or(Need::Well);
        let pressing = square.iter().filter(|mark| mark.placed.need.is_pressing()).count();
        let ends = |of: fn(&Mark) -> f64| {
            let values = square.iter().map(|mark| of(mark));
            (values.clone().fold(f64::MAX, f64::min), values.fold(f64::MIN, f64::max))
        };
        let ((west, east), (south, north)) = (ends(|mark| mark.spot.0), ends(|mark| mark.spot.1));
        let n = square.len();
        let values = [
            ("n", counted(n)),
            ("place", square[0].placed.seen.place.clone().into()),
            ("pressing", counted(pressing)),
            ("need", worst.label(tongue).into()),
        ];
        let radius = 11.0 + (n as f64).log10() * 4.0;
        let _ = write!(
            svg,
            "<a class=\"{}\" href=\"/?within={}&amp;need={need}#map\"{}<circle class=\"bundle\" cx=\"{x:.0}\" cy=\"{y:.0}\" \
             r=\"{radius:.0}\"/>{}<text x=\"{x:.0}\" y=\"{:.0}\">{n}</text></a>",
            worst.class(),
            Within([west, south, east, north]),
            named(&tongue.with("map-bundle", &values)),
            shape(worst, x, y - radius),
            y + 5.0
        );
    }
}

/// The rest of a link's opening tag with its name, for eyes and for ears.
fn named(said: &str) -> String {
    let said = escape(said, Html).map(|said| said.to_string()).unwrap_or_default();
    format!(" aria-label=\"{said}\"><title>{said}</title>")
}

fn middle(points: impl Iterator<Item = (f64, f64)>) -> (f64, f64) {
    let (x, y, n) = points.fold((0.0, 0.0, 0.0), |(x, y, n), point| (x + point.0, y + point.1, n + 1.0));
    (x / n, y / n)
}

/// A shape of its own for each need, so that colour is not needed to tell them apart.
fn shape(need: Need, x: f64, y: f64) -> String {
    let path = match need {
        Need::Danger => "m0-8 8 14h-16z",
        Need::Souring => "m0-8 8 8-8 8-8-8z",
        Need::Person => "m0-8a4 4 0 1 1 0 8a4 4 0 1 1 0-8zm-7 15a7 6 0 0 1 14 0z",
        Need::Silent => "m-6-7h12v4h-12zm0 10h12v4h-12z",
        Need::Rest => "m-6-6h12v12h-12z",
        Need::Leak => "m0 8-8-14h16z",
        Need::StartUp => "m-2.500-7h5v4.500h4.500v5h-4.500v4.500h-5v-4.500h-4.500v-5h4.500z",
        Need::Watch => "m-7 0a7 7 0 1 0 14 0a7 7 0 1 0-14 0zm4 0a3 3 0 1 1 6 0a3 3 0 1 1-6 0z",
        Need::Well => "m-5 0a5 5 0 1 0 10 0a5 5 0 1 0-10 0z",
    };
    format!("<path d=\"M{x:.0},{y:.0}{path}\"/>")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::household::{Household, Talk};
    use crate::mind::Mind;
    use crate::pages::need::Hands;
    use std::sync::Arc;

    fn tongue() -> Tongue {
        Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en")
    }

    fn placed(id: i64, need: Need, place: &str) -> Placed {
        let household = Household {
            id,
            name: format!("<Lantana> {id}"),
            lang: "en".into(),
            country: Some("KE".into()),
            time_zone: "UTC".into(),
            since: chrono::DateTime::UNIX_EPOCH,
            seed: 1,
            staff_id: None,
            next_fact: 1,
            talk: Talk::default(),
        };
        Placed { need, hands: Hands::Nobody, risk: 0.0, seen: Seen { household, place: place.into(), alarms: vec![] } }
    }

    #[test]
    fn each_household_is_a_mark_of_its_own_that_leads_to_it() {
        let all = [
            placed(1, Need::Danger, "Kisumu"),
            placed(2, Need::Well, "Kisumu"),
            placed(3, Need::Well, "Nakuru"),
            placed(4, Need::Silent, "nowhere that anybody knows"),
            placed(5, Need::Silent, ""),
        ];
        let map = drawn(&tongue(), &all, "").expect("two towns are known");
        let links: Vec<&str> = map
            .svg
            .match_indices("<a ")
            .map(|(at, _)| &map.svg[at..at + map.svg[at..].find("</a>").expect("closed")])
            .collect();
        assert_eq!(links.len(), 3, "{links:?}");
        assert!(links.iter().any(|link| link.contains("/household/1\"") && link.contains("Kisumu: Danger")));
        assert!(map.svg.contains("&#60;Lantana&#62;") && !map.svg.contains("<Lantana"), "a name is never markup");
        // Two at one town lie apart, and their shapes differ.
        let drawn_at = |link: &str| link.split(" d=\"M").nth(1).expect("a path").split('m').next().map(str::to_owned);
        let places: std::collections::BTreeSet<_> = links.iter().map(|link| drawn_at(link)).collect();
        assert_eq!(places.len(), 3, "{places:?}");
        assert!(map.svg.contains(" km</text>") && map.svg.contains("° E</text>") && map.svg.contains("° S</text>"));
        assert_eq!((map.legend.len(), map.beside.len()), (3, 1), "{:?}", map.beside);
        assert!(drawn(&tongue(), &all[3..], "").is_none());
    }

    #[test]
    fn ten_thousand_households_are_bundles_that_lead_nearer_until_each_is_seen() {
        let towns = ["Kisumu", "Nakuru", "Nairobi", "Mombasa", "Eldoret", "Kakamega", "Meru", "Garissa", "Malindi"];
        let all: Vec<Placed> = (0..10_000)
            .map(|n| placed(n, Need::ALL[n as usize % Need::ALL.len()], towns[n as usize % towns.len()]))
            .collect();
        let map = drawn(&tongue(), &all, "silent").expect("known");
        assert!(map.svg.len() < 32_000, "{} bytes", map.svg.len());
        assert!(!map.svg.contains("/household/"), "bundled");
        let (mut left, mut looks) = (all, 0);
        let map = loop {
            let map = drawn(&tongue(), &left, "silent").expect("known");
            let Some(link) = map.svg.split("/?within=").nth(1) else { break map };
            let within = Within::read(link.split("&amp;").next().expect("a value")).expect("four numbers");
            let before = left.len();
            left.retain(|placed| within.holds(&placed.seen));
            assert!(!left.is_empty() && left.len() < before, "{within}");
            looks += 1;
        };
        assert!((1..5).contains(&looks) && map.svg.contains("/household/"));
        assert!(map.svg.len() < 32_000 && map.beside.iter().any(|line| line.contains("more")), "{:?}", map.beside);
    }

    #[test]
    fn what_is_no_part_of_the_world_is_not_read() {
        for typed in ["", "1,2,3", "1,2,3,x", "1,2,3,NaN", "1,2,3,4,5"] {
            assert_eq!(Within::read(typed), None, "{typed}");
        }
        assert_eq!(
            Within::read("34.1,-1,35,0.5").map(|within| within.to_string()),
            Some("34.10,-1.00,35.00,0.50".into())
        );
    }
}
