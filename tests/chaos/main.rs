//! Faults on purpose: a seeded world of nodes that die, a store that fails, a network that cuts; and real processes
//! that are killed.
//!
//! A failure prints its seed; `BELLYFUL_CHAOS_SEED=N` runs that one world again. `BELLYFUL_CHAOS_SEEDS=FROM..TO` and
//! `BELLYFUL_CHAOS_KILLS=N` make the runs long (see `.ci/long`).

mod kills;
mod world;

use world::World;

/// Worlds in a short run.
const SEEDS: std::ops::Range<u64> = 0..300;

fn seeds() -> std::ops::Range<u64> {
    if let Some(seed) = std::env::var("BELLYFUL_CHAOS_SEED").ok().and_then(|seed| seed.parse().ok()) {
        return seed..seed + 1;
    }
    let Ok(range) = std::env::var("BELLYFUL_CHAOS_SEEDS") else { return SEEDS };
    let (from, to) = range.split_once("..").expect("seeds are given as FROM..TO");
    from.parse().expect("a number")..to.parse().expect("a number")
}

#[test]
fn every_world_keeps_its_promises() {
    let mut counts = world::Counts::default();
    for seed in seeds() {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
        match runtime.block_on(World::of(seed).run()) {
            Ok(seen) => counts.add(&seen),
            Err(broken) => panic!("seed {seed}: {broken}; run it again with BELLYFUL_CHAOS_SEED={seed}"),
        }
    }
    println!("{counts}");
    if seeds().count() > 100 {
        assert!(counts.faults > 0 && counts.deaths > 0 && counts.doubled > 0, "the worlds are too kind: {counts}");
    }
}

#[test]
fn the_same_seed_gives_the_same_world() {
    let run = |seed| {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
        runtime.block_on(World::of(seed).run()).map(|counts| counts.to_string())
    };
    assert_eq!(run(7), run(7));
}
