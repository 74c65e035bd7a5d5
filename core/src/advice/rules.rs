//! The rules: each looks at one thing and, when it bites, says what it allows and why.
//!
//! Takes the outlook; gives findings. None knows of another: `advise` lets the strictest win.

use super::outlook::Outlook;
use super::{Reason, Verdict, burning, diet};
use crate::climate;
use crate::fact::{FlameLook, Sign};
use crate::feeds::{Feed, Kind, make_up};
use crate::ledger::DayAccount;

/// What one rule found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finding {
    pub reason: Reason,
    pub verdict: Verdict,
    /// Most VS that may go in a day. Units: kg VS/d.
    pub most_vs: Option<f64>,
    pub hold_days: u32,
}

impl Finding {
    pub fn new(reason: Reason, verdict: Verdict) -> Finding {
        Finding { reason, verdict, most_vs: None, hold_days: 0 }
    }
    pub fn at_most(self, vs: f64) -> Finding {
        Finding { most_vs: Some(vs), ..self }
    }
    fn for_days(self, days: f64) -> Finding {
        Finding { hold_days: days.max(0.0).ceil() as u32, most_vs: Some(0.0), ..self }
    }
}

pub type Rule = fn(&Outlook) -> Option<Finding>;

/// What the model does not see, beside the ration that belief gives.
pub const BESIDE_BELIEF: [Rule; 10] =
    [inhibitor, souring, part, diet::not_food, no_seed, cold, too_hot, recovering, after_gap, diet::grease];

/// Every rule, weightiest first: while there is no belief yet.
pub const RULES: [Rule; 13] = [
    inhibitor,
    souring,
    part,
    diet::not_food,
    no_seed,
    seed_resting,
    overload,
    cold,
    too_hot,
    recovering,
    ramp,
    after_gap,
    diet::grease,
];

/// What is good to know beside the ration, said when nothing weightier is.
pub const BESIDE_RATION: [Rule; 12] = [
    burning::first_gas,
    burning::leak,
    diet::too_thick,
    diet::citrus,
    diet::protein,
    diet::salt,
    diet::too_thin,
    burning::gas_unused,
    cold_coming,
    diet::needs_dung,
    amount_unknown,
    size_unknown,
];

/// Bleach, medicine, soap: nothing but water and dung until it has passed.
fn inhibitor(o: &Outlook) -> Option<Finding> {
    let days = o.limits.hold_sour_least_d as i32;
    let ago = o.last(days, |day| day.portions.iter().any(|p| make_up(p.feed).is(Kind::Inhibitor)))?;
    Some(Finding::new(Reason::Inhibitor, Verdict::Hold).for_days(f64::from(days - ago)))
}

/// Sour smell, or pH that low with it: rest heals; the lower the pH, or the more often it smells, the longer.
fn souring(o: &Outlook) -> Option<Finding> {
    let smelt = o.told_sign(Sign::SourSmell, 3);
    let ph = o.told_ph(3);
    let acid = ph.is_some_and(|ph| ph < o.limits.ph_watch);
    let foam = o.told_sign(Sign::Foam, 2).map(|ago| o.limits.hold_foam_d - f64::from(ago));
    let days_smelt = o.twin.ledger.window(o.today, 10).filter(|day| day.signs.contains(&Sign::SourSmell)).count();
    let since = o.told_sign(Sign::SourSmell, 10).map_or(0.0, f64::from);
    let hold = match (smelt, ph) {
        (_, Some(ph)) if ph < o.limits.ph_restart => o.limits.hold_sour_most_d,
        _ if days_smelt >= 3 => o.limits.hold_sour_most_d - since,
        (Some(ago), _) => o.limits.hold_sour_least_d - f64::from(ago),
        (None, Some(_)) if acid => o.limits.hold_sour_least_d,
        _ => foam.filter(|days| *days > 0.0)?,
    };
    (hold > 0.0).then(|| Finding::new(Reason::Souring, Verdict::Hold).for_days(hold))
}

/// A torn bag or a cracked tank: mend first.
fn part(o: &Outlook) -> Option<Finding> {
    let torn = o.told_sign(Sign::BagTorn, 2).or(o.told_sign(Sign::TankCracked, 2));
    let stuck = [Sign::OutletBlocked, Sign::InletBlocked, Sign::LevelDrop, Sign::GasLineBlocked]
        .into_iter()
        .any(|sign| o.told_sign(sign, 1).is_some());
    match (torn, stuck) {
        (Some(_), _) => Some(Finding::new(Reason::Part, Verdict::Check).for_days(1.0)),
        (None, true) => Some(Finding::new(Reason::Part, Verdict::Check)),
        _ => None,
    }
}

/// A new tank into which no dung or slurry went.
fn no_seed(o: &Outlook) -> Option<Finding> {
    let age = o.age_d.filter(|days| *days < 45)?;
    let dung = |feed: Feed| make_up(feed).is(Kind::Dung) || make_up(feed).is(Kind::Seed);
    let seeded = o.twin.ledger.seeds.iter().any(|(_, feed, _)| dung(*feed));
    let fed_dung = o.twin.ledger.days.iter().flat_map(|day| &day.portions).any(|p| dung(p.feed));
    let burns = o.told_flame(FlameLook::Blue, age).is_some();
    (!seeded && !fed_dung && !burns).then(|| Finding::new(Reason::NoSeed, Verdict::Hold).for_days(1.0))
}

