//! Panels over one time axis, as SVG that needs neither scripts nor colours to be read.
//!
//! Takes days and values; gives text. Looks (colours, letters) stand in the style sheet.

use super::tongue::{Tongue, date_of};
use bellyful_core::twin::SlurryBand;
use bellyful_core::units::Day;
use chrono::Datelike;
use std::fmt::Write;

pub struct Bar {
    pub day: Day,
    pub value: f64,
}

pub struct Dot {
    pub day: Day,
    pub value: f64,
}

/// Something that happened.
pub struct Mark {
    pub day: Day,
    pub danger: bool,
    pub what: String,
}

/// One row of the chart.
#[derive(Default)]
pub struct Panel {
    title: String,
    bars: Vec<Bar>,
    line: Vec<Dot>,
    dots: Vec<Dot>,
    steps: Option<(String, Vec<Dot>)>,
    limit: Option<(f64, String)>,
    /// From low to high about the line: of a level, whose zero says nothing.
    band: Vec<SlurryBand>,
    /// What the dots are, where there is a line too.
    dots_are: Option<String>,
    marks: Vec<Mark>,
}

impl Panel {
    pub fn bars(title: String, bars: Vec<Bar>) -> Panel {
        Panel { title, bars, ..Panel::default() }
    }
    pub fn line(title: String, line: Vec<Dot>) -> Panel {
        Panel { title, line, ..Panel::default() }
    }
    /// What is thought of something whose zero says nothing, such as warmth, with its doubt.
    pub fn band(title: String, band: Vec<SlurryBand>) -> Panel {
        let line = band.iter().map(|band| Dot { day: band.day, value: band.middle }).collect();
        Panel { title, line, band, ..Panel::default() }
    }
    pub fn dots(title: String, dots: Vec<Dot>) -> Panel {
        Panel { title, dots, ..Panel::default() }
    }
    pub fn marks(title: String, marks: Vec<Mark>) -> Panel {
        Panel { title, marks, ..Panel::default() }
    }
    pub fn and_dots(self, name: String, dots: Vec<Dot>) -> Panel {
        Panel { dots_are: (!dots.is_empty()).then_some(name), dots, ..self }
    }
    pub fn with_steps(self, name: String, steps: Vec<Dot>) -> Panel {
        Panel { steps: Some((name, steps)), ..self }
    }
    pub fn with_limit(self, limit: f64, name: String) -> Panel {
        Panel { limit: Some((limit, name)), ..self }
    }
    pub fn is_empty(&self) -> bool {
        self.bars.is_empty() && self.line.is_empty() && self.dots.is_empty() && self.marks.is_empty()
    }
    fn values(&self) -> impl Iterator<Item = f64> {
        let steps = self.steps.iter().flat_map(|(_, steps)| steps);
        self.bars
            .iter()
            .map(|bar| bar.value)
            .chain(self.line.iter().chain(&self.dots).chain(steps).map(|dot| dot.value))
            .chain(self.band.iter().flat_map(|band| [band.low, band.high]))
            .chain(self.limit.iter().map(|(limit, _)| *limit))
    }
}

const WIDTH: f64 = 760.0;
const LEFT: f64 = 40.0;
const RIGHT: f64 = 10.0;
const HIGH: f64 = 74.0;
const LOW: f64 = 30.0;
const TITLE: f64 = 20.0;
const GAP: f64 = 8.0;
/// Over more days than this only every third month is named.
const MONTHS_APART: i32 = 400;
/// Days narrower than this are drawn without a word each: the page would weigh too much.
const FEW_PER_DAY: f64 = 4.0;

/// The panels over the `days` days up to `today`.
pub fn chart(tongue: &Tongue, today: Day, days: i32, panels: &[Panel]) -> String {
    let first = today.plus(-days);
    let a_day = (WIDTH - LEFT - RIGHT) / f64::from(days + 1);
    let x = |day: Day| LEFT + f64::from(day.since(first)) * a_day;
    let inside = |day: Day| day >= first && day <= today;
    let height: f64 = panels.iter().map(|panel| TITLE + tall(panel) + GAP).sum::<f64>() + 18.0;
    let mut svg = format!(
        "<svg class=\"chart\" viewBox=\"0 0 {WIDTH} {height}\" role=\"img\" aria-label=\"{}\">",
        escaped(&tongue.say("chart-label"))
    );
    let every = if days > MONTHS_APART { 3 } else { 1 };
    for month in months(first, today).filter(|month| date_of(*month).month0().is_multiple_of(every)) {
        let at = x(month);
        let _ =
            write!(svg, "<line class=\"grid\" x1=\"{at:.1}\" x2=\"{at:.1}\" y1=\"0\" y2=\"{:.1}\"/>", height - 16.0);
        let _ = write!(
            svg,
            "<text class=\"axis\" x=\"{:.1}\" y=\"{:.1}\">{}</text>",
            at + 2.0,
            height - 4.0,
            escaped(&tongue.short_day(month))
        );
    }
    let mut top = 0.0;
    for panel in panels {
        let _ = write!(svg, "<text class=\"title\" x=\"{LEFT}\" y=\"{:.1}\">{}", top + 14.0, escaped(&panel.title));
        if let Some((name, _)) = &panel.steps {
            let _ = write!(svg, " <tspan class=\"key\">{}</tspan>", escaped(&tongue.of_name("chart-dashes", name)));
        }
        if let Some(name) = &panel.dots_are {
            let _ = write!(svg, " <tspan class=\"key\">{}</tspan>", escaped(&tongue.of_name("chart-dots", name)));
        }
        svg.push_str("</text>");
        let (floor, tall) = (top + TITLE + tall(panel), tall(panel));
        draw(&mut svg, tongue, panel, floor, tall, a_day, &x, &inside);
        top = floor + GAP;
    }
    svg.push_str("</svg>");
    svg
}

