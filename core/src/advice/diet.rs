//! Rules on what goes in, beside how much of it: fat, citrus, protein, salt, lumber, dung, and the water with it.
//!
//! Takes the outlook; gives findings. What the model sees of these (ammonia, salt, thinning) is in the ration already:
//! here they get their name, so that the family knows what to leave out.

use super::outlook::Outlook;
use super::rules::Finding;
use super::{Reason, Verdict};
use crate::fact::Sign;
use crate::feeds::{Feed, Kind, MakeUp, make_up};
use crate::ledger::DayAccount;

/// Days of meals looked at for what was too much in them. Source: our choice.
const LATELY_D: i32 = 3;

/// Sum over the meals of the last days. `of` is per kg wet.
fn lately(o: &Outlook, days: i32, of: impl Fn(&MakeUp) -> f64) -> f64 {
    let portions = o.twin.ledger.window(o.today, days).flat_map(|day| &day.portions);
    portions.map(|portion| of(make_up(portion.feed)) * portion.wet.get()).sum()
}

/// Fat in greasy foods, or oil of citrus, sours what the model still calls safe: half of what it would bear.
fn halved(o: &Outlook, reason: Reason) -> Finding {
    Finding::new(reason, Verdict::Less).at_most(o.borne_vs() * o.limits.restart_share)
}

/// Oil and fat beyond their share of what it gets.
pub fn grease(o: &Outlook) -> Option<Finding> {
    let vs = lately(o, LATELY_D, MakeUp::vs);
    let fat = lately(o, LATELY_D, |made| if made.is(Kind::Greasy) { made.fat } else { 0.0 });
    (fat > o.limits.grease_share_of_vs * vs && fat > o.vs_at(0.1)).then(|| halved(o, Reason::Grease))
}

/// The oil of citrus peel beyond what a tank bears in a day.
pub fn citrus(o: &Outlook) -> Option<Finding> {
    let peel = lately(o, LATELY_D, |made| f64::from(u8::from(made.is(Kind::Citrus))));
    let oil_mg = peel * o.limits.citrus_oil_share_of_peel * 1e6;
    (oil_mg / f64::from(LATELY_D) / o.liquid.get() > o.limits.citrus_oil_mg_per_l_d).then(|| halved(o, Reason::Citrus))
}

/// Meat, fish, pulses or poultry dung in most of what it gets.
pub fn protein(o: &Outlook) -> Option<Finding> {
    let vs = lately(o, LATELY_D, MakeUp::vs);
    let protein = lately(o, LATELY_D, |made| made.protein);
    (protein > o.limits.protein_share_of_vs * vs && protein > o.vs_at(0.2))
        .then(|| Finding::new(Reason::Protein, Verdict::Feed))
}

/// What flows in, water and all, is saltier than a tank bears.
pub fn salt(o: &Outlook) -> Option<Finding> {
    let days = mixed(o);
    let portions = days.iter().flat_map(|day| &day.portions);
    let salt_g: f64 = portions.map(|portion| make_up(portion.feed).salt_g_per_kg * portion.wet.get()).sum();
    (days.len() >= MIXED_LEAST && salt_g > o.limits.salt_most_g_per_l * inflow_l(&days))
        .then(|| Finding::new(Reason::Salt, Verdict::Feed))
}

/// Bones, plastic, soil: they lie there for good.
pub fn not_food(o: &Outlook) -> Option<Finding> {
    let lumber = |feed: Feed| make_up(feed).is(Kind::NotFood) && !make_up(feed).is(Kind::Inhibitor);
    o.last(1, |day| day.portions.iter().any(|p| lumber(p.feed)))?;
    Some(Finding::new(Reason::NotFood, Verdict::Check))
}

/// Kitchen food alone for a month.
pub fn needs_dung(o: &Outlook) -> Option<Finding> {
    let fed: Vec<Feed> = o.twin.ledger.window(o.today, 30).flat_map(|day| &day.portions).map(|p| p.feed).collect();
    let dung = fed.iter().any(|feed| make_up(*feed).is(Kind::Dung));
    (fed.len() >= 25 && !dung).then(|| Finding::new(Reason::NeedsDung, Verdict::Feed))
}

/// Days of the last four of which food and water were both told.
fn mixed<'a>(o: &'a Outlook) -> Vec<&'a DayAccount> {
    o.twin.ledger.window(o.today, 4).filter(|day| day.water_told && !day.portions.is_empty()).collect()
}

