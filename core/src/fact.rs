//! What happened to one digester, and when: append-only, dated; the truth from which all else can be rebuilt.
//!
//! Takes nothing; gives the types that the reading fills, the store keeps and the twin folds. Amounts stay in the
//! measure they were told in ("2 buckets"): what a bucket holds may be learnt later.

use crate::feeds::Feed;
use crate::ids;
use crate::site::Normals;
use crate::units::Day;
use serde::{Deserialize, Serialize};

ids!(/// Household measures of unknown size, until the household says or its country's custom is taken.
    Measure {
    Bucket = "bucket", Basin = "basin", Jerrycan = "jerrycan", Tin = "tin", Pot = "pot", Bowl = "bowl",
    Plate = "plate", Cup = "cup", Glass = "glass", Jug = "jug", Bottle = "bottle", Handful = "handful",
    Spoon = "spoon", Shovel = "shovel", Bag = "bag", Sack = "sack", Basket = "basket", Crate = "crate",
    Wheelbarrow = "wheelbarrow", Piece = "piece",
});

/// What an amount is counted in: `kg`, `l`, or a household measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Unit {
    Kg,
    L,
    Of(Measure),
}

impl Unit {
    pub const fn id(self) -> &'static str {
        match self {
            Unit::Kg => "kg",
            Unit::L => "l",
            Unit::Of(measure) => measure.id(),
        }
    }
    pub fn from_id(id: &str) -> Option<Unit> {
        match id {
            "kg" => Some(Unit::Kg),
            "l" => Some(Unit::L),
            other => Measure::from_id(other).map(Unit::Of),
        }
    }
}

impl Serialize for Unit {
    fn serialize<S: serde::Serializer>(&self, s: S) -> Result<S::Ok, S::Error> {
        s.serialize_str(self.id())
    }
}

impl<'de> Deserialize<'de> for Unit {
    fn deserialize<D: serde::Deserializer<'de>>(d: D) -> Result<Self, D::Error> {
        let id = <std::borrow::Cow<'de, str>>::deserialize(d)?;
        Unit::from_id(&id).ok_or_else(|| serde::de::Error::custom(format!("`{id}` is not a known unit")))
    }
}

ids!(/// How full the gas store looks.
    GasLevel { None = "none", Low = "low", Half = "half", Good = "good", Full = "full" });
ids!(/// How the flame looks.
    FlameLook { Blue = "blue", Yellow = "yellow", Weak = "weak", WillNotLight = "will_not_light", GoesOut = "goes_out" });
ids!(/// What a thermometer was held into.
    Medium { Tank = "tank", Air = "air" });
ids!(/// What was put in to mend sourness.
    AlkaliKind { Soda = "soda", Lime = "lime", Ash = "ash" });
ids!(/// What the tank's outside is like, as far as warmth and light go.
    Walls {
    Black = "black", White = "white", Insulated = "insulated", Greenhouse = "greenhouse", Heated = "heated",
    Buried = "buried",
});
ids!(/// Signs a person notices at a digester. The first three are dangers to people.
    Sign {
    GasLeak = "gas_leak", Fire = "fire", Unwell = "unwell",
    SourSmell = "sour_smell", EggSmell = "egg_smell", BadSmell = "bad_smell", Foam = "foam", Scum = "scum",
    Overflow = "overflow", LevelDrop = "level_drop", InletBlocked = "inlet_blocked",
    OutletBlocked = "outlet_blocked", GasLineBlocked = "gas_line_blocked", WaterInGasLine = "water_in_gas_line",
    GreenLiquid = "green_liquid", ThickSlurry = "thick_slurry", WaterySlurry = "watery_slurry", Flies = "flies",
    Worms = "worms", BagTorn = "bag_torn", TankCracked = "tank_cracked",
});

impl Sign {
    /// Whether people must get away first and everything else waits.
    pub const fn is_danger(self) -> bool {
        matches!(self, Sign::GasLeak | Sign::Fire | Sign::Unwell)
    }
}

/// One thing that is known. The JSON is the fact object of the reading, without its relative `day`.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "fact", rename_all = "snake_case")]
pub enum What {
    Fed {
        feed: Feed,
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    /// A habit per day.
    Usual {
        feed: Feed,
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    Water {
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    /// Nothing on that day and on the `days` - 1 before it.
    NotFed {
        days: u32,
    },
    Gas {
        level: GasLevel,
    },
    Burned {
        minutes: f64,
    },
    Flame {
        look: FlameLook,
    },
    Temperature {
        celsius: f64,
        of: Medium,
    },
    Ph {
        value: f64,
    },
    Pressure {
        cm_water: f64,
    },
    Sign {
        sign: Sign,
    },
    /// The vessel's whole volume.
    Tank {
        litres: f64,
    },
    /// The slurry's volume, up to the overflow.
    Liquid {
        litres: f64,
    },
    /// The gas bag's or drum's volume.
    Store {
        litres: f64,
    },
    Walls {
        look: Walls,
    },
    /// First filled on this day.
    Started,
    Removed {
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    Alkali {
        what: AlkaliKind,
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    Measure {
        unit: Measure,
        litres: f64,
    },
    People {
        count: u32,
    },
    Place {
        name: String,
    },
    /// The country they live in, by place or by number.
    Country {
        code: String,
    },
    /// Where the place was found to be, and its climate.
    Sited {
        normals: Normals,
    },
    Seeded {
        feed: Feed,
        amount: Option<f64>,
        unit: Option<Unit>,
    },
    /// Mends the last thing told in an earlier text.
    Corrected {
        amount: Option<f64>,
        unit: Option<Unit>,
        feed: Option<Feed>,
    },
    /// An earlier fact that no longer counts: corrected, or undone.
    Retracted {
        id: i64,
    },
}

/// Something known of one digester.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Fact {
    /// Grows with the order in which facts were kept.
    pub id: i64,
    /// The day it is about.
    pub day: Day,
    /// When it was told: seconds since 1970-01-01 UTC.
    pub told_at: i64,
    pub what: What,
}

/// The facts that still count, in order of day, then of telling: those retracted are left out with what retracted
/// them.
pub fn standing(facts: &[Fact]) -> Vec<&Fact> {
    let retracted: std::collections::BTreeSet<i64> = facts
        .iter()
        .filter_map(|fact| match fact.what {
            What::Retracted { id } => Some(id),
            _ => None,
        })
        .collect();
    let mut standing: Vec<&Fact> = facts
        .iter()
        .filter(|fact| !retracted.contains(&fact.id) && !matches!(fact.what, What::Retracted { .. }))
        .collect();
    standing.sort_by_key(|fact| (fact.day, fact.told_at, fact.id));
    standing
}
