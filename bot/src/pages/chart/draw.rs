//! A panel as SVG, on an axis of days.
//!
//! Takes a panel cut to the axis; gives text. Knows no looks but places and sizes.

use super::escaped;
use super::panel::{Bar, Dot, Panel};
use super::scale::Scale;
use crate::pages::Tongue;
use bellyful_core::units::Day;
use std::fmt::Write;

pub const WIDTH: f64 = 760.0;
pub const LEFT: f64 = 40.0;
const RIGHT: f64 = 10.0;
const HIGH: f64 = 74.0;
const LOW: f64 = 30.0;
const TITLE: f64 = 20.0;
/// The line that says what the parts of bars are.
const KEY: f64 = 16.0;
pub const GAP: f64 = 8.0;
/// Days narrower than this are drawn without a word each: the page would weigh too much.
const FEW_PER_DAY: f64 = 4.0;

/// Days along the width.
pub struct Axis {
    pub first: Day,
    pub last: Day,
    /// Width of a day.
    pub a_day: f64,
    /// Days that a bar stands for.
    pub step: f64,
}

impl Axis {
    pub fn new(first: Day, last: Day, step: f64) -> Axis {
        Axis { first, last, a_day: (WIDTH - LEFT - RIGHT) / f64::from(last.since(first) + 1), step }
    }

    pub fn x(&self, day: Day) -> f64 {
        LEFT + f64::from(day.since(self.first)) * self.a_day
    }

    pub fn middle(&self, day: Day) -> f64 {
        self.x(day) + self.a_day / 2.0
    }
}

/// Height of a panel with its title.
pub fn tall(panel: &Panel) -> f64 {
    head(panel) + body(panel)
}

fn head(panel: &Panel) -> f64 {
    if panel.parts.len() > 1 { TITLE + KEY } else { TITLE }
}

fn body(panel: &Panel) -> f64 {
    if panel.marks.is_empty() { HIGH } else { LOW }
}

/// A panel whose upper edge is at `top`.
pub fn draw(svg: &mut String, tongue: &Tongue, panel: &Panel, axis: &Axis, top: f64) {
    titles(svg, tongue, panel, top);
    let floor = top + tall(panel);
    let right = WIDTH - RIGHT;
    let _ = write!(svg, "<line class=\"floor\" x1=\"{LEFT}\" x2=\"{right}\" y1=\"{floor:.1}\" y2=\"{floor:.1}\"/>");
    if !panel.marks.is_empty() {
        return marks(svg, tongue, panel, axis, floor);
    }
    let scale = Scale::of(panel);
    let y = |value: f64| floor - (value - scale.from) / (scale.to - scale.from) * body(panel);
    for value in scale.ticks() {
        let at = y(value);
        let written = scale.written(tongue, value);
        let _ = write!(
            svg,
            "<text class=\"axis end\" x=\"{}\" y=\"{:.1}\">{written}</text>\
             <line class=\"grid\" x1=\"{LEFT}\" x2=\"{right}\" y1=\"{at:.1}\" y2=\"{at:.1}\"/>",
            LEFT - 4.0,
            at + 3.0
        );
    }
    if axis.a_day * axis.step > FEW_PER_DAY && axis.step == 1.0 {
        panel.bars.iter().for_each(|bar| told_bar(svg, tongue, panel, bar, axis, floor, &y));
    } else {
        mute_bars(svg, panel, axis, floor, &y);
    }
    let points = |dots: &[Dot]| {
        let at = dots.iter().map(|dot| format!("{:.1},{:.1}", axis.middle(dot.day), y(dot.value)));
        at.collect::<Vec<_>>().join(" ")
    };
    if !panel.band.is_empty() {
        let at = |day: Day, value: f64| format!("{:.1},{:.1}", axis.middle(day), y(value));
        let there = panel.band.iter().map(|band| at(band.day, band.high));
        let back = panel.band.iter().rev().map(|band| at(band.day, band.low));
        let edge = there.chain(back).collect::<Vec<_>>().join(" ");
        let _ = write!(svg, "<polygon class=\"band\" points=\"{edge}\"/>");
    }
    if !panel.line.is_empty() {
        let _ = write!(svg, "<polyline class=\"line\" points=\"{}\"/>", points(&panel.line));
    }
    if let Some((_, steps)) = &panel.steps {
        let _ = write!(svg, "<polyline class=\"steps\" points=\"{}\"/>", points(steps));
    }
    for dot in &panel.dots {
        let (at, up, said) = (axis.middle(dot.day), y(dot.value), short(tongue, dot.value));
        let _ =
            write!(svg, "<circle class=\"dot\" cx=\"{at:.1}\" cy=\"{up:.1}\" r=\"3\"><title>{said}</title></circle>");
    }
    if let Some((limit, name)) = &panel.limit {
        let (at, name) = (y(*limit), escaped(name));
        let _ = write!(
            svg,
            "<line class=\"limit\" x1=\"{LEFT}\" x2=\"{right}\" y1=\"{at:.1}\" y2=\"{at:.1}\"/>\
             <text class=\"axis end limit-name\" x=\"{right}\" y=\"{:.1}\">{name}</text>",
            at - 3.0
        );
    }
}

