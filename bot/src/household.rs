//! A household as the bot knows it: who they are, how we talk with them, and their digester's twin.

use crate::message::Outbound;
use bellyful_core::advice::{Cause, Trouble};
use bellyful_core::fact::{Fact, Measure, Unit, What};
use bellyful_core::units::Day;
use chrono::{DateTime, Utc};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Number of a household, as staff say it ("history 12").
pub type HouseholdId = i64;

/// The household's row: small, loaded on every text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Household {
    pub id: HouseholdId,
    /// What staff call them; empty until somebody says.
    pub name: String,
    /// ISO 639-1 code of the language we write to them.
    pub lang: String,
    /// ISO 3166 code, from their place, else the number's prefix.
    pub country: Option<String>,
    /// IANA name.
    pub time_zone: String,
    pub since: DateTime<Utc>,
    /// Seed of the twin's chance: with the facts, all that is needed to rebuild it.
    pub seed: i64,
    /// Field worker who looks after them.
    pub staff_id: Option<i64>,
    /// Facts are numbered within the household from 1.
    pub next_fact: i64,
    pub talk: Talk,
}

/// Where the conversation stands.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default)]
pub struct Talk {
    /// The first reply, who we are and how to stop, has been given (or set-up counted as it).
    pub met: bool,
    /// The question that waits for its answer.
    pub pending: Option<Pending>,
    /// Earlier questions about the household that nobody has answered yet, the latest first.
    pub open: Vec<Pending>,
    /// Questions already asked, and on which day: none is asked twice.
    pub asked: BTreeMap<Topic, Day>,
    /// Facts kept from the last text that told some, for "no, 3 not 5" and "undo".
    pub last_facts: Vec<i64>,
    /// The earliest day those facts are about.
    pub last_day: Option<Day>,
    /// The last meal told, for "same as yesterday".
    pub last_meal: Vec<Fact>,
    /// The measures they count feed and water in, so that we answer in the same.
    pub feed_unit: Option<Unit>,
    pub water_unit: Option<Unit>,
    /// Measures whose size we have asked for.
    pub measures_asked: Vec<Measure>,
    /// Reasons and words of the last advice, for "why?" and for wording a repeat shorter.
    pub last_advice: Option<LastAdvice>,
    /// Told in full last time, for "more".
    pub more: Vec<String>,
    /// Another language than ours that their last text was in: the second such text in a row makes it theirs.
    pub other_lang: Option<String>,
    /// They said no more than hello: the first text that tells or asks something says which language is theirs.
    pub lang_guessed: bool,
    /// They write Hindi in Latin letters, and the like.
    pub latin_script: bool,
    pub muted: bool,
    /// The tank was emptied and began anew under another number: only to be read from now on.
    pub closed: bool,
    /// The number its story goes on under, once closed; the number it came from, where the tank began anew.
    pub goes_on: Option<i64>,
    pub came_from: Option<i64>,
    /// They asked for a person, and nobody has seen to them since.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub asked_at: Option<DateTime<Utc>>,
    /// They told of danger, and have not texted since.
    pub alarmed: bool,
    /// The last day on which we started a text: never more than one a day.
    pub started_on: Option<Day>,
    /// Chores are on the clock, and when each was told last.
    pub chores_set: bool,
    pub chores: BTreeMap<Chore, Day>,
    /// Day of their last text, and how often we asked into the silence since.
    pub last_heard: Option<Day>,
    pub silences: u32,
    /// Texts answered on `count_day`, for the daily cap.
    pub count_day: Day,
    pub count: u32,
    /// Staff lifted the daily cap until then.
    pub uncapped_until: Option<DateTime<Utc>>,
}

