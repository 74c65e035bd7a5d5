//! Chance that comes back the same: numbers drawn from a seed, a day and a purpose.
//!
//! Takes integers; gives uniform and standard normal numbers, the same on any machine. Never asks the machine for any.

/// A stream of numbers. Source: SplitMix64 (Steele, Lea & Flood 2014).
pub(super) struct Chance(u64);

impl Chance {
    /// The stream of this seed on this day for this purpose.
    pub fn of(seed: u64, day: i32, purpose: u64) -> Chance {
        let mut chance =
            Chance(seed ^ (day as u32 as u64).wrapping_mul(0xD1B5_4A32_D192_ED03) ^ purpose.rotate_left(32));
        chance.next();
        chance
    }

    fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    }

    /// Above 0 and below 1.
    pub fn uniform(&mut self) -> f64 {
        ((self.next() >> 12) as f64 + 0.5) / (1u64 << 52) as f64
    }

    pub fn normal(&mut self) -> f64 {
        quantile(self.uniform())
    }

    /// The numbers below `n` in a chance order.
    pub fn shuffled(&mut self, n: usize) -> Vec<usize> {
        let mut order: Vec<usize> = (0..n).collect();
        for at in (1..n).rev() {
            order.swap(at, (self.uniform() * (at + 1) as f64) as usize);
        }
        order
    }
}

/// The standard normal number below which `share` of all lie. `share` is above 0 and below 1.
///
/// Source: P. J. Acklam's rational approximation, relative error under 1.2e-9 (from memory; the test holds it to the
/// tabled quantiles).
pub(super) fn quantile(share: f64) -> f64 {
    const A: [f64; 6] = [
        -3.969_683_028_665_376e1,
        2.209_460_984_245_205e2,
        -2.759_285_104_469_687e2,
        1.383_577_518_672_69e2,
        -3.066_479_806_614_716e1,
        2.506_628_277_459_239,
    ];
    const B: [f64; 5] = [
        -5.447_609_879_822_406e1,
        1.615_858_368_580_409e2,
        -1.556_989_798_598_866e2,
        6.680_131_188_771_972e1,
        -1.328_068_155_288_572e1,
    ];
    const C: [f64; 6] = [
        -7.784_894_002_430_293e-3,
        -3.223_964_580_411_365e-1,
        -2.400_758_277_161_838,
        -2.549_732_539_343_734,
        4.374_664_141_464_968,
        2.938_163_982_698_783,
    ];
    const D: [f64; 4] =
        [7.784_695_709_041_462e-3, 3.224_671_290_700_398e-1, 2.445_134_137_142_996, 3.754_408_661_907_416];
    const TAIL: f64 = 0.024_25;
    let poly = |by: &[f64], x: f64| by.iter().fold(0.0, |sum, c| sum * x + c);
    let tail = |share: f64| {
        let q = libm::sqrt(-2.0 * libm::log(share));
        poly(&C, q) / (poly(&D, q) * q + 1.0)
    };
    if share < TAIL {
        tail(share)
    } else if share > 1.0 - TAIL {
        -tail(1.0 - share)
    } else {
        let q = share - 0.5;
        let r = q * q;
        poly(&A, r) * q / (poly(&B, r) * r + 1.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Tabled quantiles of the standard normal distribution.
    #[test]
    fn quantiles_are_those_of_the_table() {
        for (share, z) in [(0.5, 0.0), (0.841_344_746, 1.0), (0.025, -1.959_963_985), (0.999, 3.090_232_306)] {
            assert!((quantile(share) - z).abs() < 1e-7, "{share}: {}", quantile(share));
        }
    }

    #[test]
    fn the_same_seed_draws_the_same_and_another_does_not() {
        let drawn = |seed, day, purpose| Chance::of(seed, day, purpose).next();
        assert_eq!(drawn(7, 3, 1), drawn(7, 3, 1));
        assert_ne!(drawn(7, 3, 1), drawn(8, 3, 1));
        assert_ne!(drawn(7, 3, 1), drawn(7, 4, 1));
        assert_ne!(drawn(7, 3, 1), drawn(7, 3, 2));
    }

    #[test]
    fn many_draws_are_spread_as_they_should() {
        let mut chance = Chance::of(1, 1, 1);
        let drawn: Vec<f64> = (0..20_000).map(|_| chance.normal()).collect();
        let mean = drawn.iter().sum::<f64>() / 20_000.0;
        let variance = drawn.iter().map(|z| (z - mean) * (z - mean)).sum::<f64>() / 20_000.0;
        assert!(mean.abs() < 0.03 && (variance - 1.0).abs() < 0.04, "{mean} {variance}");
        let mut order = chance.shuffled(32);
        order.sort_unstable();
        assert_eq!(order, (0..32).collect::<Vec<_>>());
    }
}
