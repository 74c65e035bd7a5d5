//! One row of the chart: what it is called and what is drawn in it.
//!
//! Takes days and values; gives them cut to an axis and, where days are too narrow to be seen, put together by weeks.

use bellyful_core::twin::Band;
use bellyful_core::units::Day;
use std::collections::BTreeMap;

/// What stands on the floor for one day, the lowest part first.
#[derive(Debug, Clone, PartialEq)]
pub struct Bar {
    pub day: Day,
    pub parts: Vec<f64>,
}

impl Bar {
    pub fn whole(day: Day, value: f64) -> Bar {
        Bar { day, parts: vec![value] }
    }

    pub fn value(&self) -> f64 {
        self.parts.iter().sum()
    }
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dot {
    pub day: Day,
    pub value: f64,
}

/// Something that happened.
#[derive(Debug, Clone)]
pub struct Mark {
    pub day: Day,
    pub danger: bool,
    pub what: String,
}

/// One row of the chart.
#[derive(Debug, Clone, Default)]
pub struct Panel {
    pub title: String,
    pub bars: Vec<Bar>,
    /// What the parts of the bars are, the lowest first; empty where there is only one.
    pub parts: Vec<String>,
    pub line: Vec<Dot>,
    pub dots: Vec<Dot>,
    pub steps: Option<(String, Vec<Dot>)>,
    pub limit: Option<(f64, String)>,
    /// From low to high about the line.
    pub band: Vec<Band>,
    /// The scale begins near the least, since zero says nothing of it.
    pub level: bool,
    /// What the dots are, where there is a line too.
    pub dots_are: Option<String>,
    pub marks: Vec<Mark>,
}

impl Panel {
    pub fn bars(title: String, bars: Vec<Bar>) -> Panel {
        Panel { title, bars, ..Panel::default() }
    }
    pub fn line(title: String, line: Vec<Dot>) -> Panel {
        Panel { title, line, ..Panel::default() }
    }
    /// What is believed, with its doubt.
    pub fn band(title: String, band: Vec<Band>) -> Panel {
        let line = band.iter().map(|band| Dot { day: band.day, value: band.middle }).collect();
        Panel { title, line, band, ..Panel::default() }
    }
    pub fn marks(title: String, marks: Vec<Mark>) -> Panel {
        Panel { title, marks, ..Panel::default() }
    }
    pub fn of_parts(self, parts: Vec<String>) -> Panel {
        Panel { parts, ..self }
    }
    /// Of something whose zero says nothing, such as warmth.
    pub fn as_level(self) -> Panel {
        Panel { level: true, ..self }
    }
    pub fn and_dots(self, name: String, dots: Vec<Dot>) -> Panel {
        Panel { dots_are: (!dots.is_empty()).then_some(name), dots, ..self }
    }
    pub fn with_steps(self, name: String, steps: Vec<Dot>) -> Panel {
        Panel { steps: (!steps.is_empty()).then_some((name, steps)), ..self }
    }
    pub fn with_limit(self, limit: f64, name: String) -> Panel {
        Panel { limit: Some((limit, name)), ..self }
    }
    pub fn is_empty(&self) -> bool {
        self.bars.is_empty() && self.line.is_empty() && self.dots.is_empty() && self.marks.is_empty()
    }

    pub fn values(&self) -> impl Iterator<Item = f64> {
        let steps = self.steps.iter().flat_map(|(_, steps)| steps);
        self.bars
            .iter()
            .map(Bar::value)
            .chain(self.line.iter().chain(&self.dots).chain(steps).map(|dot| dot.value))
            .chain(self.band.iter().flat_map(|band| [band.low, band.high]))
            .chain(self.limit.iter().map(|(limit, _)| *limit))
    }

