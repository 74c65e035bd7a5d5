//! Where a household lives: from a place's name, as written in a text, to its town, time zone and climate.
//!
//! Takes a name and, where known, the country; gives the best of 26,000 towns, the others that bear the name, and
//! whether a slip of the pen was forgiven. Never asks and never looks outside: the towns are compiled in
//! (`bot/data/README.md` names their sources).

mod fold;
mod load;

use bellyful_core::site::Normals;
use fold::{fold, is_noise, skeleton, slips};
use load::Gazetteer;

/// A town.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    pub name: String,
    /// ISO 3166-1 alpha-2.
    pub country: String,
    pub people: u32,
    /// IANA name.
    pub time_zone: String,
    pub normals: Normals,
}

/// What a name was taken for.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    pub place: &'static Place,
    /// Other towns of that name that the writer may have meant, biggest first, at most three.
    pub others: Vec<&'static Place>,
    /// The name fits only with a letter or two changed, added or left out.
    pub by_slip: bool,
}

/// The town that `said` names, `country` (ISO 3166-1 alpha-2) preferred; the biggest of a name wins.
///
/// Where the country is known, a town abroad is taken only by its exact name and if it is big: a village that the list
/// has not is better asked for than put on another continent.
pub fn find(said: &str, country: Option<&str>) -> Option<Found> {
    let towns = load::gazetteer();
    let mut words = fold(said);
    words.truncate(12);
    let named = towns.name_country(&mut words);
    let phrases = phrases(&words);
    let whole = phrases.first()?;
    let found = match (named, country) {
        (Some(home), _) => at_home(towns, &phrases, home),
        (None, Some(home)) if LENT.contains(&home) => weigh_home(towns, &phrases, home),
        (None, Some(home)) => at_home(towns, &phrases, home),
        (None, None) => anywhere(towns, &phrases),
    };
    found.or_else(|| {
        let abroad = if named.is_some() { Vec::new() } else { towns.named(whole) };
        let big = abroad.iter().any(|place| place.people >= BIG);
        big.then(|| chosen(abroad, country, false))
    })
}

/// A town that people of another country know by name. Source: our choice.
const BIG: u32 = 100_000;

/// Countries whose numbers are lent all over the world, so that a number says little of where its owner lives.
const LENT: [&str; 2] = ["US", "CA"];

/// The town at home only if none abroad that fits as well is 20 times as big.
fn weigh_home(towns: &'static Gazetteer, phrases: &[String], home: &str) -> Option<Found> {
    let (here, world) = (at_home(towns, phrases, home), anywhere(towns, phrases));
    match (here, world) {
        (Some(here), Some(world)) if !here.by_slip && here.place.people >= world.place.people / 20 => Some(here),
        (here, world) => world.or(here),
    }
}

/// Exact names before longer ones before slips; more words before fewer.
fn at_home(towns: &'static Gazetteer, phrases: &[String], home: &str) -> Option<Found> {
    let here = |found: Vec<&'static Place>| -> Option<Vec<&'static Place>> {
        let here: Vec<_> = found.into_iter().filter(|place| place.country == home).collect();
        (!here.is_empty()).then_some(here)
    };
    let bare = bare(phrases)?;
    let exact = phrases.iter().find_map(|phrase| here(towns.named(phrase)));
    let longer = || here(towns.beginning(bare)).or_else(|| here(towns.ending(bare, home)));
    if let Some(found) = exact.or_else(longer) {
        return Some(chosen(found, Some(home), false));
    }
    let slip = phrases.iter().find_map(|phrase| here(by_slip(towns, phrase, Some(home))))?;
    Some(chosen(slip, Some(home), true))
}

/// With no country to go by, the same over the whole world.
fn anywhere(towns: &'static Gazetteer, phrases: &[String]) -> Option<Found> {
    let some = |found: Vec<&'static Place>| (!found.is_empty()).then_some(found);
    let bare = bare(phrases)?;
    let exact = phrases.iter().find_map(|phrase| some(towns.named(phrase)));
    match exact.or_else(|| some(towns.beginning(bare))) {
        Some(found) => Some(chosen(found, None, false)),
        None => some(by_slip(towns, bare, None)).map(|found| chosen(found, None, true)),
    }
}

/// The longest run that neither begins nor ends with a word around a name; `None` when all words are such.
fn bare(phrases: &[String]) -> Option<&String> {
    phrases.iter().find(|phrase| {
        let ends = [phrase.split(' ').next(), phrase.split(' ').next_back()];
        !ends.into_iter().flatten().any(is_noise)
    })
}

/// Every town of the list.
pub fn all() -> impl Iterator<Item = &'static Place> {
    load::gazetteer().all()
}

/// The time zone most of a country's people are taken to live in: its biggest town's.
pub fn time_zone_of(country: &str) -> Option<&'static str> {
    load::gazetteer().biggest_of(country).map(|place| place.time_zone.as_str())
}

/// Runs of words, longest first, as written first; those that begin or end with a word like "near" are left out,
/// unless it is all that was said.
fn phrases(words: &[String]) -> Vec<String> {
    let mut phrases = vec![words.join(" ")];
    for length in (1..=words.len().min(5)).rev() {
        for run in words.windows(length) {
            let bare = run.first().is_some_and(|word| is_noise(word)) || run.last().is_some_and(|word| is_noise(word));
            let phrase = run.join(" ");
            if !bare && phrase.chars().count() > 2 && !phrases.contains(&phrase) {
                phrases.push(phrase);
            }
        }
    }
    phrases.retain(|phrase| !phrase.is_empty());
    phrases
}

/// Towns that a slip or two away are called `phrase`, the nearest only.
fn by_slip(towns: &'static Gazetteer, phrase: &str, country: Option<&str>) -> Vec<&'static Place> {
    if phrase.bytes().any(|byte| !byte.is_ascii()) {
        let said = skeleton(phrase);
        return if said.len() < 2 { Vec::new() } else { towns.with_skeleton(&said, country) };
    }
    let most = match phrase.len() {
        0..=4 => return Vec::new(),
        5..=7 => 1,
        _ if country.is_some() => 2,
        _ => 1,
    };
    let mut nearest = most + 1;
    let mut found = Vec::new();
    for (name, places) in towns.names() {
        let Some(away) = slips(phrase, name, nearest.min(most)) else { continue };
        let here = places.filter(|place| country.is_none_or(|country| place.country == country));
        let before = found.len();
        found.extend(here);
        if found.len() > before && away < nearest {
            found.drain(..before);
            nearest = away;
        }
    }
    found
}

/// The biggest, at home if one is there; the others far enough off to be another place.
fn chosen(mut found: Vec<&'static Place>, home: Option<&str>, by_slip: bool) -> Found {
    let is_home = |place: &&Place| Some(place.country.as_str()) == home;
    found.sort_by_key(|place| (!is_home(place), std::cmp::Reverse(place.people), place.name.as_str()));
    let place = found[0];
    let others = found[1..]
        .iter()
        .copied()
        .filter(|other| is_home(&place) == is_home(other) && other.people >= place.people / 20)
        .filter(|other| other.country != place.country || far_apart(&place.normals, &other.normals))
        .take(3)
        .collect();
    Found { place, others, by_slip }
}

/// More than about 50 km, or 300 m of height: another climate.
fn far_apart(a: &Normals, b: &Normals) -> bool {
    let north = a.latitude_deg - b.latitude_deg;
    let east = (a.longitude_deg - b.longitude_deg) * a.latitude_deg.to_radians().cos();
    north.hypot(east) > 0.45 || (a.elevation_m - b.elevation_m).abs() > 300.0
}

#[cfg(test)]
mod tests;
