//! `bellyful simulate`: the bare model on a scenario file, a row a day out.
//!
//! Takes a scenario file; gives CSV on standard output and, where asked, a plot. It never guesses what a file leaves
//! out: a bad file is one sentence that names the field.

mod plot;
mod read;

use bellyful_core::adm1::component::{GAS_NAMES, LIQUID_NAMES};
use bellyful_core::adm1::scenario::{DayRow, Story};
use bellyful_core::adm1::{Accuracy, Adm1Error};
use std::io::{self, Write};
use std::path::PathBuf;

/// A relative tolerance at which daily figures are exact to about 1e-4.
const DEFAULT_RTOL: f64 = 1e-5;
/// Runs of so many days show their progress.
const LONG_RUN_DAYS: usize = 365;

/// What to simulate and what to give.
#[derive(Debug, clap::Args)]
pub struct SimulateArgs {
    /// Scenario file (JSON): reactor, initial, initial_gas, influents, temperature_C, kinetics_temperature, feeds
    scenario: PathBuf,
    /// Form of the rows on standard output
    #[arg(long, value_enum, default_value_t = Form::Csv)]
    out: Form,
    /// Relative tolerance of the solver, 1e-9 to 1e-2
    #[arg(long, default_value_t = DEFAULT_RTOL)]
    rtol: f64,
    /// Also draws pH, acids, gas, temperature and load over time
    #[arg(long, value_name = "FILE.svg")]
    plot: Option<PathBuf>,
}

#[derive(Debug, Clone, Copy, clap::ValueEnum)]
enum Form {
    Csv,
}

