//! What to do next, and why.

use crate::ids;
use serde::{Deserialize, Serialize};

ids!(/// The one thing to do.
    Verdict {
    /// Up to the ration.
    Feed = "feed",
    /// Below the usual.
    Less = "less",
    /// None for `hold_days`.
    Hold = "hold",
    Water = "water",
    /// Check or raise the temperature.
    Warm = "warm",
    /// Something other than feed: see the reasons.
    Check = "check",
    /// Get out.
    Danger = "danger",
});

ids!(/// Why: the same ids that the reply words explain.
    Reason {
    Usual = "usual",
    // Loading
    Overloaded = "overloaded", LoadRising = "load_rising", Underfed = "underfed", FedToday = "fed_today",
    SpreadOut = "spread_out", AfterGap = "after_gap",
    // Start-up
    NoSeed = "no_seed", SeedResting = "seed_resting", StartUp = "start_up", FirstGas = "first_gas",
    // Souring and mending
    Souring = "souring", Recovering = "recovering", SourRisk = "sour_risk",
    // What went in
    TooThick = "too_thick", TooThin = "too_thin", Grease = "grease", Citrus = "citrus", Protein = "protein",
    Salt = "salt", Inhibitor = "inhibitor", NotFood = "not_food", NeedsDung = "needs_dung",
    // Warmth
    Cold = "cold", TooHot = "too_hot", ColdComing = "cold_coming",
    // Gas and parts
    LowGas = "low_gas", LeakSuspected = "leak_suspected", GasUnused = "gas_unused", Part = "part",
    // Danger
    PeopleAtRisk = "people_at_risk",
    // Not knowing
    SizeUnknown = "size_unknown", AmountUnknown = "amount_unknown",
});

/// The decision that a reply words. Amounts are per day; see the field docs for what they count.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Advice {
    pub verdict: Verdict,
    /// Of the family's usual mix as it goes in, before water: what may still go in today if nothing was told fed
    /// today, else tomorrow's.
    pub ration_kg: f64,
    /// Water to go with the ration.
    pub water_l: f64,
    /// Days without feed, counted from the day the ration is for.
    pub hold_days: u32,
    /// Burner minutes in store and coming today.
    pub gas_minutes: f64,
    /// Chance that the digester sours within 14 days if the advice is followed.
    pub risk: f64,
    /// Most weighty first.
    pub reasons: Vec<Reason>,
}
