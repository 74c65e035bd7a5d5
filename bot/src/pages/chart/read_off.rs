//! What the chart says of each day, in words: for the script that reads it off under a finger.
//!
//! Takes panels cut to the axis; gives a hidden list, one line for each thing drawn, its values a day parted by bars.

use super::draw::{Axis, parts, short};
use super::escaped;
use super::panel::{Panel, week};
use crate::pages::Tongue;
use bellyful_core::units::Day;
use std::fmt::Write;

/// The list; its first line is the days.
pub fn reads(tongue: &Tongue, panels: &[Panel], axis: &Axis) -> String {
    let weekly = axis.step > 1.0;
    let place = |day: Day| {
        let after = if weekly { week(day) - week(axis.first) } else { day.since(axis.first) };
        after.max(0) as usize
    };
    let day_of = |place: i32| if weekly { Day((week(axis.first) + place) * 7 + 3) } else { axis.first.plus(place) };
    let days = place(axis.last) as i32 + 1;
    let mut list = format!(
        "<ol class=\"reads\" hidden data-label=\"{}\" data-at=\"{:.2}\" data-step=\"{:.4}\">",
        escaped(&tongue.say("chart-read")),
        axis.middle(day_of(0)),
        axis.a_day * axis.step
    );
    let mut line = |name: &str, said: &mut dyn Iterator<Item = (Day, String)>| {
        let mut values = vec![String::new(); days as usize];
        for (day, said) in said {
            let value = &mut values[place(day).min(days as usize - 1)];
            if !value.is_empty() {
                value.push_str(", ");
            }
            value.push_str(&said.replace('|', "/"));
        }
        if values.iter().any(|value| !value.is_empty()) {
            let _ = write!(list, "<li data-values=\"{}\">{}</li>", escaped(&values.join("|")), escaped(name));
        }
    };
    line("", &mut (0..days).map(|n| (day_of(n), tongue.short_day(day_of(n)))));
    for panel in panels {
        let number = |value: f64| short(tongue, value);
        line(&panel.title, &mut panel.bars.iter().map(|bar| (bar.day, parts(tongue, panel, bar))));
        match panel.band.is_empty() {
            true => line(&panel.title, &mut panel.line.iter().map(|dot| (dot.day, number(dot.value)))),
            false => line(
                &panel.title,
                &mut panel.band.iter().map(|band| {
                    (band.day, format!("{} ({}-{})", number(band.middle), number(band.low), number(band.high)))
                }),
            ),
        }
        if let Some((name, steps)) = &panel.steps {
            line(name, &mut steps.iter().map(|dot| (dot.day, number(dot.value))));
        }
        let name = panel.dots_are.as_ref().unwrap_or(&panel.title);
        line(name, &mut panel.dots.iter().map(|dot| (dot.day, number(dot.value))));
        line(&panel.title, &mut panel.marks.iter().map(|mark| (mark.day, mark.what.clone())));
    }
    list.push_str("</ol>");
    list
}
