//! What each feed is made of, how it lies in a bucket, and how it digests.
//!
//! Takes the three tables of this folder; gives one [`MakeUp`] per feed. All shares are of wet mass, kg/kg. Never
//! changes after the first call.

use super::join::joined;
use super::table::Sure;
use super::{Feed, buswell};
use crate::ids;
use crate::units::{CodKg, DryKg, VsKg, WetKg};
use std::sync::LazyLock;

ids!(/// What to mind about a feed; it may be several.
    Kind {
    Dung = "dung",
    /// May carry germs of people: its digestate never goes on leaves or food eaten raw.
    Toilet = "toilet",
    /// A working digester's slurry: brings its life along.
    Seed = "seed",
    Starchy = "starchy", Sugary = "sugary", ProteinRich = "protein_rich", Greasy = "greasy", Citrus = "citrus",
    Salty = "salty", Fibrous = "fibrous", Watery = "watery",
    /// Poisons the digester's life.
    Inhibitor = "inhibitor",
    NotFood = "not_food",
});

/// Bulk density in a vessel. Units: kg/l.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Densities {
    pub whole: f64,
    pub chopped: f64,
    pub mashed: f64,
}

/// One piece as people count it, and how far pieces differ: one in ten is lighter than `low`, one in ten heavier
/// than `high`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Piece {
    pub mass: WetKg,
    pub low: WetKg,
    pub high: WetKg,
}

/// Methane that others measured. Units: m3 (0 °C, 1 atm, dry) per kg VS.
#[derive(Debug, Clone, PartialEq)]
pub struct MethaneRead {
    pub low: f64,
    pub high: f64,
    pub sure: Sure,
    pub source: String,
}

/// What one feed is made of. Shape: shares of wet mass, kg/kg, unless a name says otherwise.
#[derive(Debug, Clone, PartialEq)]
pub struct MakeUp {
    pub feed: Feed,
    /// Crude protein: nitrogen × 6.25.
    pub protein: f64,
    pub fat: f64,
    pub sugars: f64,
    /// Available carbohydrate that is not sugars.
    pub starch: f64,
    /// Fibre, lignin included.
    pub fibre: f64,
    pub ash: f64,
    /// Nitrogen that is ammonia or turns into it at once (urea, uric acid). Units: g N/kg.
    pub ammonia_n_g_per_kg: f64,
    /// Strong cations less strong anions: what the ash adds to alkalinity. Units: meq/kg.
    pub strong_cations_meq_per_kg: f64,
    /// Bicarbonate that comes in with it. Units: mmol/kg.
    pub bicarbonate_mmol_per_kg: f64,
    /// Common salt. Units: g NaCl/kg.
    pub salt_g_per_kg: f64,
    pub density: Densities,
    pub piece: Option<Piece>,
    /// Share of COD that digests in unlimited time.
    pub biodegradable: f64,
    /// First-order hydrolysis of what is not dissolved, at 35 °C. Units: 1/d.
    pub hydrolysis_35c_per_d: f64,
    pub kinds: Vec<Kind>,
    pub methane_read: Option<MethaneRead>,
    pub composition: Sourced,
    pub digestion: Sourced,
    pub handling: Sourced,
    pub pieces: Option<Sourced>,
}

/// Where a group of values comes from.
#[derive(Debug, Clone, PartialEq)]
pub struct Sourced {
    pub sure: Sure,
    pub source: String,
}

impl MakeUp {
    pub fn is(&self, kind: Kind) -> bool {
        self.kinds.contains(&kind)
    }
    /// Whether it feeds a digester: neither poison nor lumber.
    pub fn is_food(&self) -> bool {
        !self.is(Kind::NotFood) && !self.is(Kind::Inhibitor)
    }
    /// Total solids, share of wet mass.
    pub fn ts(&self) -> f64 {
        self.vs() + self.ash
    }
    /// Volatile solids, share of wet mass.
    pub fn vs(&self) -> f64 {
        self.protein + self.fat + self.sugars + self.starch + self.fibre
    }
    /// COD of the volatile solids. Units: kg COD per kg wet.
    pub fn cod(&self) -> f64 {
        self.protein * buswell::PROTEIN.cod()
            + self.fat * buswell::FAT.cod()
            + self.sugars * buswell::SUGARS.cod()
            + (self.starch + self.fibre) * buswell::STARCH.cod()
    }
    /// All nitrogen. Units: kg N per kg wet.
    pub fn nitrogen(&self) -> f64 {
        self.protein * buswell::PROTEIN.nitrogen + self.ammonia_n_g_per_kg / 1000.0
    }
    /// All carbon of the volatile solids over all nitrogen, by mass; `None` where there is no nitrogen.
    pub fn carbon_to_nitrogen(&self) -> Option<f64> {
        let carbon = self.protein * buswell::PROTEIN.carbon
            + self.fat * buswell::FAT.carbon
            + self.sugars * buswell::SUGARS.carbon
            + (self.starch + self.fibre) * buswell::STARCH.carbon;
        (self.nitrogen() > 0.0).then(|| carbon / self.nitrogen())
    }
    pub fn dry(&self, wet: WetKg) -> DryKg {
        DryKg::of(wet.get() * self.ts())
    }
    pub fn volatile(&self, wet: WetKg) -> VsKg {
        VsKg::of(wet.get() * self.vs())
    }
    pub fn oxygen_demand(&self, wet: WetKg) -> CodKg {
        CodKg::of(wet.get() * self.cod())
    }
    /// Standard deviation of the natural logarithm of its solids.
    pub fn solids_spread(&self) -> f64 {
        self.composition.sure.spread()
    }
}