/// Why there is no result.
#[derive(Debug, thiserror::Error)]
pub enum SimulateError {
    #[error("{file} cannot be read: {why}; give the path of a scenario file")]
    Unreadable { file: String, why: io::Error },
    #[error("{file} is not JSON: {why}; mend the file at that place")]
    NotJson { file: String, why: serde_json::Error },
    #[error("{file}: {field} {what}")]
    BadField { file: String, field: String, what: String },
    #[error("--rtol {0} is not between 1e-9 and 1e-2: give a tolerance such as 1e-5")]
    BadTolerance(f64),
    #[error("the model stopped: {0}; try a smaller --rtol, or check the file's initial state and feeds")]
    Model(#[from] Adm1Error),
    #[error("the rows cannot be written: {0}; check the disk or the pipe they go to")]
    Rows(#[source] io::Error),
    #[error("{file} cannot be written: {why}; give --plot a path in a folder that can be written to")]
    Plot { file: String, why: io::Error },
}

/// Runs the command.
pub fn run(args: &SimulateArgs) -> Result<(), SimulateError> {
    let stdout = io::stdout().lock();
    simulate(args, io::BufWriter::new(stdout))
}

fn simulate(args: &SimulateArgs, mut to: impl Write) -> Result<(), SimulateError> {
    if !(1e-9..=1e-2).contains(&args.rtol) {
        return Err(SimulateError::BadTolerance(args.rtol));
    }
    let file = read::scenario(&args.scenario)?;
    let Form::Csv = args.out;
    let mut story = Story::begin(&file.scenario, Accuracy::of(args.rtol))?;
    let days = file.scenario.celsius.len();
    let bar =
        if days >= LONG_RUN_DAYS { indicatif::ProgressBar::new(days as u64) } else { indicatif::ProgressBar::hidden() };
    let mut rows = Vec::with_capacity(days);
    writeln!(to, "{}", file.columns.join(",")).map_err(SimulateError::Rows)?;
    while let Some(row) = story.next_day()? {
        let values: Vec<String> =
            file.columns.iter().filter_map(|column| value(&row, column)).map(|v| v.to_string()).collect();
        writeln!(to, "{}", values.join(",")).map_err(SimulateError::Rows)?;
        bar.inc(1);
        rows.push(row);
    }
    bar.finish_and_clear();
    let (cod, nitrogen) = story.astray();
    assert!(cod < 1e-8 && nitrogen < 1e-8, "the model keeps COD and nitrogen: {cod:e}, {nitrogen:e} went astray");
    to.flush().map_err(SimulateError::Rows)?;
    if let Some(path) = &args.plot {
        let svg = plot::svg(&file.name, &rows, file.scenario.member.vessel.liquid_m3);
        std::fs::write(path, svg).map_err(|why| SimulateError::Plot { file: path.display().to_string(), why })?;
    }
    Ok(())
}

/// A figure of a day.
type Figure = fn(&DayRow) -> f64;

/// Columns besides ADM1's own letters, each with what it shows.
const COLUMNS: [(&str, Figure); 14] = [
    ("day", |row| row.day as f64),
    ("T_C", |row| row.celsius),
    ("pH", |row| row.ph),
    ("H_ion", |row| row.h_ion_kmol_per_m3),
    ("VFA", |row| row.vfa_kg_cod_per_m3),
    ("ch4_Nm3_d", |row| row.gas.ch4_nm3),
    ("co2_Nm3_d", |row| row.gas.co2_nm3),
    ("h2_Nm3_d", |row| row.gas.h2_nm3),
    ("P_gas_bar", |row| row.pressures.total_bar()),
    ("p_ch4_bar", |row| row.pressures.ch4_bar),
    ("p_co2_bar", |row| row.pressures.co2_bar),
    ("p_h2_bar", |row| row.pressures.h2_bar),
    ("S_nh3", |row| row.free_ammonia_kmol_per_m3),
    ("S_hco3", |row| row.bicarbonate_kmol_per_m3),
];

/// What a column shows of a day; `None` when no such column is known.
fn value(row: &DayRow, column: &str) -> Option<f64> {
    let at = |names: &[&str]| names.iter().position(|name| *name == column);
    let figure = COLUMNS.iter().find(|(name, _)| *name == column).map(|(_, of)| of(row));
    figure.or_else(|| at(&LIQUID_NAMES).map(|i| row.liquid[i])).or_else(|| at(&GAS_NAMES).map(|i| row.gas_phase[i]))
}

/// Whether a column can be shown.
fn is_column(name: &str) -> bool {
    COLUMNS.iter().any(|(column, _)| *column == name) || LIQUID_NAMES.contains(&name) || GAS_NAMES.contains(&name)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::Value;

    fn args(path: &str) -> SimulateArgs {
        SimulateArgs { scenario: path.into(), out: Form::Csv, rtol: DEFAULT_RTOL, plot: None }
    }

    fn reference(name: &str) -> String {
        format!("{}/../tests/reference/scenarios/{name}.json", env!("CARGO_MANIFEST_DIR"))
    }

    fn rows(args: &SimulateArgs) -> Result<Vec<Vec<f64>>, SimulateError> {
        let mut csv = vec![];
        simulate(args, &mut csv)?;
        let text = String::from_utf8(csv).expect("CSV is text");
        Ok(text.lines().skip(1).map(|line| line.split(',').map(|c| c.parse().expect("a number")).collect()).collect())
    }

    /// Every day of a scenario against CVODE at rtol 1e-9 (tests/reference/scenarios), closer where the tank is well,
    /// looser on days whose reference pH is under 6.5 and on the five after.
    fn check(name: &str) {
        let file: Value = serde_json::from_str(&std::fs::read_to_string(reference(name)).unwrap()).unwrap();
        let columns: Vec<&str> = file["columns"].as_array().unwrap().iter().map(|c| c.as_str().unwrap()).collect();
        let at = |name: &str| columns.iter().position(|c| *c == name).unwrap();
        let days = file["daily"].as_array().unwrap();
        let rows = rows(&args(&reference(name))).unwrap();
        assert_eq!(rows.len(), days.len());
        let known = |day: usize, column: &str| days[day][at(column)].as_f64().unwrap();
        for (day, row) in rows.iter().enumerate() {
            assert_eq!(row[0], (day + 1) as f64);
            let sours = (day.saturating_sub(5)..=day).any(|day| known(day, "pH") < 6.5);
            let near = |column: &str, share: f64, plus: f64| {
                let (ours, theirs) = (row[at(column)], known(day, column));
                let allowed = (share * theirs.abs()).max(plus);
                assert!((ours - theirs).abs() <= allowed, "{name}, day {}: {column} is {ours}, not {theirs}", day + 1);
            };
            if sours {
                near("pH", 0.0, 0.03);
                near("VFA", 0.05, 0.0);
                near("ch4_Nm3_d", 0.05, 0.01);
                near("co2_Nm3_d", 0.05, 0.01);
            } else {
                near("pH", 0.0, 0.01);
                near("ch4_Nm3_d", 0.01, 0.0);
                near("VFA", 0.02, 0.02);
                near("S_ac", 0.02, 0.02);
                for group in ["X_su", "X_aa", "X_fa", "X_c4", "X_pro", "X_ac", "X_h2"] {
                    near(group, 0.005, 0.0);
                }
            }
        }
    }

    #[test]
    fn a_start_up_at_35_degrees_is_that_of_an_independent_solver() {
        check("p1_startup_35C");
    }

    #[test]
    fn steady_feeding_at_25_degrees_is_that_of_an_independent_solver() {
        check("p2_steady_25C");
    }

    #[test]
    fn overload_souring_and_rescue_are_those_of_an_independent_solver() {
        check("p3_overload_recovery");
    }

    #[test]
    fn a_cold_snap_is_that_of_an_independent_solver() {
        check("p4_cold_snap");
    }

    #[test]
    fn ammonia_from_much_protein_is_that_of_an_independent_solver() {
        check("p5_high_protein");
    }

    #[test]
    fn much_fat_is_that_of_an_independent_solver() {
        check("p6_high_fat");
    }

    /// p1 with one field changed, or taken out when `None`, must be refused with a sentence that names it.
    fn refused(path: &[&str], to: Option<Value>, expected: &str) {
        let mut file: Value =
            serde_json::from_str(&std::fs::read_to_string(reference("p1_startup_35C")).unwrap()).unwrap();
        let (last, way) = path.split_last().unwrap();
        let parent = way.iter().fold(&mut file, |value, key| match key.parse::<usize>() {
            Ok(at) => &mut value[at],
            Err(_) => &mut value[*key],
        });
        match to {
            Some(value) => parent[*last] = value,
            None => drop(parent.as_object_mut().unwrap().remove(*last)),
        }
        let folder = std::env::temp_dir().join(format!("bellyful-simulate-{}-{}", std::process::id(), path.join("-")));
        std::fs::create_dir_all(&folder).unwrap();
        let at = folder.join("scenario.json");
        std::fs::write(&at, file.to_string()).unwrap();
        let error = rows(&args(at.to_str().unwrap())).unwrap_err().to_string();
        std::fs::remove_dir_all(&folder).unwrap();
        assert!(error.ends_with(expected), "{error:?} does not end with {expected:?}");
    }

    #[test]
    fn a_bad_file_is_one_sentence_that_names_the_field() {
        refused(&["reactor"], None, "reactor is missing: add it");
        refused(
            &["reactor", "V_liq_m3"],
            Some("much".into()),
            "reactor.V_liq_m3 is \"much\": it must be a number from 0.000001 to 1000000",
        );
        refused(&["initial", "S_ac"], Some((-1).into()), "initial.S_ac is -1: it must be a number from 0 to 5000");
        refused(&["n_days"], Some(121.into()), "temperature_C has 120 entries: give one for each of the n_days 121");
        refused(
            &["feeds", "3", "influent"],
            Some(7.into()),
            "feeds[3].influent is 7: there are 1 influents, counted from 0",
        );
        refused(
            &["kinetics_temperature"],
            Some("warm".into()),
            "kinetics_temperature is not known: use none, hashimoto_uptake_decay+arrhenius64kJ_hydrolysis or cardinal",
        );
        refused(&["columns"], Some(serde_json::json!(["day", "gold"])), "columns[1] is gold: no such column is known");
    }

    #[test]
    fn a_missing_file_and_a_wild_tolerance_are_refused() {
        assert!(rows(&args("/no/such/file.json")).unwrap_err().to_string().contains("cannot be read"));
        let wild = SimulateArgs { rtol: 5.0, ..args(&reference("p1_startup_35C")) };
        assert!(rows(&wild).unwrap_err().to_string().contains("--rtol 5 is not between"));
    }

    #[test]
    fn the_plot_shows_five_panels() {
        let path = std::env::temp_dir().join(format!("bellyful-plot-{}.svg", std::process::id()));
        rows(&SimulateArgs { plot: Some(path.clone()), ..args(&reference("p3_overload_recovery")) }).unwrap();
        let svg = std::fs::read_to_string(&path).unwrap();
        std::fs::remove_file(&path).unwrap();
        for title in ["pH", "VFA, kg COD/m³", "Gas, Nm³/d", "Slurry, °C", "Load, kg COD/m³/d"] {
            assert!(svg.contains(&format!(">{title}</text>")), "no panel {title}");
        }
        assert_eq!(svg.matches("<polyline").count(), 6);
        assert!(!svg.contains("NaN") && !svg.contains("inf"));
    }
}
