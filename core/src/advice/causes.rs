//! Why a trouble may have come: its likely causes, ranked by what the twin believes and what was told.
//!
//! Takes the twin and one trouble; gives causes with their shares of belief, likeliest first. Knows no words: the step
//! and the question of each cause are the reply's.

use super::outlook::Outlook;
use crate::fact::{FlameLook, GasLevel, Sign, Walls, What};
use crate::feeds::{Feed, Kind, make_up};
use crate::ids;
use crate::ledger::DayAccount;
use crate::twin::Twin;
use crate::units::Day;
use serde::{Deserialize, Serialize};

ids!(/// What is behind a trouble. Each has one step that a family can take and one question that tells it from others.
    Cause {
    LittleFed = "little_fed", Overfed = "overfed", Souring = "souring", Cold = "cold", Young = "young",
    Poisoned = "poisoned", Fat = "fat",
    Leak = "leak", UsedUp = "used_up", WaterInPipe = "water_in_pipe", BurnerAir = "burner_air", LightIn = "light_in",
    Siphon = "siphon", TankLeak = "tank_leak", MuchWater = "much_water", OutletShut = "outlet_shut",
    ThickFeed = "thick_feed", VapourLock = "vapour_lock",
});

/// A trouble that has more than one likely cause; what tells more comes later.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Trouble {
    LittleGas,
    WeakFlame,
    GoesOut,
    WillNotLight,
    SourSmell,
    Foam,
    Overflow,
    LevelDrop,
    InletBlocked,
}

impl Trouble {
    /// The trouble that a fact tells of.
    pub fn told_by(what: &What) -> Option<Trouble> {
        match what {
            What::Gas { level: GasLevel::None | GasLevel::Low } => Some(Trouble::LittleGas),
            What::Flame { look: FlameLook::WillNotLight } => Some(Trouble::WillNotLight),
            What::Flame { look: FlameLook::GoesOut } => Some(Trouble::GoesOut),
            What::Flame { look: FlameLook::Weak } => Some(Trouble::WeakFlame),
            What::Sign { sign: Sign::SourSmell } => Some(Trouble::SourSmell),
            What::Sign { sign: Sign::Foam } => Some(Trouble::Foam),
            What::Sign { sign: Sign::Overflow } => Some(Trouble::Overflow),
            What::Sign { sign: Sign::LevelDrop } => Some(Trouble::LevelDrop),
            What::Sign { sign: Sign::InletBlocked } => Some(Trouble::InletBlocked),
            _ => None,
        }
    }

    /// How often each cause is behind it, before anything is known of the tank: 1 for a usual one.
    ///
    /// Source of which causes: FAO 1992 and GTZ 1989 on biogas, fault tables; siphon, vapour lock and light in a pale
    /// tank: common practice, no source. Source of how often: our choice.
    fn usual_causes(self) -> &'static [(Cause, f64)] {
        use Cause::*;
        match self {
            Trouble::LittleGas => &[
                (LittleFed, 1.5),
                (Souring, 1.0),
                (Cold, 1.0),
                (Leak, 1.0),
                (UsedUp, 1.0),
                (Young, 1.0),
                (WaterInPipe, 0.5),
                (Poisoned, 1.0),
            ],
            Trouble::WillNotLight => {
                &[(Young, 1.5), (Souring, 1.0), (WaterInPipe, 0.8), (BurnerAir, 0.6), (LightIn, 1.0), (UsedUp, 0.4)]
            }
            Trouble::GoesOut => &[(BurnerAir, 1.5), (WaterInPipe, 1.2), (Souring, 1.0), (Young, 0.7), (UsedUp, 0.5)],
            Trouble::WeakFlame => &[(WaterInPipe, 1.2), (UsedUp, 1.0), (LittleFed, 0.8), (Leak, 0.6), (Cold, 0.6)],
            Trouble::SourSmell => &[(Overfed, 1.5), (Cold, 1.0), (Poisoned, 1.0), (Young, 0.8)],
            Trouble::Foam => &[(Overfed, 1.0), (Fat, 1.0)],
            Trouble::Overflow => &[(MuchWater, 1.3), (OutletShut, 1.0)],
            Trouble::LevelDrop => &[(Siphon, 1.2), (TankLeak, 1.0)],
            Trouble::InletBlocked => &[(ThickFeed, 1.3), (VapourLock, 0.6)],
        }
    }
}

/// The likely causes of a trouble, likeliest first; their shares add to 1.
pub fn causes(twin: &Twin, today: Day, trouble: Trouble) -> Vec<(Cause, f64)> {
    let o = Outlook::of(twin, today);
    let mut ranked: Vec<(Cause, f64)> =
        trouble.usual_causes().iter().map(|(cause, usual)| (*cause, usual * speaks_for(&o, *cause))).collect();
    let all: f64 = ranked.iter().map(|(_, weight)| weight).sum();
    ranked.iter_mut().for_each(|(_, weight)| *weight /= all);
    ranked.sort_by(|a, b| b.1.total_cmp(&a.1));
    ranked
}

/// Days in seven of which this trouble was told.
pub fn days_told(twin: &Twin, today: Day, trouble: Trouble) -> usize {
    let told = |day: &&DayAccount| match trouble {
        Trouble::LittleGas => day.found_little_gas(),
        Trouble::WillNotLight => day.flame == Some(FlameLook::WillNotLight),
        Trouble::GoesOut => day.flame == Some(FlameLook::GoesOut),
        Trouble::WeakFlame => day.flame == Some(FlameLook::Weak),
        Trouble::SourSmell => day.signs.contains(&Sign::SourSmell),
        Trouble::Foam => day.signs.contains(&Sign::Foam),
        Trouble::Overflow => day.signs.contains(&Sign::Overflow),
        Trouble::LevelDrop => day.signs.contains(&Sign::LevelDrop),
        Trouble::InletBlocked => day.signs.contains(&Sign::InletBlocked),
    };
    twin.ledger.window(today, 7).filter(told).count()
}