fn tall(panel: &Panel) -> f64 {
    if panel.marks.is_empty() { HIGH } else { LOW }
}

#[expect(clippy::too_many_arguments, reason = "the axis is worked out once, for all panels")]
fn draw(
    svg: &mut String,
    tongue: &Tongue,
    panel: &Panel,
    floor: f64,
    tall: f64,
    a_day: f64,
    x: &impl Fn(Day) -> f64,
    inside: &impl Fn(Day) -> bool,
) {
    let _ = write!(
        svg,
        "<line class=\"floor\" x1=\"{LEFT}\" x2=\"{}\" y1=\"{floor:.1}\" y2=\"{floor:.1}\"/>",
        WIDTH - RIGHT
    );
    if !panel.marks.is_empty() {
        for mark in panel.marks.iter().filter(|mark| inside(mark.day)) {
            let (at, class) = (x(mark.day) + a_day / 2.0, if mark.danger { "danger" } else { "sign" });
            let _ = write!(
                svg,
                "<g class=\"{class}\"><path d=\"M{at:.1} {:.1}l5 -10h-10z\"/><title>{}, {}</title></g>",
                floor - 4.0,
                escaped(&mark.what),
                escaped(&tongue.short_day(mark.day))
            );
        }
        return;
    }
    let scale = Scale::of(panel);
    let y = |value: f64| floor - (value - scale.from) / (scale.to - scale.from) * tall;
    for value in scale.ticks() {
        let at = y(value);
        let _ = write!(
            svg,
            "<text class=\"axis end\" x=\"{}\" y=\"{:.1}\">{}</text>",
            LEFT - 4.0,
            at + 3.0,
            scale.written(tongue, value)
        );
        let _ =
            write!(svg, "<line class=\"grid\" x1=\"{LEFT}\" x2=\"{}\" y1=\"{at:.1}\" y2=\"{at:.1}\"/>", WIDTH - RIGHT);
    }
    let few = a_day > FEW_PER_DAY;
    for bar in panel.bars.iter().filter(|bar| inside(bar.day)) {
        let at = y(bar.value);
        if !few {
            let _ =
                write!(svg, "<path class=\"bar\" d=\"M{:.1} {floor:.1}V{at:.1}h{a_day:.1}V{floor:.1}z\"/>", x(bar.day));
            continue;
        }
        let _ = write!(
            svg,
            "<rect class=\"bar\" x=\"{:.1}\" y=\"{at:.1}\" width=\"{:.1}\" height=\"{:.1}\"><title>{}: {}</title></rect>",
            x(bar.day) + a_day * 0.1,
            a_day * 0.8,
            (floor - at).max(0.0),
            escaped(&tongue.short_day(bar.day)),
            short(tongue, bar.value)
        );
    }
    let points = |dots: &[Dot]| {
        let inside = dots.iter().filter(|dot| inside(dot.day));
        inside.map(|dot| format!("{:.1},{:.1}", x(dot.day) + a_day / 2.0, y(dot.value))).collect::<Vec<_>>()
    };
    if !panel.band.is_empty() {
        let at = |day: Day, value: f64| format!("{:.1},{:.1}", x(day) + a_day / 2.0, y(value));
        let there = panel.band.iter().filter(|band| inside(band.day)).map(|band| at(band.day, band.high));
        let back = panel.band.iter().rev().filter(|band| inside(band.day)).map(|band| at(band.day, band.low));
        let edge = there.chain(back).collect::<Vec<_>>().join(" ");
        let _ = write!(svg, "<polygon class=\"band\" points=\"{edge}\"/>");
    }
    if !panel.line.is_empty() {
        let _ = write!(svg, "<polyline class=\"line\" points=\"{}\"/>", points(&panel.line).join(" "));
    }
    if let Some((_, steps)) = &panel.steps {
        let _ = write!(svg, "<polyline class=\"steps\" points=\"{}\"/>", points(steps).join(" "));
    }
    for (point, dot) in points(&panel.dots).iter().zip(panel.dots.iter().filter(|dot| inside(dot.day))) {
        let (at, up) = point.split_once(',').unwrap_or_default();
        let _ = write!(
            svg,
            "<circle class=\"dot\" cx=\"{at}\" cy=\"{up}\" r=\"3\"><title>{}</title></circle>",
            short(tongue, dot.value)
        );
    }
    if let Some((limit, name)) = &panel.limit {
        let at = y(*limit);
        let _ =
            write!(svg, "<line class=\"limit\" x1=\"{LEFT}\" x2=\"{}\" y1=\"{at:.1}\" y2=\"{at:.1}\"/>", WIDTH - RIGHT);
        let _ = write!(
            svg,
            "<text class=\"axis end limit-name\" x=\"{}\" y=\"{:.1}\">{}</text>",
            WIDTH - RIGHT,
            at - 3.0,
            escaped(name)
        );
    }
}

