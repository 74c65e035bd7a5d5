//! What a panel's height stands for.
//!
//! Takes a panel; gives round steps and how they are written.

use super::panel::Panel;
use crate::pages::Tongue;

/// Room under the least of a level, as a share of its range and at least, so that it does not lie on the floor.
const MARGIN: f64 = 0.25;
const MARGIN_LEAST: f64 = 0.3;

pub struct Scale {
    pub from: f64,
    pub to: f64,
    step: f64,
}

impl Scale {
    /// From zero, but for readings that never come near it; up to a little over the most, in round steps.
    pub fn of(panel: &Panel) -> Scale {
        let most = panel.values().fold(f64::MIN, f64::max);
        let least = panel.values().fold(f64::MAX, f64::min);
        let reach = if panel.level { least - ((most - least) * MARGIN).max(MARGIN_LEAST) } else { 0.0 };
        let wide = (most - reach).max(0.2);
        let ten = 10_f64.powf((wide / 2.5).log10().floor());
        let step = [1.0, 2.0, 5.0, 10.0].map(|n| n * ten).into_iter().find(|step| wide / step <= 3.0).unwrap_or(wide);
        Scale { from: (reach / step).floor() * step, to: reach + wide * 1.06, step }
    }

    /// A tick with as many decimals as its step has: two ticks never read alike.
    pub fn written(&self, tongue: &Tongue, value: f64) -> String {
        tongue.number(value, (-self.step.log10().floor()).clamp(0.0, 3.0) as usize)
    }

    pub fn ticks(&self) -> impl Iterator<Item = f64> {
        let count = ((self.to - self.from) / self.step).floor().clamp(0.0, 6.0) as i32;
        let (from, step) = (self.from, self.step);
        (0..=count).map(move |n| from + f64::from(n) * step)
    }
}

#[cfg(test)]
mod tests {
    use super::super::panel::Dot;
    use super::*;
    use crate::mind::Mind;
    use bellyful_core::twin::Band;
    use bellyful_core::units::Day;
    use std::sync::Arc;

    #[test]
    fn scales_begin_at_zero_but_for_levels_and_step_roundly() {
        let check = |panel: Panel, expected: &[f64]| {
            assert_eq!(Scale::of(&panel).ticks().collect::<Vec<_>>(), expected);
        };
        let dots = |values: &[f64]| values.iter().map(|value| Dot { day: Day(0), value: *value }).collect::<Vec<_>>();
        let band = |values: &[f64]| {
            let of = |c: &f64| Band { day: Day(0), low: *c, middle: *c, high: *c };
            values.iter().map(of).collect::<Vec<_>>()
        };
        check(Panel::line("Risk".into(), dots(&[1.0, 96.0])), &[0.0, 50.0, 100.0]);
        check(Panel::band("Slurry".into(), band(&[24.0, 27.0])).as_level(), &[22.0, 24.0, 26.0]);
        check(Panel::line("Nothing".into(), dots(&[0.0])), &[0.0, 0.1, 0.2]);
        let english = Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en");
        let scale = Scale::of(&Panel::band("Slurry".into(), band(&[28.6, 28.7])).as_level());
        let written: Vec<String> = scale.ticks().map(|tick| scale.written(&english, tick)).collect();
        let alike = written.windows(2).filter(|two| two[0] == two[1]).count();
        assert!(written.len() > 1 && alike == 0, "{written:?}");
    }
}
