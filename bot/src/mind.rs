//! What the bot knows before anybody texts: words, sentences, places, emergency numbers.
//!
//! Read once at start and handed to every turn; only what a programme teaches is taken over while it runs.

use crate::household::{Household, Talk};
use crate::lang::{LangError, folders};
use crate::message::Inbound;
use crate::places;
use crate::reply::catalog::{Catalog, FALLBACK};
use crate::taught::Taught;
use crate::text::{LexiconError, Lexicons};
use sha2::{Digest, Sha256};
use std::collections::BTreeMap;
use std::path::Path;
use std::sync::{Arc, PoisonError, RwLock};

#[derive(Debug)]
pub struct Mind {
    pub lexicons: Lexicons,
    pub catalog: Catalog,
    emergency: BTreeMap<&'static str, &'static str>,
    taught: RwLock<Arc<Taught>>,
    /// Makes one run's chance differ from another's; the same seed and texts give the same bytes.
    seed: u64,
}

#[derive(Debug, thiserror::Error)]
pub enum MindError {
    #[error(transparent)]
    Lang(#[from] LangError),
    #[error(transparent)]
    Words(#[from] LexiconError),
}

impl Mind {
    /// `more_languages`: a folder with further language folders. Errors: a language file that does not read.
    pub fn new(more_languages: Option<&Path>, seed: u64) -> Result<Mind, MindError> {
        let folders = folders(more_languages)?;
        Ok(Mind {
            lexicons: match more_languages {
                Some(folder) => Lexicons::with_folder(folder)?,
                None => Lexicons::built_in(),
            },
            catalog: Catalog::new(&folders)?,
            emergency: emergency_numbers(),
            taught: RwLock::default(),
            seed,
        })
    }

    /// The number to call in a country, where we know it: the programme's own before ours.
    pub fn emergency_number(&self, country: Option<&str>) -> Option<String> {
        let country = country?;
        let own = self.taught().emergency_number(country).map(str::to_owned);
        own.or_else(|| self.emergency.get(country).map(|number| (*number).to_owned()))
    }

    /// Countries and numbers that are built in.
    pub fn emergency_numbers(&self) -> impl Iterator<Item = (&'static str, &'static str)> {
        self.emergency.iter().map(|(country, number)| (*country, *number))
    }

    /// What a programme taught, as last taken over.
    pub fn taught(&self) -> Arc<Taught> {
        self.taught.read().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Takes over what a programme taught.
    pub fn teach(&self, taught: Taught) {
        *self.taught.write().unwrap_or_else(PoisonError::into_inner) = Arc::new(taught);
    }

    /// A household of which only its first text is known.
    pub fn newcomer(&self, inbound: &Inbound, lang: &str) -> Household {
        let country = crate::number::country(&inbound.from);
        let time_zone = country.and_then(places::time_zone_of).unwrap_or("UTC");
        Household {
            id: 0,
            name: String::new(),
            lang: if self.catalog.speaks(lang) { lang.to_owned() } else { FALLBACK.to_owned() },
            country: country.map(str::to_owned),
            time_zone: time_zone.to_owned(),
            since: inbound.received_at,
            seed: self.seed_of(&inbound.from),
            staff_id: None,
            next_fact: 1,
            talk: Talk::default(),
        }
    }

    /// The seed of a household's chance, from its first number.
    fn seed_of(&self, number: &str) -> i64 {
        let hash = Sha256::new().chain_update(self.seed.to_be_bytes()).chain_update(number.as_bytes()).finalize();
        i64::from_be_bytes(hash[..8].try_into().expect("a hash has 32 bytes"))
    }
}

/// Source: from memory, each number as that country's government gives it; where none is listed, none is named.
fn emergency_numbers() -> BTreeMap<&'static str, &'static str> {
    include_str!("../data/emergency.csv").lines().skip(1).filter_map(|line| line.split_once(',')).collect()
}
