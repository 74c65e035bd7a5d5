//! The towns, unpacked once, and the ways to look one up.

use super::Place;
use super::fold::{fold, is_noise, skeleton};
use bellyful_core::site::Normals;
use std::collections::BTreeMap;
use std::io::Read;
use std::sync::LazyLock;

pub struct Gazetteer {
    places: Vec<Place>,
    /// By folded name, with and without a trailing "city".
    by_name: BTreeMap<String, Vec<usize>>,
    by_skeleton: BTreeMap<String, Vec<usize>>,
    /// Folded names of countries, in many languages.
    countries: BTreeMap<String, String>,
}

/// The compiled-in towns do not read.
#[derive(Debug, thiserror::Error)]
pub enum LoadError {
    #[error("the list of {what} cannot be read: {source}")]
    Csv { what: &'static str, source: csv::Error },
    #[error("{said} is another name for {town}, which is not in the list of towns")]
    NoTown { said: String, town: String },
    #[error("the list of towns cannot be unpacked: {0}")]
    Gzip(#[from] std::io::Error),
}

pub fn gazetteer() -> &'static Gazetteer {
    static GAZETTEER: LazyLock<Gazetteer> = LazyLock::new(|| {
        Gazetteer::read(
            include_bytes!("../../data/places.csv.gz"),
            include_str!("../../data/place_aliases.csv"),
            include_str!("../../data/countries.csv"),
        )
        .expect("the test `the_towns_read` reads the same bytes")
    });
    &GAZETTEER
}

/// name, country, latitude, longitude, elevation, people, time zone, then 25 numbers of climate.
type Row = (String, String, f64, f64, f64, u32, String, [f64; 12], f64, [f64; 12]);

impl Gazetteer {
    fn read(towns: &[u8], aliases: &str, countries: &str) -> Result<Gazetteer, LoadError> {
        let mut text = Vec::new();
        flate2::read::GzDecoder::new(towns).read_to_end(&mut text)?;
        let mut places = Vec::new();
        let mut by_name: BTreeMap<String, Vec<usize>> = BTreeMap::new();
        let mut by_skeleton: BTreeMap<String, Vec<usize>> = BTreeMap::new();
        for row in csv::Reader::from_reader(text.as_slice()).deserialize::<Row>() {
            let row = row.map_err(|source| LoadError::Csv { what: "towns", source })?;
            let folded = fold(&row.0).join(" ");
            if let Some(short) = folded.strip_suffix(" city") {
                by_name.entry(short.to_owned()).or_default().push(places.len());
            }
            if matches!(row.1.as_str(), "IN" | "NP" | "BD" | "PK" | "LK" | "BT") {
                by_skeleton.entry(skeleton(&folded)).or_default().push(places.len());
            }
            by_name.entry(folded).or_default().push(places.len());
            places.push(place(row));
        }
        for row in csv::Reader::from_reader(aliases.as_bytes()).deserialize::<(String, String, String)>() {
            let (said, country, town) = row.map_err(|source| LoadError::Csv { what: "other names", source })?;
            let of_town = |at: &usize| places[*at].country == country && places[*at].name == town;
            let at = by_name.get(&fold(&town).join(" ")).and_then(|all| all.iter().copied().find(of_town));
            by_name.entry(fold(&said).join(" ")).or_default().push(at.ok_or(LoadError::NoTown { said, town })?);
        }
        let mut names = BTreeMap::new();
        for row in csv::Reader::from_reader(countries.as_bytes()).deserialize::<(String, String)>() {
            let (code, all) = row.map_err(|source| LoadError::Csv { what: "countries", source })?;
            names.extend(all.split('|').map(|name| (fold(name).join(" "), code.clone())));
        }
        Ok(Gazetteer { places, by_name, by_skeleton, countries: names })
    }

    pub fn all(&'static self) -> impl Iterator<Item = &'static Place> {
        self.places.iter()
    }

    /// Towns called exactly `name`, folded.
    pub fn named(&'static self, name: &str) -> Vec<&'static Place> {
        self.of(self.by_name.get(name))
    }

    /// The country's biggest town.
    pub fn biggest_of(&self, country: &str) -> Option<&Place> {
        self.places.iter().filter(|place| place.country == country).max_by_key(|place| place.people)
    }

    /// Towns whose name begins with the words of `name` and goes on.
    pub fn beginning(&'static self, name: &str) -> Vec<&'static Place> {
        if name.len() < 4 {
            return Vec::new();
        }
        let begins = format!("{name} ");
        let longer = self.by_name.range(begins.clone()..).take_while(|(longer, _)| longer.starts_with(&begins));
        longer.flat_map(|(_, at)| self.of(Some(at))).collect()
    }

    /// Towns of `country` whose name ends with the words of `name`: "El Seibo" of Santa Cruz de El Seibo.
    pub fn ending(&'static self, name: &str, country: &str) -> Vec<&'static Place> {
        if name.len() < 4 {
            return Vec::new();
        }
        let ends = format!(" {name}");
        let longer = self.by_name.iter().filter(|(longer, _)| longer.ends_with(&ends));
        longer.flat_map(|(_, at)| self.of(Some(at))).filter(|place| place.country == country).collect()
    }

    /// Towns of South Asia whose name has these bones.
    pub fn with_skeleton(&'static self, bones: &str, country: Option<&str>) -> Vec<&'static Place> {
        let found = self.of(self.by_skeleton.get(bones));
        found.into_iter().filter(|place| country.is_none_or(|country| place.country == country)).collect()
    }

    pub fn names(&'static self) -> impl Iterator<Item = (&'static str, impl Iterator<Item = &'static Place>)> {
        self.by_name.iter().map(|(name, at)| (name.as_str(), at.iter().map(|&at| &self.places[at])))
    }

    /// The country named by the last words, which are taken off, unless nothing of a name is left then.
    pub fn name_country(&'static self, words: &mut Vec<String>) -> Option<&'static str> {
        for from in 1..words.len() {
            if words[..from].iter().all(|word| is_noise(word)) {
                continue;
            }
            if let Some(code) = self.countries.get(&words[from..].join(" ")) {
                words.truncate(from);
                return Some(code);
            }
        }
        None
    }

    fn of(&'static self, at: Option<&Vec<usize>>) -> Vec<&'static Place> {
        at.into_iter().flatten().map(|&at| &self.places[at]).collect()
    }
}

fn place(row: Row) -> Place {
    let (name, country, latitude_deg, longitude_deg, elevation_m, people, time_zone, air_c, day_range_c, sun) = row;
    let normals = Normals { latitude_deg, longitude_deg, elevation_m, air_c, day_range_c, sun_mj_per_m2_d: sun };
    Place { name, country, people, time_zone, normals }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_towns_read() {
        let towns = gazetteer();
        assert_eq!(towns.places.len(), 26_416);
        for place in &towns.places {
            let n = &place.normals;
            assert!(n.latitude_deg.abs() <= 90.0 && n.longitude_deg.abs() <= 180.0, "{}", place.name);
            assert!(n.air_c.iter().all(|c| (-55.0..45.0).contains(c)) && (0.0..30.0).contains(&n.day_range_c));
            assert!(n.sun_mj_per_m2_d.iter().all(|mj| (0.0..35.0).contains(mj)), "{}", place.name);
            assert!(place.time_zone.parse::<chrono_tz::Tz>().is_ok(), "{}", place.time_zone);
        }
    }

    #[test]
    fn broken_towns_are_an_error_not_a_panic() {
        assert!(matches!(Gazetteer::read(b"not gzip", "", ""), Err(LoadError::Gzip(_))));
    }
}