impl Talk {
    /// Somebody had seen to the household by then: what was asked before is answered.
    pub fn seen_to(&mut self, done_at: Option<DateTime<Utc>>) {
        self.asked_at = self.asked_at.filter(|asked_at| done_at.is_none_or(|done_at| done_at < *asked_at));
    }
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct LastAdvice {
    pub at: DateTime<Utc>,
    pub text: String,
    pub advice: bellyful_core::advice::Advice,
}

bellyful_core::ids!(/// What the bot wants to know of a household, one short question at a time.
    Topic {
    Language = "language", Tank = "tank", Started = "started", Seed = "seed", Place = "place", Bucket = "bucket",
    Usual = "usual", Store = "store", Walls = "walls", People = "people", Use = "use",
    /// Not about the household but about a word in their last text.
    Amount = "amount", Unit = "unit", FeedName = "feed", DayName = "day", SignName = "sign", Word = "word",
    /// Do they really want to be forgotten?
    Forget = "forget",
    /// After a sign: the question that tells its causes apart.
    Cause = "cause",
});

impl Topic {
    /// Whether a fact is what the question was after.
    pub fn is_answered_by(self, what: &What) -> bool {
        match self {
            Topic::Tank => matches!(what, What::Tank { .. }),
            Topic::Store => matches!(what, What::Store { .. }),
            Topic::Bucket => matches!(what, What::Measure { .. }),
            Topic::Started => matches!(what, What::Started | What::Seeded { .. }),
            Topic::Seed => matches!(what, What::Seeded { .. }),
            Topic::Place => matches!(what, What::Place { .. }),
            Topic::Usual => matches!(what, What::Usual { .. } | What::Fed { .. }),
            Topic::Walls => matches!(what, What::Walls { .. }),
            Topic::People => matches!(what, What::People { .. }),
            topic if topic.is_doubt() => true,
            _ => false,
        }
    }

    /// About a word of their last text: stands only until the next one.
    pub fn is_doubt(self) -> bool {
        matches!(self, Topic::Amount | Topic::Unit | Topic::FeedName | Topic::DayName | Topic::SignName | Topic::Word)
    }
}

impl Talk {
    /// Puts the next question, if any, in the place of the one that waited; what nobody answered stays open.
    pub fn ask(&mut self, next: Option<Pending>, today: Day, answered: Option<Topic>, facts: &[Fact]) {
        if let Some(pending) = &next {
            self.asked.insert(pending.topic, today);
            self.measures_asked.extend(pending.measure);
        }
        let waited = std::mem::replace(&mut self.pending, next);
        let lasting =
            |pending: &Pending| !pending.topic.is_doubt() && !matches!(pending.topic, Topic::Forget | Topic::Cause);
        self.open.splice(0..0, waited.filter(lasting));
        self.open.retain(|open| {
            answered != Some(open.topic) && !facts.iter().any(|fact| open.topic.is_answered_by(&fact.what))
        });
    }
}

/// A question that was asked and waits.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Pending {
    pub topic: Topic,
    pub asked_at: DateTime<Utc>,
    /// The words it is about.
    #[serde(default)]
    pub said: String,
    /// The measure whose size was asked.
    #[serde(default)]
    pub measure: Option<Measure>,
    /// The trouble that was told and the cause that was asked after.
    #[serde(default)]
    pub cause: Option<(Trouble, Cause)>,
}

impl Pending {
    /// A question that needs no more than its topic.
    pub fn about(topic: Topic, asked_at: DateTime<Utc>) -> Pending {
        Pending { topic, asked_at, said: String::new(), measure: None, cause: None }
    }
}

/// A field worker.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Staff {
    pub id: i64,
    pub name: String,
    pub phone: Option<String>,
    pub gateway: Option<String>,
    pub lang: String,
}

/// Who sent a text.
#[derive(Debug, Clone, PartialEq)]
pub enum Sender {
    /// Belongs to nobody yet; may have said stop all the same.
    Stranger {
        stopped: bool,
    },
    Family {
        household: HouseholdId,
        stopped: bool,
    },
    Staff(Staff),
}

