//! Panels over one time axis, as SVG that needs neither scripts nor colours to be read.
//!
//! Takes days and values; gives text. Looks (colours, letters) stand in the style sheet.

mod draw;
mod panel;
mod read_off;
mod scale;

use super::tongue::{Tongue, date_of};
use bellyful_core::units::Day;
use chrono::Datelike;
use draw::{Axis, GAP, WIDTH, draw, tall};
pub use panel::{Bar, Dot, Mark, Panel};
use std::fmt::Write;

/// Over more days than this a stroke stands for a week, and only every third month is named.
pub const WEEKS_OVER: i32 = 400;

/// Over fewer days than this months say too little, and every week is named. Units: d.
const WEEKS_NAMED_UNDER: i32 = 60;

/// The panels over the `days` days up to `today`, and what they say of each day; those with nothing to show are left out.
/// `label` is the message that says what all of it is.
pub fn chart(tongue: &Tongue, label: &str, today: Day, days: i32, panels: Vec<Panel>) -> String {
    let weekly = days > WEEKS_OVER;
    let axis = Axis::new(today.plus(-days), today, if weekly { 7.0 } else { 1.0 });
    let panels: Vec<Panel> = panels
        .into_iter()
        .map(|panel| panel.cut(axis.first, axis.last))
        .filter(|panel| !panel.is_empty())
        .map(|panel| if weekly { panel.by_week() } else { panel })
        .collect();
    let height: f64 = panels.iter().map(|panel| tall(panel) + GAP).sum::<f64>() + 18.0;
    let mut svg = format!(
        "<svg class=\"chart\" viewBox=\"0 0 {WIDTH} {height}\" role=\"img\" aria-label=\"{}\">",
        escaped(&tongue.say(label))
    );
    for day in named(axis.first, today) {
        let (at, foot, name) = (axis.x(day), height - 16.0, escaped(&tongue.short_day(day)));
        let _ = write!(
            svg,
            "<line class=\"grid\" x1=\"{at:.1}\" x2=\"{at:.1}\" y1=\"0\" y2=\"{foot:.1}\"/>\
             <text class=\"axis\" x=\"{:.1}\" y=\"{:.1}\">{name}</text>",
            at + 2.0,
            height - 4.0
        );
    }
    let mut top = 0.0;
    for panel in &panels {
        draw(&mut svg, tongue, panel, &axis, top);
        top += tall(panel) + GAP;
    }
    svg.push_str("</svg>");
    svg.push_str(&read_off::reads(tongue, &panels, &axis));
    svg
}

/// Words of people are never markup.
pub fn escaped(words: &str) -> String {
    words.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

/// The days named below the chart: the first of months, of every third where they are many, or one a week.
fn named(first: Day, last: Day) -> impl Iterator<Item = Day> {
    let days = last.since(first);
    let every = if days > WEEKS_OVER { 3 } else { 1 };
    (first.0..=last.0).map(Day).filter(move |day| match days < WEEKS_NAMED_UNDER {
        true => last.since(*day) % 7 == 0 && *day < last,
        false => date_of(*day).day() == 1 && date_of(*day).month0().is_multiple_of(every),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;
    use bellyful_core::twin::Band;
    use std::sync::Arc;

    fn english() -> Tongue {
        Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en")
    }

    #[test]
    fn what_lies_outside_the_axis_is_not_drawn_and_the_rest_is() {
        let bars = [-3, 0, 5].map(|day| Bar::whole(Day(day), 2.0)).into_iter().collect();
        let svg = chart(&english(), "chart-label", Day(5), 5, vec![Panel::bars("Fed".into(), bars)]);
        assert_eq!(svg.matches("class=\"part0\"").count(), 2);
        assert!(svg.starts_with("<svg") && svg.contains("</svg><ol class=\"reads\" hidden"));
        assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
    }

    #[test]
    fn a_bar_of_parts_stands_part_upon_part_and_names_them() {
        let bars = vec![Bar { day: Day(5), parts: vec![2.0, 1.5, 0.0] }];
        let parts = ["scraps", "dung", "other"].map(str::to_owned).to_vec();
        let svg = chart(&english(), "chart-label", Day(5), 5, vec![Panel::bars("Fed".into(), bars).of_parts(parts)]);
        assert!(svg.contains("6 Jan: 2 scraps, 1.5 dung<"), "{svg}");
        let paths: Vec<&str> = svg.matches("<path class=\"part").collect();
        assert_eq!(paths.len(), 2, "nothing is drawn of what was not given: {svg}");
        // The lower part ends where the upper one begins.
        let foot = |n: usize| svg.split(&format!("<path class=\"part{n}\" d=\"M")).nth(1).expect("drawn").to_owned();
        let numbers = |n: usize| {
            let path = foot(n);
            let path = path.split("h").next().expect("a path").replace("v-", " ");
            path.split_whitespace().map(|n| n.parse::<f64>().expect("a number")).collect::<Vec<_>>()
        };
        let (lower, upper) = (numbers(0), numbers(1));
        assert!((lower[1] - lower[2] - upper[1]).abs() < 0.2, "{lower:?} {upper:?}");
    }

    #[test]
    fn each_day_is_in_words_too() {
        let bars = vec![Bar { day: Day(5), parts: vec![2.0, 1.5] }];
        let band = vec![Band { day: Day(3), low: 6.9, middle: 7.0, high: 7.25 }];
        let panels = vec![
            Panel::bars("Fed".into(), bars).of_parts(vec!["scraps".into(), "dung".into()]),
            Panel::band("pH".into(), band),
        ];
        let svg = chart(&english(), "chart-label", Day(5), 2, panels);
        for line in [
            "<li data-values=\"4 Jan|5 Jan|6 Jan\"></li>",
            "<li data-values=\"||2 scraps, 1.5 dung\">Fed</li>",
            "<li data-values=\"7 (6.9-7.2)||\">pH</li>",
        ] {
            assert!(svg.contains(line), "{line}: {svg}");
        }
    }

    #[test]
    fn years_weigh_no_more_than_months() {
        let of = |days: i32| {
            let bars = (0..=days).map(|day| Bar::whole(Day(day), f64::from(day % 5))).collect();
            let line = (0..=days).map(|day| Dot { day: Day(day), value: f64::from(day % 7) }).collect();
            let panels = vec![Panel::bars("Fed".into(), bars), Panel::line("Load".into(), line)];
            chart(&english(), "chart-label", Day(days), days, panels).len()
        };
        assert!(of(1826) < of(365), "{} {}", of(1826), of(365));
    }

    #[test]
    fn what_people_wrote_is_never_markup() {
        let mark = Mark { day: Day(5), danger: true, what: "<b>&".into() };
        let svg = chart(&english(), "chart-label", Day(5), 5, vec![Panel::marks("Visits".into(), vec![mark])]);
        assert!(svg.contains("&lt;b&gt;&amp;, 6 Jan") && !svg.contains("<b>"), "{svg}");
    }

    #[test]
    fn one_value_alone_can_be_drawn() {
        let dot = vec![Dot { day: Day(5), value: 7.0 }];
        let panel = Panel::line("pH".into(), vec![]).and_dots("told".into(), dot).as_level();
        let svg = chart(&english(), "chart-label", Day(5), 5, vec![panel]);
        assert!(svg.contains("<circle") && !svg.contains("NaN"), "{svg}");
    }
}
