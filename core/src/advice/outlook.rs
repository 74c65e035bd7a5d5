//! What the rules look at: one digester on one day, in the quantities that limits speak of.
//!
//! Takes the twin with today's facts in it; gives numbers. Decides nothing.

use crate::fact::{FlameLook, Sign};
use crate::feeds::{Feed, make_up};
use crate::ledger::{DayAccount, Load};
use crate::limits::{Limits, limits};
use crate::twin::Twin;
use crate::units::{Day, Litres, WetKg};

/// One digester on one day.
pub struct Outlook<'a> {
    pub twin: &'a Twin,
    pub limits: &'static Limits,
    pub today: Day,
    pub liquid: Litres,
    /// Slurry temperature: told lately, else worked out from place and walls. Units: °C.
    pub slurry_c: f64,
    /// The usual mix as shares of wet mass.
    pub mix: Vec<(Feed, f64)>,
    /// VS of the mix, share of wet mass.
    pub mix_vs: f64,
    /// TS of the mix, share of wet mass.
    pub mix_ts: f64,
    /// Wet mass fed today so far.
    pub fed_today: WetKg,
    /// Mean wet mass a day over the days of the last two weeks that are told.
    pub usual: WetKg,
    pub week: Load,
    pub month: Load,
    /// Days since the first filling; `None` when not known.
    pub age_d: Option<i32>,
}

impl<'a> Outlook<'a> {
    pub fn of(twin: &'a Twin, today: Day) -> Outlook<'a> {
        let liquid = twin.liquid();
        let mix = twin.ledger.mix(today);
        let share = |of: fn(Feed) -> f64| mix.iter().map(|(feed, share)| share * of(*feed)).sum::<f64>();
        let told: Vec<&DayAccount> = twin.ledger.window(today, 14).filter(|d| d.is_told() && d.day < today).collect();
        let usual = match told.len() {
            0 => twin.ledger.usual.iter().map(|p| p.wet).sum(),
            n => told.iter().map(|d| d.wet()).sum::<WetKg>() / n as f64,
        };
        Outlook {
            limits: limits(),
            today,
            liquid,
            slurry_c: twin.slurry_c(today),
            mix_vs: share(|feed| make_up(feed).vs()).max(0.01),
            mix_ts: share(|feed| make_up(feed).ts()).max(0.01),
            mix,
            fed_today: twin.ledger.on(today).map(DayAccount::wet).unwrap_or_default(),
            usual,
            week: twin.ledger.load(today, 7, liquid),
            month: twin.ledger.load(today, 30, liquid),
            age_d: twin.site.started.map(|day| today.since(day)),
            twin,
        }
    }

    /// VS a day at a loading rate. Units: kg VS/d.
    pub fn vs_at(&self, olr: f64) -> f64 {
        olr * self.liquid.get() / 1000.0
    }

    /// VS a day that an unstirred tank bears at this warmth, by the handbooks. Units: kg VS/d.
    pub fn borne_vs(&self) -> f64 {
        self.vs_at(self.limits.olr_unstirred_kg_vs_per_m3_d * self.warmth_share())
    }

    /// Burner minutes told of the days of the last week, where they were told.
    pub fn burned_lately(&self) -> Vec<f64> {
        self.twin.ledger.window(self.today, 7).filter_map(|day| Some(day.burned?.get())).collect()
    }

    /// How many days ago a sign was last told, within `days`.
    pub fn told_sign(&self, sign: Sign, days: i32) -> Option<i32> {
        self.last(days, |day| day.signs.contains(&sign))
    }

    /// How many days ago a sour smell, or a pH to watch, was last told, within `days`.
    pub fn told_sour(&self, days: i32) -> Option<i32> {
        self.last(days, |day| self.is_sour(day))
    }

    pub fn is_sour(&self, day: &DayAccount) -> bool {
        day.signs.contains(&Sign::SourSmell) || day.ph.is_some_and(|ph| ph < self.limits.ph_watch)
    }

    pub fn told_flame(&self, look: FlameLook, days: i32) -> Option<i32> {
        self.last(days, |day| day.flame == Some(look))
    }

    /// The last pH told within `days`.
    pub fn told_ph(&self, days: i32) -> Option<f64> {
        self.twin.ledger.window(self.today, days).rev().find_map(|day| day.ph)
    }

    /// How many days ago something last held, within `days`.
    pub fn last(&self, days: i32, held: impl Fn(&DayAccount) -> bool) -> Option<i32> {
        self.twin.ledger.window(self.today, days).rev().find(|day| held(day)).map(|day| self.today.since(day.day))
    }

    /// How fast methane is made at this warmth, against 35 °C.
    ///
    /// Source: Elsgaard et al. 2016, unadapted cattle slurry: 10 °C 0.07, 15 0.14, 20 0.27, 25 0.46, 30 0.76, 40
    /// 0.90, 45 0.47.
    pub fn warmth_share(&self) -> f64 {
        const MEASURED: [(f64, f64); 8] = [
            (10.0, 0.07),
            (15.0, 0.14),
            (20.0, 0.27),
            (25.0, 0.46),
            (30.0, 0.76),
            (35.0, 1.0),
            (40.0, 0.90),
            (45.0, 0.47),
        ];
        let t = self.slurry_c;
        if t <= MEASURED[0].0 {
            return MEASURED[0].1;
        }
        MEASURED.windows(2).find(|pair| t <= pair[1].0).map_or(MEASURED[7].1, |pair| {
            pair[0].1 + (pair[1].1 - pair[0].1) * (t - pair[0].0) / (pair[1].0 - pair[0].0)
        })
    }
}
