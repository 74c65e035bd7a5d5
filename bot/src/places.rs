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
pub fn find(said: &str, country: Option<&str>) -> Option<Found> {
    let towns = load::gazetteer();
    let mut words = fold(said);
    words.truncate(12);
    let named = towns.name_country(&mut words);
    let home = named.or(country);
    let phrases = phrases(&words);
    let whole = phrases.first()?;
    let only_noise = words.iter().all(|word| is_noise(word));

    let at_home = |found: &Vec<&'static Place>| found.iter().any(|place| Some(place.country.as_str()) == home);
    let exact = |phrase: &String| towns.named(phrase);
    let choose = |found: Vec<&'static Place>, by_slip| Some(chosen(found, home, by_slip));

    if let Some(found) = phrases.iter().map(exact).find(at_home) {
        return choose(found, false);
    }
    if only_noise {
        return None;
    }
    if let Some(found) = phrases.iter().map(|phrase| towns.beginning(phrase)).find(at_home) {
        return choose(found, false);
    }
    if named.is_none() {
        let known = exact(whole);
        if known.iter().any(|place| place.people >= 100_000) {
            return choose(known, false);
        }
    }
    if let Some(home) = home
        && let Some(found) = phrases.iter().map(|phrase| by_slip(towns, phrase, Some(home))).find(at_home)
    {
        return choose(found, true);
    }
    if named.is_some() {
        return None;
    }
    if let Some(found) = phrases.iter().map(exact).find(|found| !found.is_empty()) {
        return choose(found, false);
    }
    let found = towns.beginning(whole);
    if !found.is_empty() {
        return choose(found, false);
    }
    let found = by_slip(towns, whole, None);
    if found.is_empty() { None } else { choose(found, true) }
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