/// What the panel shows, and what its strokes are.
fn titles(svg: &mut String, tongue: &Tongue, panel: &Panel, top: f64) {
    let _ = write!(svg, "<text class=\"title\" x=\"{LEFT}\" y=\"{:.1}\">{}", top + 14.0, escaped(&panel.title));
    let keys = [("chart-dashes", panel.steps.as_ref().map(|(name, _)| name)), ("chart-dots", panel.dots_are.as_ref())];
    for (id, name) in keys {
        if let Some(name) = name {
            let _ = write!(svg, " <tspan class=\"key\">{}</tspan>", escaped(&tongue.of_name(id, name)));
        }
    }
    svg.push_str("</text>");
    if panel.parts.len() > 1 {
        let _ = write!(svg, "<text class=\"key\" x=\"{LEFT}\" y=\"{:.1}\">", top + 14.0 + KEY);
        for (n, part) in panel.parts.iter().enumerate() {
            let _ = write!(svg, "<tspan class=\"part{n}\">\u{25a0}</tspan> {} \u{2003}", escaped(part));
        }
        svg.push_str("</text>");
    }
}

fn marks(svg: &mut String, tongue: &Tongue, panel: &Panel, axis: &Axis, floor: f64) {
    for mark in &panel.marks {
        let (at, class) = (axis.middle(mark.day), if mark.danger { "danger" } else { "sign" });
        let _ = write!(
            svg,
            "<g class=\"{class}\"><path d=\"M{at:.1} {:.1}l5 -10h-10z\"/><title>{}, {}</title></g>",
            floor - 4.0,
            escaped(&mark.what),
            escaped(&tongue.short_day(mark.day))
        );
    }
}

/// A bar that says its day and its parts.
fn told_bar(
    svg: &mut String,
    tongue: &Tongue,
    panel: &Panel,
    bar: &Bar,
    axis: &Axis,
    floor: f64,
    y: &impl Fn(f64) -> f64,
) {
    let (left, wide) = (axis.x(bar.day) + axis.a_day * 0.1, axis.a_day * 0.8);
    let _ = write!(
        svg,
        "<g><title>{}: {}</title>",
        escaped(&tongue.short_day(bar.day)),
        escaped(&parts(tongue, panel, bar))
    );
    let (mut below, mut foot) = (0.0, floor);
    for (n, part) in bar.parts.iter().enumerate().filter(|(_, part)| **part > 0.0) {
        below += part;
        let head = y(below);
        let high = (foot - head).max(0.0);
        let _ = write!(svg, "<path class=\"part{n}\" d=\"M{left:.1} {foot:.1}v-{high:.1}h{wide:.1}v{high:.1}z\"/>");
        foot = head;
    }
    svg.push_str("</g>");
}

/// What a bar stands for: its height, or its parts by name.
pub fn parts(tongue: &Tongue, panel: &Panel, bar: &Bar) -> String {
    match panel.parts.len() {
        ..2 => short(tongue, bar.value()),
        _ => {
            let there = panel.parts.iter().zip(&bar.parts).filter(|(_, value)| **value > 0.0);
            there.map(|(name, value)| format!("{} {name}", short(tongue, *value))).collect::<Vec<_>>().join(", ")
        }
    }
}

/// Bars too narrow or too many to say anything: one path for each part.
fn mute_bars(svg: &mut String, panel: &Panel, axis: &Axis, floor: f64, y: &impl Fn(f64) -> f64) {
    let wide = axis.a_day * axis.step;
    for n in 0..panel.bars.iter().map(|bar| bar.parts.len()).max().unwrap_or_default() {
        let _ = write!(svg, "<path class=\"part{n}\" d=\"");
        for bar in panel.bars.iter().filter(|bar| bar.parts.get(n).is_some_and(|part| *part > 0.0)) {
            let below: f64 = bar.parts[..n].iter().sum();
            let foot = if n == 0 { floor } else { y(below) };
            let high = (foot - y(below + bar.parts[n])).max(0.0);
            // The first week may begin before the axis.
            let left = axis.x(bar.day).max(LEFT);
            let _ = write!(svg, "M{left:.1} {foot:.1}v-{high:.1}h{wide:.1}v{high:.1}");
        }
        svg.push_str("\"/>");
    }
}

pub fn short(tongue: &Tongue, value: f64) -> String {
    let whole = value.abs() >= 10.0 || format!("{value:.1}").ends_with(".0");
    tongue.number(value, if whole { 0 } else { 1 })
}
