//! What water does to the load: never more of it, always a thinner and a quicker tank.

use bellyful_core::fact::{Fact, Unit, What};
use bellyful_core::feeds::Feed;
use bellyful_core::ledger::{Ledger, Load};
use bellyful_core::site::Site;
use bellyful_core::units::{Day, Litres};
use proptest::prelude::*;

fn load(feed: Feed, kg: f64, water_l: f64) -> Load {
    let (site, mut ledger) = (Site::default(), Ledger::default());
    let fed = What::Fed { feed, amount: Some(kg), unit: Some(Unit::Kg) };
    let water = What::Water { amount: Some(water_l), unit: Some(Unit::L) };
    for (id, what) in (1..).zip([fed, water]) {
        ledger.enter(&Fact { id, day: Day(100), told_at: 0, what }, &site);
    }
    ledger.load(Day(100), 1, Litres::of(800.0))
}

proptest! {
    #[test]
    fn more_water_never_raises_the_load(
        which in 0..Feed::ALL.len(), kg in 0.1..30.0, less in 0.0..50.0, more in 0.0..50.0
    ) {
        let feed = Feed::ALL[which];
        let (dry, wet) = (load(feed, kg, less), load(feed, kg, less + more));
        prop_assert!(wet.olr <= dry.olr && wet.cod_rate <= dry.cod_rate);
        prop_assert!(wet.ts_share <= dry.ts_share && wet.hrt_d <= dry.hrt_d, "{dry:?} {wet:?}");
    }
}
