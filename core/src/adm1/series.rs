//! Tanks in series: a long tank or bag, through which what is fed moves like a plug.
//!
//! Takes one vessel cut into equal parts; each part's overflow feeds the next. Mixed within, never back. Source:
//! tanks-in-series model, Levenspiel, Chemical Reaction Engineering (from memory).

use super::component::*;
use super::run::{Adm1Error, GasOut, Room, advance_one};
use super::tank::{Member, Tank};
use crate::units::OutOfBounds;

/// One digester as several tanks, inlet first.
#[derive(Debug, Clone, PartialEq)]
pub struct Series {
    part: Member,
    tanks: Vec<Tank>,
}

impl Series {
    /// `parts` equal tanks that together are the member's vessel, all filled alike. 1 is the mixed tank itself.
    ///
    /// Errors: [`OutOfBounds`] for a liquid that cannot be, or no part.
    pub fn filled_with(
        member: &Member,
        parts: usize,
        liquid: &Composition,
        celsius: f64,
    ) -> Result<Series, OutOfBounds> {
        let share = parts as f64;
        if parts == 0 {
            return Err(OutOfBounds { quantity: "parts", unit: "", value: share, least: 1.0, most: f64::INFINITY });
        }
        let mut part = *member;
        part.vessel.liquid_m3 /= share;
        part.vessel.head_m3 /= share;
        part.vessel.k_p_m3_per_d_bar /= share;
        let tank = Tank::filled_with(&part, liquid, celsius)?;
        Ok(Series { part, tanks: vec![tank; parts] })
    }

    /// Inlet first.
    pub fn tanks(&self) -> &[Tank] {
        &self.tanks
    }

    /// Puts a volume into the first part; what each overflows goes on to the next. Gives what left the last, in kg COD
    /// or kmol. Exact within a part; between parts a slug passes on as mixed as it left.
    pub fn feed(&mut self, volume_m3: f64, what: &Composition) -> Result<Composition, OutOfBounds> {
        let (mut volume, mut coming) = (volume_m3, *what);
        let mut out = [0.0; LIQUIDS];
        for tank in &mut self.tanks {
            let room = (self.part.vessel.liquid_m3 - tank.liquid_m3()).max(0.0);
            out = tank.feed(&self.part, volume, &coming)?;
            volume = (volume - room).max(0.0);
            let per_m3 = if volume > 0.0 { 1.0 / volume } else { 0.0 };
            coming = out.map(|amount| (amount * per_m3).max(0.0));
        }
        Ok(out)
    }

    /// Lets time pass in all parts. Errors: [`Adm1Error`], with the part as its member.
    pub fn advance(&mut self, celsius: f64, days: f64, room: &mut Room) -> Result<GasOut, Adm1Error> {
        let mut gas = GasOut::default();
        for (at, tank) in self.tanks.iter_mut().enumerate() {
            let run = advance_one(&self.part, tank, celsius, days, None, room);
            gas += run.map_err(|error| error.of_member(at))?.0;
        }
        Ok(gas)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::adm1::{Kinetics, Vessel};

    fn member() -> Member {
        Member { kinetics: Kinetics::BSM2, vessel: Vessel::household(0.8, 0.15) }
    }

    /// Of an inert that was in the tank and is washed out by `turns` volumes of water: share left in the last part,
    /// against the Erlang distribution e^(-nθ) Σ (nθ)^k/k!, k < n.
    #[test]
    fn an_inert_leaves_by_the_tanks_in_series_law() {
        for parts in [1usize, 3, 6] {
            let mut liquid = [0.0; LIQUIDS];
            (liquid[S_I], liquid[S_CAT], liquid[S_AN]) = (10.0, 0.02, 0.02);
            let mut series = Series::filled_with(&member(), parts, &liquid, 35.0).expect("a liquid");
            let slug = 0.8 / 400.0;
            for turn in 1..=800 {
                series.feed(slug, &[0.0; LIQUIDS]).expect("water");
                let x = parts as f64 * f64::from(turn) / 400.0;
                let mut term = libm::exp(-x);
                let law: f64 = (0..parts)
                    .map(|k| {
                        let this = term;
                        term *= x / (k + 1) as f64;
                        this
                    })
                    .sum();
                let last = series.tanks()[parts - 1].liquid()[S_I] / 10.0;
                assert!((last - law).abs() < 0.01, "{parts} parts, turn {turn}: {last}, law {law}");
            }
        }
    }

    #[test]
    fn one_part_is_the_mixed_tank() {
        let member = member();
        let mut slurry = [0.02; LIQUIDS];
        (slurry[S_IC], slurry[S_IN], slurry[S_CAT]) = (0.09, 0.08, 0.05);
        let mut food = [0.0; LIQUIDS];
        food[X_CH] = 150.0;
        let (mut series, mut room) =
            (Series::filled_with(&member, 1, &slurry, 35.0).expect("a slurry"), Room::default());
        let mut tank = Tank::filled_with(&member, &slurry, 35.0).expect("a slurry");
        for _ in 0..3 {
            series.feed(0.004, &food).expect("a meal");
            tank.feed(&member, 0.004, &food).expect("a meal");
            let gas = series.advance(35.0, 1.0, &mut room).expect("runs");
            assert_eq!(gas, advance_one(&member, &mut tank, 35.0, 1.0, None, &mut room).expect("runs").0);
        }
        assert_eq!(series.tanks()[0], tank);
        assert!(Series::filled_with(&member, 0, &slurry, 35.0).is_err());
    }
}
