//! Liquid fertilizer: how much a day, how strong, and how to use it.
//!
//! Takes what goes in; gives what comes out and the words' numbers for its use. Never calls it free of germs.

use crate::feeds::{Feed, Kind, make_up};
use crate::ids;
use crate::units::{Litres, WetKg};

ids!(/// Where it is put.
    Use { Soil = "soil", Seedlings = "seedlings", Leaves = "leaves" });

ids!(/// What must be said with it.
    Caution {
    /// Wash hands; keep children away.
    WashHands = "wash_hands",
    /// A month from use to harvest.
    WaitAMonth = "wait_a_month",
    /// Toilets or sick animals feed in: only into the soil, never on leaves or on what is eaten raw.
    SoilOnly = "soil_only",
});

/// Parts of water to one of digestate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dilution {
    pub least: f64,
    pub most: f64,
    /// Through a cloth, so that it does not clog.
    pub strained: bool,
}

/// How to thin it for a use; `None` where it must not be used so.
///
/// Source: soil 1:1 to 1:3, seedlings 1:5 to 1:10, leaves strained 1:10 (programme leaflets, from memory; 10 to 1 on
/// leaves is common practice, no source). WHO 2006 vol. 4 (from memory): none on leaves or raw-eaten crops where
/// excreta come in.
pub fn dilution(of: Use, germs: Germs) -> Option<Dilution> {
    match (of, germs) {
        (Use::Soil, _) => Some(Dilution { least: 1.0, most: 3.0, strained: false }),
        (Use::Seedlings, Germs::Usual) => Some(Dilution { least: 5.0, most: 10.0, strained: false }),
        (Use::Leaves, Germs::Usual) => Some(Dilution { least: 10.0, most: 10.0, strained: true }),
        (Use::Seedlings | Use::Leaves, Germs::OfPeople) => None,
    }
}

/// What must be said.
pub fn cautions(germs: Germs) -> &'static [Caution] {
    match germs {
        Germs::Usual => &[Caution::WashHands, Caution::WaitAMonth],
        Germs::OfPeople => &[Caution::SoilOnly, Caution::WashHands, Caution::WaitAMonth],
    }
}

/// Whether germs of people, or of sick animals, come in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Germs {
    Usual,
    OfPeople,
}

impl Germs {
    pub fn of(feeds: impl IntoIterator<Item = Feed>) -> Germs {
        if feeds.into_iter().any(|feed| make_up(feed).is(Kind::Toilet)) { Germs::OfPeople } else { Germs::Usual }
    }
}

/// What flows out in a day and its nitrogen, when this goes in every day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outflow {
    pub litres: Litres,
    pub nitrogen_g_per_l: f64,
}

/// As much leaves as enters; all nitrogen stays in it. Source: GTZ (read): volume out is about volume in.
pub fn outflow(fed: &[(Feed, WetKg)], water: Litres) -> Outflow {
    let litres = fed.iter().map(|(_, wet)| wet.get()).sum::<f64>() + water.get();
    let nitrogen_g = fed.iter().map(|&(feed, wet)| 1_000.0 * make_up(feed).nitrogen() * wet.get()).sum::<f64>();
    let nitrogen_g_per_l = if litres > 0.0 { nitrogen_g / litres } else { 0.0 };
    Outflow { litres: Litres::of(litres), nitrogen_g_per_l }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn where_toilets_feed_in_it_goes_into_the_soil_only() {
        let germs = Germs::of([Feed::FoodWaste, Feed::HumanWaste]);
        assert_eq!(germs, Germs::OfPeople);
        for &of in Use::ALL {
            assert_eq!(dilution(of, germs).is_some(), of == Use::Soil, "{of}");
            assert!(dilution(of, Germs::Usual).is_some(), "{of}");
        }
        assert_eq!(cautions(germs)[0], Caution::SoilOnly);
        assert_eq!(Germs::of([Feed::FoodWaste, Feed::CattleManure]), Germs::Usual);
    }

    /// BIRU, read: wet slurry of dung holds 0.25 % N; FAO's bucket for bucket with water.
    #[test]
    fn slurry_of_dung_and_as_much_water_has_about_the_nitrogen_that_was_read() {
        let out = outflow(&[(Feed::CattleManure, WetKg::of(20.0))], Litres::of(20.0));
        assert_eq!(out.litres.get(), 40.0);
        assert!((1.2..=2.8).contains(&out.nitrogen_g_per_l), "{}", out.nitrogen_g_per_l);
        assert_eq!(outflow(&[], Litres::ZERO).nitrogen_g_per_l, 0.0);
    }
}