    /// Only what lies within: the rest would stretch the scale.
    pub fn cut(mut self, first: Day, last: Day) -> Panel {
        let inside = |day: Day| day >= first && day <= last;
        self.bars.retain(|bar| inside(bar.day));
        for dots in [&mut self.line, &mut self.dots].into_iter().chain(self.steps.iter_mut().map(|(_, dots)| dots)) {
            dots.retain(|dot| inside(dot.day));
        }
        self.band.retain(|band| inside(band.day));
        self.marks.retain(|mark| inside(mark.day));
        self
    }

    /// Weeks in place of days: bars stand for a day of the week's mean, whether told or not; all else for the mean of
    /// what there is of the week.
    pub fn by_week(mut self) -> Panel {
        let mut bars: BTreeMap<i32, Vec<f64>> = BTreeMap::new();
        for bar in &self.bars {
            let week = bars.entry(week(bar.day)).or_insert_with(|| vec![0.0; bar.parts.len()]);
            week.iter_mut().zip(&bar.parts).for_each(|(sum, part)| *sum += part / 7.0);
        }
        self.bars = bars.into_iter().map(|(week, parts)| Bar { day: Day(week * 7), parts }).collect();
        let dots = |dots: &[Dot]| {
            let mean = means(dots.iter().map(|dot| (dot.day, [dot.value])));
            mean.map(|(day, [value])| Dot { day, value }).collect::<Vec<_>>()
        };
        self.line = dots(&self.line);
        self.dots = dots(&self.dots);
        self.steps = self.steps.map(|(name, steps)| (name, dots(&steps)));
        let band = means(self.band.iter().map(|band| (band.day, [band.low, band.middle, band.high])));
        self.band = band.map(|(day, [low, middle, high])| Band { day, low, middle, high }).collect();
        self
    }
}

/// Weeks since the first day there is.
pub fn week(day: Day) -> i32 {
    day.0.div_euclid(7)
}

/// Means by week, dated on its middle.
fn means<const N: usize>(values: impl Iterator<Item = (Day, [f64; N])>) -> impl Iterator<Item = (Day, [f64; N])> {
    let mut weeks: BTreeMap<i32, ([f64; N], f64)> = BTreeMap::new();
    for (day, values) in values {
        let (sums, n) = weeks.entry(week(day)).or_insert(([0.0; N], 0.0));
        sums.iter_mut().zip(values).for_each(|(sum, value)| *sum += value);
        *n += 1.0;
    }
    weeks.into_iter().map(|(week, (sums, n))| (Day(week * 7 + 3), sums.map(|sum| sum / n)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_week_is_the_mean_of_its_days() {
        let bars = vec![
            Bar { day: Day(7), parts: vec![7.0, 0.0] },
            Bar { day: Day(9), parts: vec![7.0, 3.5] },
            Bar { day: Day(14), parts: vec![1.4, 0.0] },
        ];
        let line = [(7, 2.0), (13, 4.0), (20, 9.0)].map(|(day, value)| Dot { day: Day(day), value }).to_vec();
        let weeks = Panel { line, ..Panel::bars("Fed".into(), bars) }.by_week();
        let expected = [Bar { day: Day(7), parts: vec![2.0, 0.5] }, Bar { day: Day(14), parts: vec![0.2, 0.0] }];
        for (bar, expected) in weeks.bars.iter().zip(&expected) {
            assert!(bar.day == expected.day && (bar.value() - expected.value()).abs() < 1e-9, "{bar:?}");
        }
        assert_eq!(weeks.bars.len(), 2);
        assert_eq!(weeks.line, [Dot { day: Day(10), value: 3.0 }, Dot { day: Day(17), value: 9.0 }]);
    }

    #[test]
    fn what_lies_outside_stretches_no_scale() {
        let bars = [(3, 90.0), (5, 2.0), (9, 80.0)].map(|(day, value)| Bar::whole(Day(day), value)).to_vec();
        let cut = Panel::bars("Fed".into(), bars).cut(Day(4), Day(8));
        assert_eq!(cut.values().collect::<Vec<_>>(), [2.0]);
    }
}
