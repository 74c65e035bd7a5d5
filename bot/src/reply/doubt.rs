//! The question about words that could not be placed: it quotes them and offers the two likeliest meanings.
//!
//! Takes the doubt and what else the text told; gives its words. Decides nothing: the answer does.

use super::word::Voice;
use crate::household::{Pending, Topic};
use crate::mind::Mind;
use crate::record::Recorded;
use crate::text::{Likely, likely};
use bellyful_core::fact::{Fact, What};

/// The question with its likeliest answers named; `None` where none is likelier than any other.
pub fn offered(mind: &Mind, voice: &Voice, recorded: &Recorded, pending: &Pending) -> Option<String> {
    if !matches!(pending.topic, Topic::FeedName | Topic::Word) {
        return None;
    }
    let household = &recorded.household;
    let meant = likely(&mind.lexicons, &pending.said, &household.lang);
    if meant == [Likely::Water] {
        let food = foods(voice, &recorded.facts).pop()?;
        return Some(voice.quoting("doubt-water", &pending.said, &[food]));
    }
    let mut names: Vec<String> = meant
        .iter()
        .flat_map(|likely| match likely {
            Likely::Food(feed) => vec![voice.feed(*feed)],
            Likely::Sign(sign) => vec![voice.sign_name(*sign)],
            Likely::Usual => foods(voice, &household.talk.last_meal),
            Likely::Water => vec![],
        })
        .collect();
    names.dedup();
    names.truncate(2);
    let id = ["doubt-one", "doubt-two"].get(names.len().checked_sub(1)?)?;
    Some(voice.quoting(id, &pending.said, &names))
}

fn foods(voice: &Voice, facts: &[Fact]) -> Vec<String> {
    let fed = |fact: &Fact| if let What::Fed { feed, .. } = fact.what { Some(voice.feed(feed)) } else { None };
    facts.iter().filter_map(fed).collect()
}