/// What a panel's height stands for.
struct Scale {
    from: f64,
    to: f64,
    step: f64,
}

impl Scale {
    /// From zero, but for readings that never come near it; up to a little over the most, in round steps.
    fn of(panel: &Panel) -> Scale {
        let most = panel.values().fold(f64::MIN, f64::max);
        let least = panel.values().fold(f64::MAX, f64::min);
        let reach = if !panel.dots.is_empty() || !panel.band.is_empty() { least - 1.0 } else { 0.0 };
        let wide = (most - reach).max(0.2);
        let ten = 10_f64.powf((wide / 2.5).log10().floor());
        let step = [1.0, 2.0, 5.0, 10.0].map(|n| n * ten).into_iter().find(|step| wide / step <= 3.0).unwrap_or(wide);
        Scale { from: (reach / step).floor() * step, to: reach + wide * 1.06, step }
    }

    /// A tick with as many decimals as its step has: two ticks never read alike.
    fn written(&self, tongue: &Tongue, value: f64) -> String {
        tongue.number(value, (-self.step.log10().floor()).clamp(0.0, 3.0) as usize)
    }

    fn ticks(&self) -> impl Iterator<Item = f64> {
        let count = ((self.to - self.from) / self.step).floor().clamp(0.0, 6.0) as i32;
        let (from, step) = (self.from, self.step);
        (0..=count).map(move |n| from + f64::from(n) * step)
    }
}

/// Words of people are never markup.
pub fn escaped(words: &str) -> String {
    words.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

fn short(tongue: &Tongue, value: f64) -> String {
    let whole = value.abs() >= 10.0 || format!("{value:.1}").ends_with(".0");
    tongue.number(value, if whole { 0 } else { 1 })
}

/// The first days of months, within.
fn months(first: Day, last: Day) -> impl Iterator<Item = Day> {
    (first.0..=last.0).map(Day).filter(|day| date_of(*day).day() == 1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;
    use std::sync::Arc;

    fn english() -> Tongue {
        Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en")
    }

    #[test]
    fn what_lies_outside_the_axis_is_not_drawn_and_the_rest_is() {
        let bars = [-3, 0, 5].map(|day| Bar { day: Day(day), value: 2.0 }).into_iter().collect();
        let svg = chart(&english(), Day(5), 5, &[Panel::bars("Fed".into(), bars)]);
        assert_eq!(svg.matches("<rect").count(), 2);
        assert!(svg.starts_with("<svg") && svg.ends_with("</svg>"));
        assert!(!svg.contains("NaN") && !svg.contains("inf"), "{svg}");
    }

    #[test]
    fn scales_begin_at_zero_but_for_levels_and_step_roundly() {
        let check = |panel: Panel, expected: &[f64]| {
            assert_eq!(Scale::of(&panel).ticks().collect::<Vec<_>>(), expected);
        };
        let dots = |values: &[f64]| values.iter().map(|value| Dot { day: Day(0), value: *value }).collect::<Vec<_>>();
        let band = |values: &[f64]| {
            let of = |c: &f64| SlurryBand { day: Day(0), low: *c, middle: *c, high: *c };
            values.iter().map(of).collect::<Vec<_>>()
        };
        check(Panel::line("Risk".into(), dots(&[1.0, 96.0])), &[0.0, 50.0, 100.0]);
        check(Panel::band("Slurry".into(), band(&[24.0, 27.0])), &[22.0, 24.0, 26.0]);
        check(Panel::line("Nothing".into(), dots(&[0.0])), &[0.0, 0.1, 0.2]);
        let scale = Scale::of(&Panel::band("Slurry".into(), band(&[28.6, 28.7])));
        let written: Vec<String> = scale.ticks().map(|tick| scale.written(&english(), tick)).collect();
        let alike = written.windows(2).filter(|two| two[0] == two[1]).count();
        assert!(written.len() > 1 && alike == 0, "{written:?}");
    }

    #[test]
    fn what_people_wrote_is_never_markup() {
        let mark = Mark { day: Day(5), danger: true, what: "<b>&".into() };
        let svg = chart(&english(), Day(5), 5, &[Panel::marks("Visits".into(), vec![mark])]);
        assert!(svg.contains("&lt;b&gt;&amp;, 6 Jan") && !svg.contains("<b>"), "{svg}");
    }

    #[test]
    fn one_value_alone_can_be_drawn() {
        let svg = chart(&english(), Day(5), 5, &[Panel::dots("pH".into(), vec![Dot { day: Day(5), value: 7.0 }])]);
        assert!(svg.contains("<circle") && !svg.contains("NaN"), "{svg}");
    }
}
