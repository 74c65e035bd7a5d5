//! Eight invented households of an invented district, and what each is like. Nothing here is anybody's.
//!
//! Takes what the bot last advised; gives what the family texts that day. Who they are is invented, what comes of it
//! is computed.

use crate::pages::visit::Errand;
use bellyful_core::advice::{Advice, Verdict};
use bellyful_core::site::Normals;
use rand::Rng;
use rand::rngs::StdRng;

/// Days of history each family has, unless it came later.
pub const DAYS: i32 = 120;

/// How a family goes about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Way {
    /// Feeds up to the ration and tells it every day.
    Steady,
    /// Gives a feast's leftovers for four days, then mends.
    Feast,
    /// Lives high up where it gets cold, and measures it.
    Highland,
    /// Wrote well for weeks, and then no more.
    Silent,
    /// Filled its tank three weeks ago and texts as a newcomer.
    New,
    /// Fries, and pours the oil in.
    Greasy,
    /// Counts in buckets, dung and peels.
    Buckets,
    /// Has a leak, and one day smells it indoors.
    Leaky,
}

pub struct Family {
    pub name: &'static str,
    pub number: &'static str,
    /// A town that there is, so that it has a place on the map; that such a family lives there is invented.
    pub town: &'static str,
    pub lang: &'static str,
    pub way: Way,
    /// Starter, and how many days before its first text it was put in. Units: kg, d.
    pub seeded: (f64, u32),
}

/// Numbers under a country code that no country has.
pub const FAMILIES: [Family; 8] = [
    Family {
        name: "Otelo",
        number: "+99900000101",
        town: "Muyinga",
        lang: "en",
        way: Way::Steady,
        seeded: (160.0, 60),
    },
    Family { name: "Mirembo", number: "+99900000102", town: "Ngara", lang: "en", way: Way::Feast, seeded: (140.0, 90) },
    Family {
        name: "Askari",
        number: "+99900000103",
        town: "Kayanza",
        lang: "en",
        way: Way::Highland,
        seeded: (150.0, 120),
    },
    Family {
        name: "Tandeka",
        number: "+99900000104",
        town: "Kibondo",
        lang: "en",
        way: Way::Silent,
        seeded: (120.0, 45),
    },
    Family { name: "Lumo", number: "+99900000105", town: "Ngozi", lang: "en", way: Way::New, seeded: (80.0, 21) },
    Family {
        name: "Pirot",
        number: "+99900000106",
        town: "Kakonko",
        lang: "en",
        way: Way::Greasy,
        seeded: (150.0, 80),
    },
    Family {
        name: "Salvera",
        number: "+99900000107",
        town: "Ruyigi",
        lang: "es",
        way: Way::Buckets,
        seeded: (180.0, 70),
    },
    Family { name: "Nyoka", number: "+99900000108", town: "Muyinga", lang: "sw", way: Way::Leaky, seeded: (150.0, 50) },
];

/// The invented field worker's name and number.
pub const WORKER: (&str, &str) = ("Deva", "+99900000001");

/// The invented district's climate: warm and even in the valley, with a cool season on the heights.
pub fn climate(way: Way) -> Normals {
    let (elevation_m, air_c) = match way {
        Way::Highland => (2100.0, [18.5, 19.0, 18.5, 17.5, 16.0, 14.0, 13.0, 13.5, 15.0, 16.5, 14.5, 13.5]),
        _ => (900.0, [24.5, 25.0, 25.0, 24.0, 23.5, 23.0, 22.5, 23.0, 23.5, 24.0, 24.0, 24.5]),
    };
    Normals {
        latitude_deg: -3.0,
        longitude_deg: 30.0,
        elevation_m,
        air_c,
        day_range_c: 10.0,
        sun_mj_per_m2_d: [18.0, 18.5, 18.0, 17.0, 16.5, 16.0, 16.0, 17.0, 18.0, 18.5, 18.0, 18.0],
    }
}

/// A text of a family: minutes after midnight, and the words.
pub type Text = (u32, String);