/// Food and water together. Units: l, a kilogram of food taking one.
fn inflow_l(days: &[&DayAccount]) -> f64 {
    days.iter().map(|day| day.wet().get() + day.water.get()).sum()
}

/// Days with their water told, below which nothing is said of it. Source: our choice.
const MIXED_LEAST: usize = 3;

/// Told so, or mixed so: it no longer flows.
pub fn too_thick(o: &Outlook) -> Option<Finding> {
    let days = mixed(o);
    let dry: f64 = days.iter().map(|day| day.dry().get()).sum();
    let by_account = days.len() >= MIXED_LEAST && dry > o.limits.slurry_ts_thick * inflow_l(&days);
    (by_account || o.told_sign(Sign::ThickSlurry, 1).is_some()).then(|| Finding::new(Reason::TooThick, Verdict::Water))
}

/// Told so, or so much water that it leaves before it is digested.
pub fn too_thin(o: &Outlook) -> Option<Finding> {
    let days = mixed(o);
    let inflow = inflow_l(&days) / days.len().max(1) as f64;
    let stays_d = if o.slurry_c < 25.0 { o.limits.hrt_least_temperate_d } else { o.limits.hrt_least_warm_d };
    let by_account = days.len() >= MIXED_LEAST && inflow * stays_d > o.liquid.get();
    (by_account || o.told_sign(Sign::WaterySlurry, 1).is_some()).then(|| Finding::new(Reason::TooThin, Verdict::Feed))
}

#[cfg(test)]
mod tests {
    use super::super::told::{TODAY, fed, twin, water};
    use super::super::{Reason, Verdict, advise};
    use crate::fact::{Sign, What};
    use crate::feeds::Feed;

    /// The same on each of the last `days` days.
    fn daily(days: i32, whats: &[What]) -> Vec<(i32, What)> {
        (0..days).flat_map(|ago| whats.iter().map(move |what| (TODAY.0 - ago, what.clone()))).collect()
    }

    fn check(told: &[(i32, What)], reason: Reason, verdict: Verdict, named: bool) {
        let advice = advise(&twin(told), TODAY);
        assert_eq!(advice.reasons.contains(&reason), named, "{advice:?}");
        assert!(!named || advice.verdict == verdict, "{advice:?}");
    }

    #[test]
    fn what_is_too_much_in_the_food_is_named() {
        let scraps = fed(Feed::FoodWaste, 2.0);
        check(&daily(3, &[scraps.clone(), fed(Feed::CitrusPeel, 2.5)]), Reason::Citrus, Verdict::Less, true);
        check(&daily(3, &[scraps.clone(), fed(Feed::CitrusPeel, 0.3)]), Reason::Citrus, Verdict::Less, false);
        check(&daily(3, &[fed(Feed::Fish, 1.5)]), Reason::Protein, Verdict::Feed, true);
        check(&daily(3, &[scraps.clone(), fed(Feed::Fish, 0.1)]), Reason::Protein, Verdict::Feed, false);
        // As dry as that it is too thick as well, which comes first.
        check(&daily(7, &[fed(Feed::Bread, 1.0), water(0.3)]), Reason::Salt, Verdict::Water, true);
        check(&daily(7, &[fed(Feed::Bread, 1.0), water(4.0)]), Reason::Salt, Verdict::Feed, false);
        check(&daily(1, &[scraps.clone(), fed(Feed::Bone, 1.0)]), Reason::NotFood, Verdict::Check, true);
        check(&daily(2, &[scraps])[..1], Reason::NotFood, Verdict::Check, false);
    }

    #[test]
    fn water_is_only_judged_where_it_was_told() {
        let bread = fed(Feed::Bread, 1.0);
        check(&daily(4, &[bread.clone(), water(0.0)]), Reason::TooThick, Verdict::Water, true);
        check(&daily(4, std::slice::from_ref(&bread)), Reason::TooThick, Verdict::Water, false);
        check(&daily(4, &[bread.clone(), water(9.0)]), Reason::TooThick, Verdict::Water, false);
        check(&daily(4, &[bread.clone(), water(70.0)]), Reason::TooThin, Verdict::Feed, true);
        check(&daily(4, &[bread.clone(), water(9.0)]), Reason::TooThin, Verdict::Feed, false);
        let thick = What::Sign { sign: Sign::ThickSlurry };
        check(&[(100, bread), (100, thick)], Reason::TooThick, Verdict::Water, true);
    }
}
