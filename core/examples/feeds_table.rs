//! Prints the table of feeds: what each is made of, how it digests in the model, and what others measured.
//!
//! `cargo run -p bellyful-core --example feeds_table > core/docs/feeds.md`. The tests hold the printed table to the
//! code, and the model's methane to the published ranges.

use bellyful_core::adm1::component::{GAS_NAMES, GASES, LIQUID_NAMES};
use bellyful_core::adm1::{Composition, GasOut, Kinetics, Member, Room, Tank, Vessel, advance_one};
use bellyful_core::feeds::{Feed, Kind, MakeUp, MethaneRead, buswell, influent, make_up};
use bellyful_core::units::WetKg;
use std::fmt::Write;

fn main() {
    print!("{}", table());
}

/// The batch test that the model runs on each feed.
const DAYS: f64 = 60.0;
const CELSIUS: f64 = 35.0;
const DOSE_KG_VS_PER_M3: f64 = 2.0;

/// The whole document.
fn table() -> String {
    let mut text = String::from(HEAD);
    for &feed in Feed::ALL {
        line(&mut text, make_up(feed));
    }
    text.push_str(METHANE_HEAD);
    let mut counts = [0; 3];
    for &feed in Feed::ALL {
        let made = make_up(feed);
        if let (Some(read), Some(modelled)) = (&made.methane_read, methane_m3_per_kg_vs(feed)) {
            let verdict = deviation(modelled, read);
            counts[usize::from(verdict != 0.0) + usize::from(verdict.abs() > 0.1)] += 1;
            let theory = buswell::METHANE_M3_PER_KG_COD * made.cod() / made.vs();
            let outside = if verdict == 0.0 { "inside".to_owned() } else { format!("{:+.0} %", 100.0 * verdict) };
            let _ = writeln!(
                text,
                "| `{feed}` | {modelled:.3} | {:.3}–{:.3} | {outside} | {theory:.3} | {} | {} |",
                read.low, read.high, read.sure, read.source
            );
        }
    }
    let _ = writeln!(
        text,
        "\n{} feeds inside the range, {} within a tenth of its nearer end, {} beyond.",
        counts[0], counts[1], counts[2]
    );
    text.push_str(SOURCES_HEAD);
    for &feed in Feed::ALL {
        sources(&mut text, make_up(feed));
    }
    text
}

const HEAD: &str = "\
# Feeds

Printed by `cargo run -p bellyful-core --example feeds_table > core/docs/feeds.md` from `core/src/feeds/*.csv`; do not
edit here. How sure a value is: `read` in the source named, `derived` from such, `mix` of foods that were read,
`secondary`: quoted by a page that was read, `memory`: recalled, `estimate`: ours.

## What they are made of

TS, protein, fat, sugars, starch, fibre and ash are % of wet mass; COD is kg/kg VS; N and salt g/kg wet; alkali is
strong cations less strong anions, meq/kg wet; density (chopped) kg/l; hydrolysis 1/d at 35 °C.

| feed | TS | VS of TS | protein | fat | sugars | starch | fibre | COD | N | C/N | alkali | salt | density | piece kg | digests | hydrolysis | kinds |
| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | --- |
";

const METHANE_HEAD: &str = "
## Methane in the model against what was measured

m3 (0 °C, 1 atm, dry) per kg VS after 60 days at 35 °C, 2 kg VS/m3 in BSM2's digester sludge, the sludge's own methane
taken off, against the range that others measured. `outside` is how far the model is beyond the nearer end. Theory is
Buswell's of all COD. The biodegradable share of each feed was set so that its methane falls within the range, most
often near its middle: the table shows that composition, mapping and model together keep to it, not that they foretell
it. Where the range is `memory`, nothing more is claimed.

| feed | model | measured | outside | theory | how sure | source |
| --- | ---: | ---: | ---: | ---: | --- | --- |
";

const SOURCES_HEAD: &str = "
## Sources

| feed | composition | digestion | density | piece |
| --- | --- | --- | --- | --- |
";

fn line(text: &mut String, made: &MakeUp) {
    let percent = |share: f64| format!("{:.1}", 100.0 * share);
    let per_vs = if made.vs() > 0.0 { format!("{:.2}", made.cod() / made.vs()) } else { "–".to_owned() };
    let ratio = made.carbon_to_nitrogen().map_or("–".to_owned(), |ratio| format!("{ratio:.0}"));
    let piece = made.piece.map_or("–".to_owned(), |piece| format!("{:.3}", piece.mass.get()));
    let kinds: Vec<&str> = made.kinds.iter().map(|kind: &Kind| kind.id()).collect();
    let _ = writeln!(
        text,
        "| `{}` | {} | {} | {} | {} | {} | {} | {} | {per_vs} | {:.1} | {ratio} | {:.0} | {:.1} | {:.2} | {piece} | {:.2} | {:.2} | {} |",
        made.feed,
        percent(made.ts()),
        percent(made.vs() / made.ts()),
        percent(made.protein),
        percent(made.fat),
        percent(made.sugars),
        percent(made.starch),
        percent(made.fibre),
        1_000.0 * made.nitrogen(),
        made.strong_cations_meq_per_kg,
        made.salt_g_per_kg,
        made.density.chopped,
        made.biodegradable,
        made.hydrolysis_35c_per_d,
        kinds.join(" "),
    );
}