/// What the family texts on `day` (0 is its first day here), given what it was last told.
pub fn texts(way: Way, day: i32, advice: Option<&Advice>, rng: &mut StdRng) -> Vec<Text> {
    let morning = 6 * 60 + 30 + rng.random_range(0..90);
    let evening = 18 * 60 + rng.random_range(0..60);
    let may = |least: f64| advice.map_or(2.0, |advice| if held(advice) { 0.0 } else { advice.ration_kg.max(least) });
    let cooked = advice.map_or(0, |advice| (advice.gas_minutes.min(75.0) * rng.random_range(0.6..0.95)) as i64);
    let cooked = (cooked > 9).then(|| format!("cooked {cooked} min")).unwrap_or_else(|| "no gas today".into());
    let of_ration = rng.random_range(0.7..1.0_f64);
    let kg = |kg: f64| format!("{}", (kg * 2.0).round() / 2.0);
    match way {
        Way::Steady => {
            let fed = (may(0.5) * of_ration).min(4.0);
            match day % 9 {
                3 => vec![(morning, "how much can i feed today".into())],
                7 => vec![],
                _ if fed < 0.4 => vec![(morning, format!("no feed today. {cooked}"))],
                _ => vec![(morning, format!("fed {} kg scraps, {} L water. {cooked}", kg(fed), kg(fed * 2.0)))],
            }
        }
        Way::Feast => match day {
            70..=73 => vec![(evening, "wedding! fed 11 kg rice n meat leftovers, 5 L water".into())],
            75 => vec![(morning, "smells sour and flame is yellow".into())],
            76 => vec![(morning, "can i feed now?".into()), (morning + 5, "why?".into())],
            77..84 if advice.is_some_and(held) => vec![(morning, format!("nothing fed. {cooked}"))],
            84 => vec![(morning, "ph 6.9, gas half full".into())],
            _ if day % 4 == 1 => vec![],
            _ => vec![(morning, format!("{} kg kitchen waste {} l water", kg(may(0.5).min(3.0)), kg(may(0.5) * 2.0)))],
        },
        Way::Highland => match day % 5 {
            0 => vec![(morning, format!("temp {}. fed 2 kg peels 4 L water", 15 + (120 - day) / 20))],
            1 => vec![(morning, format!("fed {} kg scraps {} L water, gas low", kg(may(0.5).min(2.5)), kg(5.0)))],
            2 => vec![(morning, "is it ok?".into())],
            3 => vec![],
            _ => vec![(morning, format!("fed 1 kg porridge 2 L water. {cooked}"))],
        },
        Way::Silent => match day {
            ..78 if day % 3 != 2 => vec![(morning, format!("fed {} kg scraps 5 L water", kg(may(0.5).min(2.5))))],
            _ => vec![],
        },
        Way::New => match day {
            0 => vec![
                (morning, "hello".into()),
                (morning + 2, "1000 litres".into()),
                (morning + 4, "3 weeks ago".into()),
                (morning + 6, "80 kg cow dung".into()),
            ],
            1 => vec![(morning, "how much can i feed".into())],
            2..14 if day % 2 == 0 => vec![(morning, "gas bag half full. flame goes out".into())],
            _ if advice.is_some_and(held) => vec![(morning, format!("no feed. {cooked}"))],
            _ => vec![(morning, format!("fed {} kg scraps 3 l water. {cooked}", kg(may(0.5).min(2.0))))],
        },
        Way::Greasy => match day {
            50..=53 => vec![(morning, "fed 3 kg leftovers and 1 L used cooking oil".into())],
            55 => vec![(morning, "foam coming out of the outlet".into())],
            56 => vec![(morning, "can i feed fried fish?".into())],
            _ if day % 3 == 2 => vec![(evening, cooked)],
            _ => vec![(morning, format!("fed {} kg leftovers, 5 L water", kg(may(0.5).min(3.0))))],
        },
        Way::Buckets => match day {
            0 => vec![(morning, "mi cubeta es de 12 litros".into())],
            _ if day % 6 == 5 => vec![(morning, "cuanto puedo echar hoy?".into())],
            _ if advice.is_some_and(held) => vec![(morning, "hoy no eche nada".into())],
            _ => vec![(morning, "eche un cuarto de cubeta de cascaras y media cubeta de agua".into())],
        },
        Way::Leaky => match day {
            88 => vec![(evening, "nasikia harufu ya gesi jikoni".into())],
            89 => vec![(morning, "tumepona, fundi amefunga bomba".into())],
            60..88 if day % 3 == 0 => vec![(morning, "gesi kidogo".into())],
            _ if day % 4 == 3 => vec![],
            _ => vec![(morning, format!("nimeweka kilo {} za mabaki na maji lita 5", kg(may(0.5).min(2.5))))],
        },
    }
}

/// Days on which the field worker was there: what for, what was not good, and what was written down.
pub fn visits(way: Way) -> &'static [(i32, Errand, &'static [&'static str], &'static str)] {
    match way {
        Way::Steady => &[(0, Errand::NewTank, &[], "Soap on every joint, no bubbles.")],
        Way::Feast => &[(75, Errand::Fault, &["flame_blue"], "Sour after a feast. Rest and water, no feed.")],
        Way::Highland => &[(2, Errand::NewTank, &["walls_dark"], "Walls are white; black paint is on its way.")],
        Way::Greasy => &[(57, Errand::Fault, &["outlet_free"], "Outlet full of fat, cleared with a stick.")],
        Way::Leaky => {
            &[(89, Errand::Fault, &["gas_tight", "hose"], "Hose cracked at the stove. New hose, soap test good.")]
        }
        Way::Silent | Way::New | Way::Buckets => &[],
    }
}

fn held(advice: &Advice) -> bool {
    advice.hold_days > 0 || matches!(advice.verdict, Verdict::Hold | Verdict::Danger)
}
