//! A tank as bytes, to be stored and brought back the same.
//!
//! Takes a [`Tank`]; gives a version byte, a flag byte and little-endian floats. Same tank, same bytes, on any machine.

use super::component::{GASES, LIQUIDS};
use super::tank::{Account, Tank};

const VERSION: u8 = 1;
const FLOATS: usize = LIQUIDS + GASES + 7;
/// Bytes of one tank.
pub const TANK_BYTES: usize = 2 + 8 * FLOATS;

/// These bytes are not a stored tank.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum NotATank {
    #[error("a stored tank has {TANK_BYTES} bytes, not {0}")]
    Length(usize),
    #[error("a stored tank of version {0} cannot be read by this program")]
    Version(u8),
    #[error("float {0} of a stored tank is not a number")]
    NotFinite(usize),
}

impl Tank {
    pub fn to_bytes(&self) -> [u8; TANK_BYTES] {
        let mut bytes = [0; TANK_BYTES];
        (bytes[0], bytes[1]) = (VERSION, u8::from(self.hydrogen_is_algebraic));
        let Account { cod_in_kg, cod_out_kg, n_in_kmol, n_out_kmol } = self.account;
        let rest = [self.h_ion, self.liquid_m3, self.calm_d, cod_in_kg, cod_out_kg, n_in_kmol, n_out_kmol];
        let floats = self.liquid.iter().chain(&self.gas).chain(&rest);
        bytes[2..].chunks_exact_mut(8).zip(floats).for_each(|(to, float)| to.copy_from_slice(&float.to_le_bytes()));
        bytes
    }

    /// Errors: [`NotATank`].
    pub fn from_bytes(bytes: &[u8]) -> Result<Tank, NotATank> {
        if bytes.len() != TANK_BYTES {
            return Err(NotATank::Length(bytes.len()));
        }
        if bytes[0] != VERSION {
            return Err(NotATank::Version(bytes[0]));
        }
        let mut floats = [0.0; FLOATS];
        for (at, (float, from)) in floats.iter_mut().zip(bytes[2..].chunks_exact(8)).enumerate() {
            *float = f64::from_le_bytes(from.try_into().expect("chunks of eight"));
            if !float.is_finite() {
                return Err(NotATank::NotFinite(at));
            }
        }
        let [.., h_ion, liquid_m3, calm_d, cod_in_kg, cod_out_kg, n_in_kmol, n_out_kmol] = floats;
        Ok(Tank {
            liquid: std::array::from_fn(|i| floats[i]),
            gas: std::array::from_fn(|i| floats[LIQUIDS + i]),
            h_ion,
            liquid_m3,
            calm_d,
            hydrogen_is_algebraic: bytes[1] == 1,
            account: Account { cod_in_kg, cod_out_kg, n_in_kmol, n_out_kmol },
        })
    }
}