fn sources(text: &mut String, made: &MakeUp) {
    let of = |sourced: &bellyful_core::feeds::Sourced| format!("{}: {}", sourced.sure, sourced.source);
    let piece = made.pieces.as_ref().map_or("–".to_owned(), of);
    let _ = writeln!(
        text,
        "| `{}` | {} | {} | {} | {piece} |",
        made.feed,
        of(&made.composition),
        of(&made.digestion),
        of(&made.handling)
    );
}

/// How far outside the range, as a share of its nearer end: 0 inside.
fn deviation(modelled: f64, read: &MethaneRead) -> f64 {
    if modelled < read.low {
        modelled / read.low - 1.0
    } else if modelled > read.high {
        modelled / read.high - 1.0
    } else {
        0.0
    }
}

/// What a kilogram of VS gives in the batch test; `None` for what has none.
fn methane_m3_per_kg_vs(feed: Feed) -> Option<f64> {
    let made = make_up(feed);
    (made.vs() > 0.01).then(|| {
        let wet = WetKg::of(DOSE_KG_VS_PER_M3 / made.vs());
        let dose = influent::of(feed, wet);
        let (per_m3, m3) = (dose.composition(), dose.volume.get() / 1_000.0);
        let kinetics = Kinetics {
            k_hyd_ch: made.hydrolysis_35c_per_d,
            k_hyd_pr: made.hydrolysis_35c_per_d,
            k_hyd_li: made.hydrolysis_35c_per_d,
            ..Kinetics::BSM2
        };
        let blank = batch(kinetics, &[0.0; LIQUID_NAMES.len()], 0.0);
        (batch(kinetics, &per_m3, m3) - blank) / DOSE_KG_VS_PER_M3
    })
}

/// Methane of 1 m3 of sludge with `m3` of `feed` in it. Units: m3 (0 °C, 1 atm).
fn batch(kinetics: Kinetics, feed: &Composition, m3: f64) -> f64 {
    let member = Member { kinetics, vessel: Vessel::household(1.0, 0.02) };
    let (mut liquid, gas) = sludge();
    for (amount, fed) in liquid.iter_mut().zip(feed) {
        *amount += fed * m3;
    }
    let mut tank = Tank::full(&member, &liquid, &gas).expect("sludge and 2 kg VS are within bounds");
    let (gas, _): (GasOut, _) = advance_one(&member, &mut tank, CELSIUS, DAYS, None, &mut Room::default())
        .expect("2 kg VS in a m3 of good sludge do not upset it");
    gas.ch4_nm3
}

/// BSM2's steady state (Rosen and Jeppsson 2006).
fn sludge() -> (Composition, [f64; GASES]) {
    let file: serde_json::Value =
        serde_json::from_str(include_str!("../../tests/reference/bsm2_reference.json")).expect("checked in as JSON");
    let of = |name: &str| file["steady_state"][name]["published"].as_f64().expect("every letter has its value");
    (LIQUID_NAMES.map(of), GAS_NAMES.map(of))
}

#[cfg(test)]
mod tests {
    use super::*;
    use bellyful_core::feeds::Sure;

    #[test]
    fn the_printed_table_is_the_codes() {
        let printed = include_str!("../docs/feeds.md");
        let now = table();
        let differs = printed.lines().zip(now.lines()).find(|(printed, now)| printed != now);
        assert_eq!(
            differs, None,
            "print it again: cargo run -p bellyful-core --example feeds_table > core/docs/feeds.md"
        );
        assert_eq!(printed.lines().count(), now.lines().count());
    }

    /// Every range that was read holds the model's methane; ranges from memory within a tenth.
    #[test]
    fn the_models_methane_is_within_what_was_measured() {
        let mut checked = 0;
        for &feed in Feed::ALL {
            if let (Some(read), Some(modelled)) = (&make_up(feed).methane_read, methane_m3_per_kg_vs(feed)) {
                let allowed = if read.sure == Sure::Memory { 0.10 } else { 0.0 };
                let outside = deviation(modelled, read);
                assert!(outside.abs() <= allowed, "{feed}: {modelled:.3} of {:.3}-{:.3}", read.low, read.high);
                checked += 1;
            }
        }
        assert!(checked > 40, "{checked}");
    }

    #[test]
    fn nothing_gives_more_methane_than_its_atoms_allow() {
        for &feed in Feed::ALL {
            if let Some(modelled) = methane_m3_per_kg_vs(feed) {
                let made = make_up(feed);
                let most = buswell::METHANE_M3_PER_KG_COD * made.cod() / made.vs() * made.biodegradable.max(0.01);
                assert!(modelled <= most * 1.01 + 0.01, "{feed}: {modelled:.3} of {most:.3}");
            }
        }
    }
}