/// All that a decision may look at: loaded before, never asked for during.
#[derive(Debug, Clone, PartialEq)]
pub struct Situation {
    pub sender: Sender,
    /// The household row's version as loaded, 0 without one: what follows is kept only if nobody moved it since.
    pub version: i64,
    /// The household the text is about: the sender's own, or the one a field worker speaks for or asks of.
    pub household: Option<Household>,
    /// Where it is, in their words; empty until somebody says.
    pub place: String,
    /// Somebody has taken its need and not yet seen to it.
    pub in_hand: bool,
    /// Where a field worker's words fit several households: their numbers and names, a few.
    pub several: Vec<(HouseholdId, String)>,
    /// Their twin as kept, with the day whose dawn it stands at.
    pub twin: Option<KeptTwin>,
    /// Facts from the twin's day on, and any later; earlier ones only where a correction reaches back.
    pub facts: Vec<Fact>,
    /// Phones of the household: gateway and number, those that said stop left out.
    pub phones: Vec<Phone>,
    /// Who is told of an alarm at this household, in order.
    pub on_call: Vec<Staff>,
    /// Alarms at this household that nobody has acknowledged, oldest first.
    pub alarms: Vec<Alarm>,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Phone {
    pub gateway: String,
    pub number: String,
}

/// What the nightly pass works out for a household that did not text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Foreseen {
    pub at: DateTime<Utc>,
    pub advice: bellyful_core::advice::Advice,
}

#[derive(Debug, Clone, PartialEq)]
pub struct KeptTwin {
    pub day: Day,
    pub bytes: Vec<u8>,
}

/// What follows from a text (or from the clock), to be kept in one transaction.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Decision {
    /// The household's row as it is now; an id of 0 asks for a new one.
    pub household: Option<Household>,
    /// Phones that now belong to it.
    pub join: Vec<Phone>,
    /// Numbered from the household's `next_fact`.
    pub facts: Vec<Fact>,
    /// The twin at the dawn of the day given.
    pub twin: Option<KeptTwin>,
    /// Kept beside the twin, for lists.
    pub foreseen: Option<Foreseen>,
    /// Kept beside the twin, to replay from when the past is corrected.
    pub checkpoints: Vec<KeptTwin>,
    /// Checkpoints of later days that a correction made wrong.
    pub drop_checkpoints_from: Option<Day>,
    pub replies: Vec<Outbound>,
    /// `Some(true)`: this number said stop; `Some(false)`: start.
    pub stop: Option<bool>,
    /// Erase name, numbers and texts of the household.
    pub forget: bool,
    /// Set, move or (with `None`) clear what the clock is to wake us for.
    pub due: Vec<(Due, Option<DateTime<Utc>>)>,
    pub alarm: Option<Alarm>,
    /// Alarms of this household that somebody has now acknowledged.
    pub acknowledged_by: Option<i64>,
    /// What becomes of who sees to the household, for all to see.
    pub care: Option<CareNow>,
    /// How the talk with a field worker stands now, by their number among staff.
    pub line: Option<(i64, crate::staff::line::Line)>,
    /// The text held a PIN: its words are not kept.
    pub secret: bool,
    /// Written to the audit trail: who did what, for whom.
    pub audit: Option<crate::deed::Deed>,
}

/// What becomes of who sees to a household.
#[derive(Debug, Clone, PartialEq)]
pub enum CareNow {
    /// A worker, by name, sees to this need from now on.
    Taken { staff: String, need: String },
    /// What was taken and not yet seen to is nobody's again.
    GivenBack,
    /// What was taken is seen to.
    Done,
}

bellyful_core::ids!(/// What the clock may wake us for, one row a household and kind.
    Due { Silence = "silence", Ration = "ration", Chore = "chore", Alarm = "alarm" });

bellyful_core::ids!(/// What keeps a digester well beside feeding, and what the season asks for.
    Chore { Cold = "cold", Oil = "oil", Trap = "trap", Leak = "leak", Yearly = "yearly" });

/// A danger that a family told of: staff are told until one acknowledges.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Alarm {
    pub signs: Vec<bellyful_core::fact::Sign>,
    pub said: String,
    pub at: DateTime<Utc>,
}
