//! The reading: what one text says. Its JSON is a contract with outside programs.

use bellyful_core::fact::{AlkaliKind, What};
use bellyful_core::feeds::Feed;
use serde::{Deserialize, Serialize, Serializer};

/// Everything one text says.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
pub struct Reading {
    /// ISO 639-1 code of the language it was read in.
    pub lang: String,
    /// The household a field worker speaks for, as written.
    #[serde(rename = "for")]
    pub for_household: Option<String>,
    /// What it states, in the order said.
    pub facts: Vec<Told>,
    pub asks: Vec<Ask>,
    pub control: Option<Control>,
    /// What could be meant two ways or not at all.
    pub unsure: Vec<Unsure>,
    /// How much may go in is asked for a day to come. Not part of the contract.
    #[serde(skip)]
    pub asks_ahead: bool,
}

impl Reading {
    /// Whether people are in danger.
    pub fn danger(&self) -> bool {
        self.facts.iter().any(Told::endangers)
    }
}

/// A fact as told: its day counts from the day of the text, 0 when not said; `None` where the fact has no day.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Told {
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub day: Option<i32>,
    #[serde(flatten)]
    pub what: What,
}

/// A danger of the last week may not be over; one of last month is a tale.
pub const PERHAPS_STILL: i32 = -7;

/// Nobody who has told of no meal yet tells of one so old: the dung of so many days ago is what the tank was filled with.
/// Source: our choice.
pub const LONG_AGO: i32 = -7;

impl Told {
    /// Whether people are in danger by this.
    pub fn endangers(&self) -> bool {
        matches!(self.what, What::Sign { sign } if sign.is_danger()) && self.day.is_none_or(|day| day >= PERHAPS_STILL)
    }
}

/// What it wants to know.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "ask", rename_all = "snake_case")]
pub enum Ask {
    Ration,
    Water,
    Gas,
    Status,
    Why,
    Digestate,
    StartUp,
    Person,
    CanFeed {
        feed: Feed,
    },
    /// Whether soda or lime may go in: for the reading's readers a chemical, for us a matter of the field worker's.
    #[serde(rename = "can_feed", skip_deserializing)]
    CanMend {
        #[serde(rename = "feed", serialize_with = "as_chemical")]
        what: AlkaliKind,
    },
    History {
        #[serde(default, skip_serializing_if = "Option::is_none")]
        of: Option<String>,
    },
}

fn as_chemical<S: Serializer>(_: &AlkaliKind, to: S) -> Result<S::Ok, S::Error> {
    Feed::Chemical.serialize(to)
}

/// An order to the bot itself.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Control {
    Stop,
    Start,
    Help,
    Undo,
    Yes,
    No,
    Forget,
    More,
    Mute,
    /// Change of language; `None` when none is named.
    Language(Option<String>),
}

bellyful_core::ids!(/// What it is that could not be placed.
    About { Amount = "amount", Unit = "unit", Feed = "feed", Day = "day", Sign = "sign", Word = "word" });

/// Something that could be meant two ways or not at all, in the writer's words.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Unsure {
    pub about: About,
    pub said: String,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_json_is_the_contract() {
        let text = r#"{"lang":"en","for":null,"facts":[{"day":-1,"fact":"fed","feed":"cooked_rice","amount":2.0,"unit":"bucket"},{"fact":"tank","litres":1000.0}],"asks":[{"ask":"ration"},{"ask":"can_feed","feed":"bone"},{"ask":"history"}],"control":{"language":null},"unsure":[{"about":"unit","said":"3 rice"}]}"#;
        let reading: Reading = serde_json::from_str(text).expect("reads");
        assert_eq!(serde_json::to_string(&reading).expect("writes"), text);
        let stop: Option<Control> = serde_json::from_str("\"stop\"").expect("reads");
        assert_eq!(stop, Some(Control::Stop));
    }
}
