//! What a digester is good for: gas to cook with, liquid fertilizer, fuel and emissions spared.
//!
//! Takes litres of gas and slurry, and what the family burned before; gives minutes, litres, dilutions, kilograms of
//! fuel and of CO2 equivalents. Never claims a saving that leaks have eaten: leakage counts against it.

pub mod cooking;
pub mod digestate;
pub mod emissions;
pub mod fuel;
