//! The Anaerobic Digestion Model No. 1 (ADM1) in its BSM2 form, for tanks that are fed by hand.
//!
//! Takes what a tank is ([`Member`]: kinetics and vessel), what is in it ([`Tank`]), what people put in or take out
//! (exact jumps), a temperature and a time; gives the gas that left and what a laboratory would measure. It knows no
//! household and no text, and never clamps: a state that leaves its bounds is an error.
//!
//! Reading order: [`component`] (the letters) → `petersen` (who eats what) → [`parameters`], [`temperature`] →
//! `constants`, `limits`, `rates`, `leanings` → `algebra` (pH, hydrogen) → `dynamics` (equations and Jacobian) →
//! [`tank`] (jumps) → [`run`] (time passes) → `view` (what is measured) → [`scenario`] (a whole story).
//!
//! Sources: Batstone et al., Anaerobic Digestion Model No. 1 (IWA STR 13, 2002); Rosen & Jeppsson, Aspects on ADM1
//! Implementation within the BSM2 Framework (Lund University, 2006/2008). Figures and checks: core/docs/model.md.
//!
//! ```
//! use bellyful_core::adm1::component::{LIQUIDS, S_CAT, S_IC, S_IN, X_AC, X_C4, X_CH, X_H2, X_LI, X_PR, X_PRO, X_SU};
//! use bellyful_core::adm1::*;
//!
//! // Two guesses at one tank: as in the book, and with slower hydrolysis and sludge that stays.
//! let book = Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) };
//! let slow = Member {
//!     kinetics: Kinetics { temperature: KineticsTemperature::Cardinal { adapted_c: 0.0 }, ..Kinetics::BSM2 }
//!         .varied(&Variation { hydrolysis: 0.4, ..Variation::default() }),
//!     vessel: Vessel { solids_leaving: 0.6, ..book.vessel },
//! };
//! let members = [book, slow];
//!
//! // Filled with digested slurry.
//! let mut slurry = [0.01; LIQUIDS];
//! (slurry[S_IC], slurry[S_IN], slurry[S_CAT]) = (0.1, 0.08, 0.05);
//! for group in X_SU..=X_H2 {
//!     slurry[group] = 0.3;
//! }
//! let mut tanks: Vec<Tank> =
//!     members.iter().map(|m| Tank::filled_with(m, &slurry, 30.0)).collect::<Result<_, _>>()?;
//!
//! // Each day: 2 l of food, 6 l of water, then a day passes at each member's own temperature.
//! let mut food = [0.0; LIQUIDS];
//! (food[X_CH], food[X_PR], food[X_LI], food[S_IN], food[S_CAT]) = (150.0, 50.0, 40.0, 0.02, 0.1);
//! let (mut room, mut gas) = (Room::default(), [GasOut::default(); 2]);
//! for _ in 0..10 {
//!     for (member, tank) in members.iter().zip(&mut tanks) {
//!         tank.feed(member, 0.002, &food)?;
//!         tank.add_water(member, 0.006)?;
//!     }
//!     advance(&members, &mut tanks, &[31.0, 29.0], 1.0, &mut gas, &mut room)?;
//! }
//! assert!(gas[0].ch4_nm3 > gas[1].ch4_nm3 && tanks[0].ph() > 6.5);
//!
//! // Kept and brought back to the same bytes.
//! let kept = tanks[0].to_bytes();
//! assert_eq!(Tank::from_bytes(&kept)?, tanks[0]);
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

mod algebra;
pub mod component;
mod constants;
mod dynamics;
mod keep;
mod leanings;
mod limits;
#[cfg(test)]
mod oracle;
pub mod parameters;
mod petersen;
mod rates;
pub mod run;
pub mod scenario;
pub mod series;
pub mod tank;
pub mod temperature;
mod view;

pub use component::Composition;
pub use keep::{NotATank, TANK_BYTES};
pub use parameters::{Kinetics, PerGroup, Variation, Vessel};
pub use petersen::nitrogen_of;
pub use run::{Accuracy, Adm1Error, GasOut, LANES, Room, Run, SteadyFeed, advance, advance_one};
pub use series::Series;
pub use tank::{Account, Alkali, Member, Tank};
pub use temperature::KineticsTemperature;
pub use view::Pressures;