/// What `feed` is made of.
pub fn make_up(feed: Feed) -> &'static MakeUp {
    static ALL: LazyLock<Vec<MakeUp>> = LazyLock::new(|| {
        joined(include_str!("composition.csv"), include_str!("digestion.csv"), include_str!("handling.csv"))
            .expect("the test `the_tables_read_and_cover_every_feed` reads the same text")
    });
    &ALL[feed as usize]
}

#[cfg(test)]
mod tests {
    use super::super::table::rows;
    use super::*;
    use serde::Deserialize;

    /// A feed that is a food of `foods.csv`, or a mixture of some, has their nutrients.
    #[test]
    fn every_mixture_is_what_it_says_it_is_mixed_of() {
        #[derive(Deserialize)]
        struct Food {
            food: String,
            protein: f64,
            fat: f64,
            carb_available: f64,
            sugars: f64,
            fibre: f64,
            ash: f64,
        }
        #[derive(Deserialize)]
        struct Mixed {
            feed: Feed,
            mixed_of: String,
        }
        let foods: Vec<Food> = rows("foods.csv", include_str!("foods.csv")).unwrap();
        let mut checked = 0;
        for Mixed { feed, mixed_of } in rows::<Mixed>("composition.csv", include_str!("composition.csv")).unwrap() {
            let mut sum = [0.0; 6];
            for part in mixed_of.split(" + ").filter(|part| !part.is_empty()) {
                let (name, share) = part.split_once(' ').unwrap_or((part, "1"));
                let food = foods.iter().find(|food| food.food == name).unwrap_or_else(|| panic!("{feed}: no {name}"));
                let starch = food.carb_available - food.sugars;
                let of = [food.protein, food.fat, food.sugars, starch, food.fibre, food.ash];
                sum.iter_mut().zip(of).for_each(|(sum, of)| *sum += share.parse::<f64>().unwrap() * of / 100.0);
                checked += 1;
            }
            let made = make_up(feed);
            let has = [made.protein, made.fat, made.sugars, made.starch, made.fibre, made.ash];
            if !mixed_of.is_empty() {
                assert!(
                    sum.iter().zip(has).all(|(sum, has)| (sum - has).abs() < 6e-5),
                    "{feed}: {has:?} is not {sum:?}"
                );
            }
        }
        assert!(checked > 70, "{checked}");
    }

    /// Ranges: food composition and waste handbooks agree within these; from memory.
    #[test]
    fn solids_nitrogen_and_oxygen_demand_are_where_handbooks_put_them() {
        let check = |feed, ts: std::ops::Range<f64>, cod_per_vs: std::ops::Range<f64>| {
            let made = make_up(feed);
            assert!(ts.contains(&made.ts()), "{feed}: TS {}", made.ts());
            assert!(cod_per_vs.contains(&(made.cod() / made.vs())), "{feed}: COD/VS {}", made.cod() / made.vs());
        };
        check(Feed::CookedRice, 0.28..0.35, 1.18..1.26);
        check(Feed::FoodWaste, 0.20..0.31, 1.3..1.6);
        check(Feed::CattleManure, 0.12..0.20, 1.2..1.5);
        check(Feed::CookingOil, 0.99..1.001, 2.8..2.95);
        check(Feed::LeafyGreens, 0.07..0.14, 1.2..1.45);
    }

    #[test]
    fn dung_has_the_carbon_to_nitrogen_ratio_of_the_handbook() {
        // GTZ Biogas Digest I, table 1 (read at second hand): cattle 18-25, pig 6-14, poultry 5-15, horse 25, sheep
        // 19-33 or goat 12; straw 51-150.
        let check = |feed, low: f64, high: f64| {
            let ratio = make_up(feed).carbon_to_nitrogen().unwrap();
            assert!((low..=high).contains(&ratio), "{feed}: {ratio}");
        };
        check(Feed::CattleManure, 18.0, 25.0);
        check(Feed::PigManure, 6.0, 14.0);
        check(Feed::ChickenManure, 5.0, 15.0);
        check(Feed::HorseManure, 22.0, 28.0);
        check(Feed::GoatManure, 12.0, 33.0);
        check(Feed::HumanWaste, 5.0, 10.0);
        check(Feed::Straw, 51.0, 150.0);
        check(Feed::WaterHyacinth, 11.0, 25.0);
    }
}