/// How much more often a cause is behind a trouble in this tank than in any. Source: our choice.
fn speaks_for(o: &Outlook, cause: Cause) -> f64 {
    let either = |holds: bool, yes: f64, no: f64| if holds { yes } else { no };
    let bears = o.limits.olr_unstirred_kg_vs_per_m3_d * o.warmth_share().clamp(0.05, 1.0);
    let fed = |days: i32, of: fn(Feed) -> bool| o.last(days, |day| day.portions.iter().any(|p| of(p.feed))).is_some();
    match cause {
        Cause::LittleFed if o.week.told_days < 3 => 0.3,
        Cause::LittleFed => match o.week.olr / bears {
            ..0.25 => 3.0,
            ..0.6 => 1.0,
            _ => 0.15,
        },
        Cause::Overfed => match o.week.olr / bears {
            ..0.5 => 0.5,
            ..1.0 => 1.0,
            _ => 3.0,
        },
        Cause::Souring => 0.1 + 8.0 * sour(o),
        Cause::Cold => match o.slurry_c {
            ..18.0 => 4.0,
            ..23.0 => 1.2,
            _ => 0.1,
        },
        Cause::Young => {
            let burned =
                o.told_flame(FlameLook::Blue, 60).is_some() || o.last(60, |day| day.burned.is_some()).is_some();
            either(o.age_d.is_some_and(|age| age < 60) && !burned, 4.0, 0.03)
        }
        Cause::Poisoned => either(fed(10, |feed| make_up(feed).is(Kind::Inhibitor)), 8.0, 0.1),
        Cause::Fat => {
            either(fed(4, |feed| make_up(feed).is(Kind::Greasy) || make_up(feed).is(Kind::ProteinRich)), 4.0, 0.6)
        }
        Cause::Leak => either(made_over_burned(o).is_some_and(|share| share > 1.5), 3.0, 0.7),
        Cause::UsedUp => either(made_over_burned(o).is_some_and(|share| share < 1.2), 2.5, 0.3),
        Cause::WaterInPipe => either(o.told_sign(Sign::WaterInGasLine, 7).is_some(), 5.0, 1.0),
        Cause::LightIn => {
            let pale = o.twin.site.walls == Some(Walls::White) || o.told_sign(Sign::GreenLiquid, 14).is_some();
            either(pale, 3.0, 0.1)
        }
        Cause::MuchWater => either(o.week.ts_share.is_some_and(|share| share < 0.05), 2.5, 0.8),
        Cause::ThickFeed => either(o.week.ts_share.is_some_and(|share| share > 0.12), 2.0, 1.0),
        Cause::OutletShut => either(o.told_sign(Sign::OutletBlocked, 14).is_some(), 3.0, 1.0),
        Cause::BurnerAir | Cause::Siphon | Cause::TankLeak | Cause::VapourLock => 1.0,
    }
}

/// Belief that it is sour; before there is any belief, whether it was told so.
fn sour(o: &Outlook) -> f64 {
    match &o.twin.ensemble {
        Some(ensemble) => ensemble.sourness(),
        None => f64::from(u8::from(o.told_sour(7).is_some())),
    }
}

/// Gas the twin has it make in a day over what they tell of burning; `None` where they tell nothing.
fn made_over_burned(o: &Outlook) -> Option<f64> {
    let ensemble = o.twin.ensemble.as_ref()?;
    let burned = o.burned_lately();
    let mean = burned.iter().sum::<f64>() / burned.len().max(1) as f64;
    (mean > 0.0).then(|| ensemble.made_minutes() / mean)
}

#[cfg(test)]
mod tests {
    use super::super::told::{TODAY, fed, twin};
    use super::*;

    fn first(of: &[(i32, What)], trouble: Trouble) -> Cause {
        causes(&twin(of), TODAY, trouble)[0].0
    }

    #[test]
    fn the_same_trouble_has_another_cause_in_another_tank() {
        let starved: Vec<(i32, What)> = (94..=100).map(|day| (day, What::NotFed { days: 1 })).collect();
        assert_eq!(first(&starved, Trouble::LittleGas), Cause::LittleFed);
        let bleached =
            [(97, fed(Feed::Chemical, 0.1)), (98, fed(Feed::FoodWaste, 5.0)), (99, fed(Feed::FoodWaste, 5.0))];
        assert_eq!(first(&bleached, Trouble::LittleGas), Cause::Poisoned);
        assert_eq!(first(&[(99, fed(Feed::CookingOil, 1.0))], Trouble::Foam), Cause::Fat);
        let heavy: Vec<(i32, What)> = (94..=100).map(|day| (day, fed(Feed::CookedRice, 9.0))).collect();
        assert_eq!(first(&heavy, Trouble::Foam), Cause::Overfed);
        assert_eq!(first(&heavy, Trouble::SourSmell), Cause::Overfed);
    }

    #[test]
    fn shares_add_to_one_and_fall() {
        for trouble in [Trouble::LittleGas, Trouble::WillNotLight, Trouble::Overflow, Trouble::InletBlocked] {
            let ranked = causes(&twin(&[]), TODAY, trouble);
            assert!((ranked.iter().map(|(_, share)| share).sum::<f64>() - 1.0).abs() < 1e-9);
            assert!(ranked.windows(2).all(|pair| pair[0].1 >= pair[1].1), "{ranked:?}");
        }
    }
}
