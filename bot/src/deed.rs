//! What staff did, as it is written down: who, and what, in no language, so that everybody can read it in their own.
//!
//! Takes acts; gives the row of the trail, and back. What a deed is called stands in `bot/lang/xx/pages.ftl`.

use crate::pages::access::Role;
use crate::pages::visit::Errand;
use bellyful_core::fact::{Fact, Measure};
use bellyful_core::feeds::Feed;
use serde::{Deserialize, Serialize};

/// Who did what. The JSON is what is kept.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Deed {
    /// Name of the member of staff.
    pub by: String,
    #[serde(flatten)]
    pub did: Did,
}

#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "did", rename_all = "snake_case")]
pub enum Did {
    // For a household.
    Noted {
        words: String,
    },
    TookAlarm,
    SeesToIt,
    HasSeenToIt,
    ToldDanger,
    ToldFacts,
    AskedHistory,
    ToldFamily {
        words: String,
    },
    TookOver,
    HandedBack,
    LiftedCap,
    AddedPhone,
    TookPhoneOff,
    ToldMeasure {
        unit: Measure,
        litres: f64,
    },
    EndedReminders,
    BeganReminders,
    /// The tank began anew; its story until then stands under this number.
    BeganAnew {
        before: i64,
    },
    ClosedStory,
    /// Without facts: name, language or field worker.
    ChangedSettings {
        facts: Vec<Fact>,
    },
    Visited {
        errand: Errand,
    },
    TookPhotoAway,
    SetUp,
    // By text, for none.
    AskedNeeds,
    AskedMore,
    SetPin,
    GavePin,
    GaveWrongPin,
    GaveNoPin,
    TriedWhileLocked,
    GotLocked,
    // For the whole programme.
    AddedStaff {
        name: String,
        role: Role,
    },
    ChangedStaff {
        name: String,
        role: Role,
    },
    GavePassword {
        name: String,
    },
    FreedOfPin {
        name: String,
    },
    TookOffStaff {
        name: String,
    },
    MadeToken {
        name: String,
        scope: String,
    },
    TookTokenBack {
        name: String,
    },
    /// None: the built-in number holds again.
    SetNumberToCall {
        country: String,
        number: Option<String>,
    },
    TaughtWord {
        word: String,
        feed: Feed,
        place: String,
    },
    TookWordAway {
        word: String,
    },
    /// None: for ever.
    SetKeeping {
        days: Option<i64>,
    },
    SetPinNeed {
        all: bool,
    },
    SentBroadcast {
        households: usize,
        audience: String,
        words: String,
    },
    StoppedBroadcast {
        id: i64,
        unsent: u64,
    },
}

impl Did {
    pub fn by(self, staff: &str) -> Deed {
        Deed { by: staff.to_owned(), did: self }
    }
}

/// A row of the trail as it is read.
#[derive(Debug, Clone, PartialEq)]
pub enum Written {
    Deed(Deed),
    /// English words of a version that knew no deeds yet.
    Words(String),
}

impl Written {
    pub fn read(row: String) -> Written {
        serde_json::from_str(&row).map_or(Written::Words(row), Written::Deed)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_deed_is_read_as_it_was_written_and_older_words_stay_words() {
        let deed = Did::ToldMeasure { unit: Measure::Bucket, litres: 8.5 }.by("Asha");
        let row = serde_json::to_string(&deed).expect("no map with odd keys");
        assert_eq!(row, r#"{"by":"Asha","did":"told_measure","unit":"bucket","litres":8.5}"#);
        assert_eq!(Written::read(row), Written::Deed(deed));
        for older in ["Asha: gave {soap}", "Asha took the alarm", "{}", "7"] {
            assert_eq!(Written::read(older.into()), Written::Words(older.into()));
        }
    }
}