/// The seed works first: no food before it has had its days, unless a flame was seen to hold.
fn seed_resting(o: &Outlook) -> Option<Finding> {
    let age = f64::from(o.age_d?);
    let resting = o.limits.ramp_step_d / o.warmth_share().max(0.25);
    let burns = o.told_flame(FlameLook::Blue, 7).is_some();
    (age < resting && !burns)
        .then(|| Finding::new(Reason::SeedResting, Verdict::Hold).for_days((resting - age).min(7.0)))
}

/// The handbook's loading rate, at this warmth; over it for a week, and it is told to stop.
fn overload(o: &Outlook) -> Option<Finding> {
    let most = o.limits.olr_unstirred_kg_vs_per_m3_d * o.warmth_share().min(1.0);
    let vs = o.vs_at(most);
    let finding = Finding::new(Reason::Overloaded, Verdict::Less).at_most(vs);
    match o.week.olr / most {
        ..=1.15 => Some(Finding { reason: Reason::Usual, verdict: Verdict::Feed, ..finding }),
        ..=1.6 => Some(finding.reducing(0.8)),
        ..=2.5 => Some(Finding { verdict: Verdict::Hold, ..finding }.for_days(1.0)),
        _ => Some(Finding { verdict: Verdict::Hold, ..finding }.for_days(o.limits.hold_sour_least_d)),
    }
}

impl Finding {
    fn reducing(self, by: f64) -> Finding {
        Finding { most_vs: self.most_vs.map(|vs| vs * by), ..self }
    }
}

/// Too cold to eat.
fn cold(o: &Outlook) -> Option<Finding> {
    let t = o.slurry_c;
    if t < o.limits.temperature_stops_c {
        return Some(Finding::new(Reason::Cold, Verdict::Hold).for_days(3.0));
    }
    (t < o.limits.temperature_least_c + 3.0).then(|| Finding::new(Reason::Cold, Verdict::Warm))
}

fn too_hot(o: &Outlook) -> Option<Finding> {
    (o.slurry_c > o.limits.temperature_most_c).then(|| Finding::new(Reason::TooHot, Verdict::Warm))
}

/// Sour within the last two weeks and no longer: half a ration until the flame is strong.
fn recovering(o: &Outlook) -> Option<Finding> {
    if souring(o).is_some() {
        return None;
    }
    let ago = o.told_sour(14)?;
    let strong = o.told_flame(FlameLook::Blue, ago).is_some();
    let share = if strong { 0.75 } else { o.limits.restart_share };
    let vs = o.borne_vs() * share;
    Some(Finding::new(Reason::Recovering, Verdict::Less).at_most(vs))
}

/// A young tank grows into its ration, a quarter more each week.
fn ramp(o: &Outlook) -> Option<Finding> {
    let age = f64::from(o.age_d.filter(|days| *days < 90)?);
    let resting = o.limits.ramp_step_d / o.warmth_share().max(0.25);
    let share = o.limits.ramp_start_share
        + ((age - resting) / (o.limits.ramp_step_d / o.warmth_share().max(0.25))).max(0.0).floor()
            * o.limits.ramp_step_share;
    let vs = o.borne_vs() * share;
    (share < 1.0).then(|| Finding::new(Reason::StartUp, Verdict::Feed).at_most(vs))
}

/// After days without feed: start at half, never make up for what was missed.
fn after_gap(o: &Outlook) -> Option<Finding> {
    let told_none =
        |back: i32| o.twin.ledger.on(o.today.plus(-back)).is_some_and(|d| d.portions.is_empty() && d.none_told);
    let gap = (1..=30).take_while(|back| told_none(*back)).count();
    if gap < 5 {
        return None;
    }
    let vs = o.borne_vs() * o.limits.restart_share;
    Some(Finding::new(Reason::AfterGap, Verdict::Feed).at_most(vs))
}

/// Colder weeks are coming than the slurry knows.
fn cold_coming(o: &Outlook) -> Option<Finding> {
    let normals = o.twin.site.normals.as_ref()?;
    let falls_k = climate::on(normals, o.today).air_c - climate::on(normals, o.today.plus(COLD_AHEAD_D)).air_c;
    (falls_k > COLD_FALL_K && o.slurry_c - falls_k < o.limits.temperature_fair_c)
        .then(|| Finding::new(Reason::ColdComing, Verdict::Feed))
}

/// Weeks ahead that a family can still make ready for, and the fall that is worth it. Source: our choice.
const COLD_AHEAD_D: i32 = 28;
const COLD_FALL_K: f64 = 3.0;

/// Nothing is known of how much it holds.
fn size_unknown(o: &Outlook) -> Option<Finding> {
    let site = &o.twin.site;
    (site.tank_l.is_none() && site.liquid_l.is_none()).then(|| Finding::new(Reason::SizeUnknown, Verdict::Feed))
}

/// A meal without its amount.
fn amount_unknown(o: &Outlook) -> Option<Finding> {
    o.last(1, |day| day.portions.iter().any(|portion| portion.assumed))?;
    Some(Finding::new(Reason::AmountUnknown, Verdict::Feed))
}

/// Whether the gas is what it should be: for wording only, no limit.
pub fn hungry(o: &Outlook) -> bool {
    o.last(3, DayAccount::found_little_gas).is_some()
}
