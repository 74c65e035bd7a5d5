//! The thoughts of a reply, each put into words: what was heard, what to do, why, and what we ask.
//!
//! Takes facts, advice and the household's way of counting; gives pieces for `compose`. Never decides anything.

use super::amounts::{amount, number, sayable_below};
use super::catalog::{Catalog, Value, Values};
use super::compose::{Piece, Rank};
use super::segments::plain;
use crate::household::{Household, LastAdvice, Pending, Topic};
use bellyful_core::advice::{Advice, Cause, Reason, Verdict};
use bellyful_core::fact::{Fact, Measure, Sign, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::ledger::{kg_per_unit, litres_of};
use bellyful_core::site::Site;
use bellyful_core::units::Day;

/// Who is spoken to, and how they count.
#[derive(Clone, Copy)]
pub struct Voice<'a> {
    pub catalog: &'a Catalog,
    pub lang: &'a str,
    pub feed_unit: Option<Unit>,
    pub water_unit: Option<Unit>,
}

impl<'a> Voice<'a> {
    pub fn to(catalog: &'a Catalog, household: &'a Household) -> Voice<'a> {
        let lang = catalog.written(&household.lang, household.talk.latin_script);
        Voice { catalog, lang, feed_unit: household.talk.feed_unit, water_unit: household.talk.water_unit }
    }

    pub fn in_lang(catalog: &'a Catalog, lang: &'a str) -> Voice<'a> {
        let lang = catalog.written(lang, false);
        Voice { catalog, lang, feed_unit: None, water_unit: None }
    }

    /// Whether the language is written in letters that texts carry cheaply.
    pub fn latin(&self) -> bool {
        self.say("language-name", &[]).chars().next().is_some_and(|c| c.is_ascii_alphabetic())
    }

    pub fn sign_name(&self, sign: Sign) -> String {
        self.say("item-sign", &[("sign", sign.id().into())]).trim().to_owned()
    }

    pub fn say(&self, id: &str, values: Values) -> String {
        self.catalog.say(self.lang, id, values)
    }

    pub fn must(&self, id: &str, values: Values) -> Piece {
        Piece::new(Rank::Must, self.say(id, values))
    }

    pub fn feed(&self, feed: Feed) -> String {
        self.say(&format!("feed-{feed}"), &[])
    }

    pub fn measure(&self, measure: Measure) -> String {
        self.say(&format!("measure-{measure}"), &[])
    }

    fn amount(&self, value: f64, unit: Unit) -> String {
        amount(self.catalog, self.lang, value, unit)
    }

    fn number(&self, value: f64) -> String {
        number(self.catalog, self.lang, value)
    }

    /// "Noted: 3 kg scraps, 6 L water.", shortened item by item from the end.
    pub fn heard(&self, id: &str, facts: &[Fact], today: Day) -> Option<Piece> {
        let items: Vec<String> = facts.iter().filter_map(|fact| self.item(fact, today)).collect();
        let wordings: Vec<String> = (1..=items.len())
            .rev()
            .map(|n| {
                let more = if n < items.len() { ".." } else { "" };
                self.say(id, &[("what", format!("{}{more}", items[..n].join(", ")).into())])
            })
            .collect();
        (!wordings.is_empty()).then(|| Piece::or(Rank::Heard, wordings))
    }

    /// What was told, without the day it holds from.
    pub fn undated(&self, fact: &Fact, today: Day) -> Option<String> {
        let measured = |value: &Option<f64>, unit: &Option<Unit>| Some(self.amount((*value)?, (*unit)?));
        let item = match &fact.what {
            What::Fed { feed, amount, unit } => match measured(amount, unit) {
                Some(amount) => self.say("item-fed", &[("amount", amount.into()), ("feed", self.feed(*feed).into())]),
                None => self.say("item-fed-unknown", &[("feed", self.feed(*feed).into())]),
            },
            What::Usual { feed, amount, unit } => {
                let amount = measured(amount, unit).unwrap_or_default();
                self.say("item-usual", &[("amount", amount.into()), ("feed", self.feed(*feed).into())])
            }
            What::Water { amount: Some(0.0), .. } => self.say("item-water-none", &[]),
            What::Water { amount, unit } => match measured(amount, unit) {
                Some(amount) => self.say("item-water", &[("amount", amount.into())]),
                None => self.say("item-water-unknown", &[]),
            },
            What::NotFed { days } => self.say("item-not-fed", &[("days", (*days).into())]),
            What::Gas { level } => self.say("item-gas", &[("level", level.id().into())]),
            What::Burned { minutes } => self.say("item-burned", &[("minutes", self.number(minutes.round()).into())]),
            What::Flame { look } => self.say("item-flame", &[("look", look.id().into())]),
            What::Temperature { celsius, of } => {
                self.say("item-temperature", &[("of", of.id().into()), ("celsius", self.number(*celsius).into())])
            }
            What::Ph { value } => self.say("item-ph", &[("value", self.number(*value).into())]),
            What::Pressure { cm_water } => self.say("item-pressure", &[("cm", self.number(*cm_water).into())]),
            What::Sign { sign } => self.say("item-sign", &[("sign", sign.id().into())]),
            What::Tank { litres } => self.say("item-tank", &[("litres", self.number(*litres).into())]),
            What::Store { litres } => self.say("item-store", &[("litres", self.number(*litres).into())]),
            What::Walls { look } => self.say("item-walls", &[("look", look.id().into())]),
            What::Started => self.say("item-started", &[("days", Value::Number(f64::from(today.since(fact.day))))]),
            What::Removed { amount, unit } => self.say("item-removed", &[("amount", measured(amount, unit)?.into())]),
            What::Alkali { what, amount, unit } => match measured(amount, unit) {
                Some(amount) => self.say("item-alkali", &[("what", what.id().into()), ("amount", amount.into())]),
                None => self.say("item-alkali-bare", &[("what", what.id().into())]),
            },
            What::Measure { unit, litres } => self.say(
                "item-measure",
                &[("measure", self.measure(*unit).into()), ("litres", self.number(*litres).into())],
            ),
            What::People { count } => self.say("item-people", &[("count", (*count).into())]),
            What::Place { name } => self.say("item-place", &[("name", name.as_str().into())]),
            What::Seeded { feed, amount, unit } => self.say(
                "item-seeded",
                &[("amount", measured(amount, unit).unwrap_or_default().into()), ("feed", self.feed(*feed).into())],
            ),
            What::Liquid { .. }
            | What::Country { .. }
            | What::Sited { .. }
            | What::Corrected { .. }
            | What::Retracted { .. } => return None,
        };
        Some(item.trim().to_owned())
    }

    /// What was told, with the day unless it was today.
    pub fn item(&self, fact: &Fact, today: Day) -> Option<String> {
        let item = self.undated(fact, today)?;
        let ago = today.since(fact.day);
        let dated = ago > 0 && !matches!(fact.what, What::Seeded { .. } | What::Started);
        Some(match dated {
            true => self.say("item-day", &[("item", item.into()), ("days", Value::Number(f64::from(ago)))]),
            false => item,
        })
    }

    /// What to do, in the family's own measures.
    pub fn doing(&self, advice: &Advice, for_today: bool, site: &Site, mix: &[(Feed, f64)]) -> Piece {
        let ration = self.ration(advice.ration_kg, site, mix);
        let water = self.water(advice.water_l, site);
        let dry = advice.water_l < DRY_L;
        let day = if for_today { "today" } else { "tomorrow" };
        let values: [(&'static str, Value); 2] = [("amount", ration.into()), ("water", water.into())];
        let held = f64::from(advice.hold_days);
        let said = match advice.verdict {
            Verdict::Hold if for_today => self.say("do-hold", &[("days", held.into())]),
            Verdict::Hold => self.say("do-hold-tomorrow", &[("days", held.into())]),
            Verdict::Less => self.say(&format!("do-less-{day}"), &values),
            Verdict::Warm if advice.ration_kg > 0.0 => self.say("do-warm-feed", &values[..1]),
            Verdict::Warm => self.say("do-warm", &[]),
            _ if advice.ration_kg <= 0.0 => self.say("do-hold", &[("days", held.max(1.0).into())]),
            _ if dry => self.say(&format!("do-feed-dry-{day}"), &values[..1]),
            _ => self.say(&format!("do-feed-{day}"), &values),
        };
        Piece::new(Rank::Must, said)
    }

    /// The same in fewer words, where the last text said it just so; `None` where it has to be said in full.
    pub fn doing_again(
        &self,
        last: &LastAdvice,
        advice: &Advice,
        for_today: bool,
        site: &Site,
        mix: &[(Feed, f64)],
    ) -> Option<Piece> {
        if last.advice.verdict != advice.verdict {
            return None;
        }
        let said = match advice.verdict {
            Verdict::Hold => {
                let rested = for_today && last.advice.hold_days > 0;
                rested.then(|| self.say("do-hold-still", &[("days", f64::from(advice.hold_days).into())]))?
            }
            // To feed less is said in full: whoever still feeds too much has not heard it.
            Verdict::Feed if advice.ration_kg > 0.0 => {
                let words =
                    |advice: &Advice| (self.ration(advice.ration_kg, site, mix), self.water(advice.water_l, site));
                let dry = advice.water_l < DRY_L;
                let (ration, water) = words(advice);
                let before = words(&last.advice);
                let read = last.text.contains(&plain(&ration)) || last.text.contains(&ration);
                if !read || before.0 != ration || before.1 != water || (last.advice.water_l < DRY_L) != dry {
                    return None;
                }
                let day = if for_today { "today" } else { "tomorrow" };
                let id = if dry { format!("do-same-dry-{day}") } else { format!("do-same-{day}") };
                self.say(&id, &[("amount", ration.into()), ("water", water.into())])
            }
            _ => return None,
        };
        Some(Piece::new(Rank::Must, said))
    }

    /// Water stirred into a slurry that no longer flows.
    pub fn thinning(&self, site: &Site) -> Piece {
        let water = self.water(THICK_WATER_SHARE * site.slurry_l(), site);
        Piece::new(Rank::Question, self.say("do-water", &[("water", water.into())]))
    }

    pub fn slurry(&self, kg: f64, site: &Site) -> String {
        self.ration(kg, site, &[(Feed::Digestate, 1.0)])
    }

    fn ration(&self, kg: f64, site: &Site, mix: &[(Feed, f64)]) -> String {
        let unit = match self.feed_unit {
            Some(unit @ Unit::Of(measure)) if measure != Measure::Piece => unit,
            _ => Unit::Kg,
        };
        let kg_a_unit = kg_per_unit(mix, unit, site).unwrap_or(1.0);
        let (unit, kg_a_unit) = if tedious(kg, kg_a_unit) { (Unit::Kg, 1.0) } else { (unit, kg_a_unit) };
        let (value, unit) = match sayable_below(kg / kg_a_unit, unit) {
            0.0 => (sayable_below(kg, Unit::Kg).max(0.1), Unit::Kg),
            value => (value, unit),
        };
        self.amount(value, unit)
    }

    pub fn water(&self, litres: f64, site: &Site) -> String {
        let unit = match self.water_unit {
            Some(unit @ Unit::Of(_)) => unit,
            _ => Unit::L,
        };
        let litres_a_unit = litres_of(1.0, unit, site).map_or(1.0, |volume| volume.get());
        let (unit, litres_a_unit) = if tedious(litres, litres_a_unit) { (Unit::L, 1.0) } else { (unit, litres_a_unit) };
        let (value, unit) = match sayable_below(litres / litres_a_unit, unit) {
            0.0 => (sayable_below(litres, Unit::L).max(0.1), Unit::L),
            value => (value, unit),
        };
        self.amount(value, unit)
    }

    pub fn why(&self, rank: Rank, reason: Reason) -> Piece {
        Piece::new(rank, self.say(&format!("why-{reason}"), &[]))
    }

    pub fn gas(&self, minutes: f64) -> Piece {
        let rounded = (minutes / 5.0).floor() * 5.0;
        let said = match rounded {
            ..5.0 => self.say("gas-little", &[]),
            rounded => self.say("gas-today", &[("minutes", self.number(rounded).into())]),
        };
        Piece::new(Rank::Extra, said)
    }

    pub fn sign(&self, sign: Sign) -> Piece {
        self.must(&format!("sign-{sign}"), &[])
    }

    /// The one step against a cause.
    pub fn cause(&self, cause: Cause) -> String {
        self.say(&format!("cause-{cause}"), &[])
    }

    /// A question that quotes them and names what they may have meant.
    pub fn quoting(&self, id: &str, said: &str, names: &[String]) -> String {
        let name = |at: usize| Value::Text(names.get(at).cloned().unwrap_or_default());
        self.say(id, &[("said", short(said).into()), ("first", name(0)), ("second", name(1))])
    }

    /// The question that is now pending.
    pub fn question(&self, pending: &Pending) -> Piece {
        let said = ("said", Value::Text(short(&pending.said)));
        let measure = ("measure", Value::Text(self.measure(pending.measure.unwrap_or(Measure::Bucket))));
        let text = match pending.topic {
            Topic::Bucket => self.say("ask-bucket", &[measure]),
            Topic::Amount => self.say("doubt-amount", &[said]),
            Topic::Unit => self.say("doubt-unit", &[said, measure]),
            Topic::FeedName => self.say("doubt-feed", &[said]),
            Topic::DayName => self.say("doubt-day", &[said]),
            Topic::SignName => self.say("doubt-sign", &[]),
            Topic::Word => self.say("doubt-word", &[said]),
            Topic::Forget => self.say("forget-sure", &[]),
            Topic::Cause => {
                pending.cause.map_or_else(String::new, |(_, cause)| self.say(&format!("ask-cause-{cause}"), &[]))
            }
            other => self.say(&format!("ask-{other}"), &[]),
        };
        Piece::new(Rank::Question, text)
    }
}

/// Less water than this is not worth carrying. Source: our choice.
const DRY_L: f64 = 0.3;

/// Water stirred into a slurry that no longer flows, as a share of it. Source: FAO 1992, a bucket to a family's tank.
const THICK_WATER_SHARE: f64 = 0.0125;

/// Their words, cut to what a reply can quote.
fn short(said: &str) -> String {
    const MOST: usize = 40;
    if said.chars().count() <= MOST {
        return said.to_owned();
    }
    said.chars().take(MOST - 3).chain("...".chars()).collect()
}

/// "34 cups of water": nobody counts so many of a small measure.
fn tedious(amount: f64, of_one: f64) -> bool {
    const SMALL: f64 = 2.0;
    const MOST: f64 = 6.0;
    of_one < SMALL && amount > MOST * of_one
}
