//! Numbers that know their unit.
//!
//! Takes bare numbers at the door, once, checked; gives types between which only physics converts. Wet mass, dry
//! mass, volatile solids and COD are four types, not four kilograms.

use serde::{Deserialize, Serialize};

/// A bare number was not a possible value of its quantity.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("{quantity} cannot be {value} {unit}: it must be between {least} and {most}")]
pub struct OutOfBounds {
    pub quantity: &'static str,
    pub unit: &'static str,
    pub value: f64,
    pub least: f64,
    pub most: f64,
}

macro_rules! quantity {
    ($(#[$meta:meta])* $name:ident, $quantity:literal, $unit:literal, $least:expr, $most:expr) => {
        $(#[$meta])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(f64);

        impl $name {
            pub const ZERO: Self = Self(0.0);
            pub const UNIT: &'static str = $unit;

            /// Errors: [`OutOfBounds`] when not finite or outside what the quantity can be.
            pub fn new(value: f64) -> Result<Self, OutOfBounds> {
                if value.is_finite() && ($least..=$most).contains(&value) {
                    Ok(Self(value))
                } else {
                    Err(OutOfBounds { quantity: $quantity, unit: $unit, value, least: $least, most: $most })
                }
            }

            /// For a value known when the program is written.
            pub const fn of(value: f64) -> Self { Self(value) }

            pub const fn get(self) -> f64 { self.0 }
        }

        impl std::fmt::Display for $name {
            fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result { write!(f, "{} {}", self.0, $unit) }
        }
    };
}

macro_rules! adds_and_scales {
    ($($name:ident),+) => { $(
        impl std::ops::Add for $name { type Output = Self; fn add(self, other: Self) -> Self { Self(self.0 + other.0) } }
        impl std::ops::AddAssign for $name { fn add_assign(&mut self, other: Self) { self.0 += other.0 } }
        impl std::ops::Sub for $name { type Output = Self; fn sub(self, other: Self) -> Self { Self(self.0 - other.0) } }
        impl std::ops::Mul<f64> for $name { type Output = Self; fn mul(self, by: f64) -> Self { Self(self.0 * by) } }
        impl std::ops::Div<f64> for $name { type Output = Self; fn div(self, by: f64) -> Self { Self(self.0 / by) } }
        impl std::ops::Div for $name { type Output = f64; fn div(self, by: Self) -> f64 { self.0 / by.0 } }
        impl std::iter::Sum for $name { fn sum<I: Iterator<Item = Self>>(all: I) -> Self { all.fold(Self::ZERO, |a, b| a + b) } }
    )+ };
}

quantity!(/// Mass as it goes in, water of the food included.
    WetKg, "wet mass", "kg", 0.0, 1e6);
quantity!(/// Total solids (TS): what is left after drying at 105 °C.
    DryKg, "dry mass", "kg TS", 0.0, 1e6);
quantity!(/// Volatile solids (VS): what of TS burns off at 550 °C.
    VsKg, "volatile solids", "kg VS", 0.0, 1e6);
quantity!(/// Chemical oxygen demand.
    CodKg, "COD", "kg COD", 0.0, 1e6);
quantity!(/// A volume of slurry, water, food or vessel.
    Litres, "volume", "l", 0.0, 1e7);
quantity!(/// Biogas at slurry temperature and local air pressure, wet.
    GasLitres, "gas volume", "l biogas", 0.0, 1e9);
quantity!(/// Time a burner ran.
    Minutes, "minutes", "min", 0.0, 1e5);
quantity!(/// A temperature.
    Celsius, "temperature", "°C", -60.0, 120.0);

adds_and_scales!(WetKg, DryKg, VsKg, CodKg, Litres, GasLitres, Minutes);

/// A calendar day where the digester stands: days since 1970-01-01, local.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Day(pub i32);

impl Day {
    pub fn plus(self, days: i32) -> Day {
        Day(self.0.saturating_add(days))
    }
    /// Whole days from `earlier` to this one; negative when `earlier` is later.
    pub fn since(self, earlier: Day) -> i32 {
        self.0.saturating_sub(earlier.0)
    }
}
