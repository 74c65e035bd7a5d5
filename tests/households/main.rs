//! The advice judged: households with hidden digesters talk to the bot for a year and follow what it says.
//!
//! `cargo run --release -p bellyful-tests --example households -- [--seed 1] [--households 12] [--days 365]
//! [--temper obedient|loose|half|careless|none] [--trace N]` prints a table, with what comes of feeding without the bot beside
//! it; `none` leaves the bot out.

mod truth;
mod two_step;

use bellyful::converse::Conversation;
use bellyful::mind::Mind;
use bellyful_core::adm1::LANES;
use bellyful_core::advice::{Advice, Verdict};
use bellyful_core::units::Day;
use chrono::{DateTime, Duration, Utc};
use rand::rngs::StdRng;
use rand::{Rng, SeedableRng};
use std::time::Instant;
use truth::Truth;

#[derive(Clone, Copy, PartialEq, Debug)]
enum Policy {
    /// All there is.
    All,
    /// A handbook's load, to the letter.
    Fixed(f64),
    /// The best load of hindsight.
    Hindsight,
    /// What the bot says, on this share of the days.
    Bot(f64),
    /// Nothing on this share of the days, all there is on the others: what rest alone could do for such a family.
    Rest(f64),
}

#[derive(Default, Clone)]
struct Outcome {
    soured: usize,
    methane: f64,
    hold_days: usize,
    false_holds: usize,
    fed_before_souring: usize,
    /// Burner minutes promised, and truly in store at that hour.
    promised_min: f64,
    held_min: f64,
    seconds: f64,
}

struct Args {
    seed: u64,
    households: usize,
    days: i32,
    /// Share of days on which the advice is followed; `None` leaves the bot out.
    follows: Option<f64>,
    trace: Option<usize>,
    /// Whether they measure by eye and rest only as they like.
    loose: bool,
    /// Whether the truth is of another build than the bot's model.
    two_step: bool,
}

fn args() -> Args {
    let mut args =
        Args { seed: 1, households: 12, days: 365, follows: Some(1.0), trace: None, loose: false, two_step: false };
    let given: Vec<String> = std::env::args().skip(1).collect();
    for pair in given.chunks(2) {
        let value = pair.get(1).map_or("", String::as_str);
        match pair[0].as_str() {
            "--seed" => args.seed = value.parse().expect("a number"),
            "--households" => args.households = value.parse().expect("a number"),
            "--days" => args.days = value.parse().expect("a number"),
            "--trace" => args.trace = Some(value.parse().expect("a number")),
            "--temper" => {
                args.loose = value == "loose";
                args.follows = match value {
                    "obedient" | "loose" => Some(1.0),
                    "half" => Some(0.5),
                    "careless" => Some(0.15),
                    "none" => None,
                    other => panic!("no temper {other}"),
                }
            }
            "--truth" => args.two_step = value == "two-step",
            other => panic!("no option {other}"),
        }
    }
    args
}

fn main() {
    let args = args();
    if let Some(which) = args.trace {
        year(&args, which, Policy::Bot(args.follows.unwrap_or(1.0)), true);
        return;
    }
    println!("{} households, {} days, seed {}\n", args.households, args.days, args.seed);
    println!(
        "| policy | soured | gas of hindsight's | hold days | false holds | fed in 3 days before | gas told, of what was there | s a household |"
    );
    println!("| --- | --- | --- | --- | --- | --- | --- | --- |");
    let best = all(&args, Policy::Hindsight);
    let references = [
        ("hindsight", Policy::Hindsight),
        ("all there is", Policy::All),
        ("1.5 kg VS/m3/d", Policy::Fixed(1.5)),
        ("1.0 kg VS/m3/d", Policy::Fixed(1.0)),
    ];
    let resting = args.follows.filter(|share| *share < 1.0).map(|share| ("rest alone", Policy::Rest(share)));
    let bot = args.follows.map(|share| ("the bot", Policy::Bot(share)));
    for (name, policy) in references.into_iter().chain(resting).chain(bot) {
        let outcome = if policy == Policy::Hindsight { best.clone() } else { all(&args, policy) };
        let n = args.households as f64;
        println!(
            "| {name} | {:.0} % | {:.0} % | {:.1} | {:.1} | {} | {} | {:.2} |",
            100.0 * outcome.soured as f64 / n,
            100.0 * outcome.methane / best.methane,
            outcome.hold_days as f64 / n,
            outcome.false_holds as f64 / n,
            outcome.fed_before_souring,
            told_of_there(&outcome),
            outcome.seconds / n
        );
    }
}

fn told_of_there(outcome: &Outcome) -> String {
    match outcome.held_min > 0.0 {
        true => format!("{:.0} %", 100.0 * outcome.promised_min / outcome.held_min),
        false => String::new(),
    }
}

/// All households under one policy, on all cores.
fn all(args: &Args, policy: Policy) -> Outcome {
    let next = std::sync::atomic::AtomicUsize::new(0);
    let sum = std::sync::Mutex::new(Outcome::default());
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(2, |n| n.get()) {
            scope.spawn(|| {
                loop {
                    let which = next.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
                    if which >= args.households {
                        return;
                    }
                    let one = year(args, which, policy, false);
                    let mut sum = sum.lock().expect("no panic");
                    sum.soured += one.soured;
                    sum.methane += one.methane;
                    sum.hold_days += one.hold_days;
                    sum.false_holds += one.false_holds;
                    sum.fed_before_souring += one.fed_before_souring;
                    sum.promised_min += one.promised_min;
                    sum.held_min += one.held_min;
                    sum.seconds += one.seconds;
                }
            });
        }
    });
    sum.into_inner().expect("no panic")
}

/// Loads that hindsight chooses among. Units: kg VS/m3/d.
const LOADS: [f64; LANES] = [2.3, 2.0, 1.7, 1.4, 1.0, 0.7, 0.45, 0.25];

/// The loose: chance that they feed on a day of rest as on the last day they fed, what they give of a ration, and of its
/// water.
const FEEDS_ON_REST: f64 = 0.33;
const BY_EYE: std::ops::Range<f64> = 0.5..2.0;
const WATERED: std::ops::Range<f64> = 0.3..1.0;

fn year(args: &Args, which: usize, policy: Policy, trace: bool) -> Outcome {
    let mut rng = StdRng::seed_from_u64(args.seed * 1000 + which as u64);
    let mut truth = Truth::draw(&mut rng, args.two_step);
    let forgets = rng.random_range(0.10..0.25);
    let mut bot = matches!(policy, Policy::Bot(_)).then(|| Bot::start(args.seed));
    let (mut outcome, mut last, mut recent) = (Outcome::default(), None::<Advice>, vec![]);
    let start: DateTime<Utc> = "2026-02-16T00:00:00Z".parse().expect("a time");
    if let Some(bot) = &mut bot {
        bot.set_up(start, &truth);
        last = bot.say(start + Duration::hours(5), "how much can I feed");
    }
    let mut last_ration_kg = truth.kg_at(0.5);
    for n in 0..args.days {
        let (at, day) = (start + Duration::days(i64::from(n)), Day(20_500 + n));
        let there_is = truth.kg_at(truth.there_is);
        let follows = match policy {
            Policy::Bot(share) | Policy::Rest(share) => rng.random_range(0.0..1.0) < share,
            _ => true,
        };
        let (kg, water_l) = match (policy, &last) {
            (Policy::All, _) => (there_is, there_is),
            (Policy::Rest(_), _) if follows => (0.0, 0.0),
            (Policy::Rest(_), _) => (there_is, there_is),
            (Policy::Fixed(olr), _) => (truth.kg_at(olr).min(there_is), 2.0 * truth.kg_at(olr)),
            (Policy::Hindsight, _) => {
                let well = truth.keeps_well(day, &LOADS);
                let best = LOADS.iter().zip(well).find(|(_, well)| *well).map_or(0.0, |(olr, _)| *olr);
                let kg = truth.kg_at(best).min(there_is);
                (kg, 2.0 * kg)
            }
            (Policy::Bot(_), Some(advice)) if follows => {
                let told = match advice.hold_days > 0 {
                    true if args.loose && rng.random_bool(FEEDS_ON_REST) => last_ration_kg * truth.measure,
                    true => 0.0,
                    false => advice.ration_kg,
                };
                let (by_eye, watered) = match args.loose {
                    true => (rng.random_range(BY_EYE), rng.random_range(WATERED)),
                    false => (1.0, 1.0),
                };
                // They measure as they measure: what they call so much is so much by their bucket.
                let kg = (told * by_eye / truth.measure).min(there_is);
                (kg, watered * advice.water_l.min(4.0 * kg + 1.0))
            }
            (Policy::Bot(_), _) => (there_is, there_is),
        };
        let holding = last.as_ref().is_some_and(|advice| advice.hold_days > 0 || advice.verdict == Verdict::Hold);
        if holding && follows {
            outcome.hold_days += 1;
            let olr = last_ration_kg / truth.kg_at(1.0);
            outcome.false_holds += usize::from(truth.keeps_well(day, &[olr; LANES])[0]);
        } else if kg > 0.0 {
            last_ration_kg = kg;
        }
        let was_soured = truth.soured;
        let noticed = truth.pass(day, kg, water_l);
        recent.push(last.as_ref().is_some_and(|advice| advice.verdict == Verdict::Feed));
        if truth.soured && !was_soured {
            outcome.soured = 1;
            if let Policy::Bot(_) = policy {
                eprintln!("household {which} ({}) soured on day {n}: {}", truth.town, truth.state());
            }
            outcome.fed_before_souring += recent.iter().rev().take(3).filter(|fed| **fed).count();
        }
        if let Some(bot) = &mut bot {
            let started = Instant::now();
            if rng.random_range(0.0..1.0) > forgets {
                let text = bot.tells(kg * truth.measure, water_l, &truth, &noticed, &mut rng);
                let advice = bot.say(at + Duration::hours(16), &text);
                if trace {
                    let well = truth.keeps_well(day, &LOADS);
                    let bears = LOADS.iter().zip(well).find(|(_, well)| *well).map_or(0.0, |(olr, _)| *olr);
                    println!(
                        "{n:3} fed {:.2} bears {:.2} {} | {text} | {}",
                        kg / truth.kg_at(1.0),
                        bears,
                        truth.state(),
                        advice.as_ref().map_or_else(String::new, show)
                    );
                }
                if let Some(advice) = &advice {
                    outcome.promised_min += advice.gas_minutes;
                    outcome.held_min += truth.held_min();
                }
                last = advice.or(last);
            }
            outcome.seconds += started.elapsed().as_secs_f64();
        }
    }
    outcome.methane = truth.methane_nm3;
    outcome
}

fn show(advice: &Advice) -> String {
    let reasons: Vec<&str> = advice.reasons.iter().map(|reason| reason.id()).collect();
    format!(
        "{} {:.1} kg {:.1} L hold {} risk {:.3} gas {:.0} {}",
        advice.verdict,
        advice.ration_kg,
        advice.water_l,
        advice.hold_days,
        advice.risk,
        advice.gas_minutes,
        reasons.join(",")
    )
}

/// The bot at the other end of the line.
struct Bot {
    runtime: tokio::runtime::Runtime,
    conversation: Conversation,
}

const PHONE: &str = "+254700000200";

impl Bot {
    fn start(seed: u64) -> Bot {
        let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
        let mind = Mind::new(None, seed).expect("sound words");
        let conversation = runtime.block_on(Conversation::new(mind)).expect("a store");
        Bot { runtime, conversation }
    }

    fn set_up(&mut self, at: DateTime<Utc>, truth: &Truth) {
        let line = serde_json::json!({ "at": at, "from": PHONE, "setup": { "lang": "en", "tank_l": 1000, "liquid_l": 800,
            "gas_store_l": 600, "place": truth.town, "shade": "black",
            "seeded": { "feed": "cattle_manure", "kg": truth.seed_kg.round(), "days_ago": truth.age_d } } });
        self.runtime.block_on(self.conversation.line(&line.to_string())).expect("set up");
    }

    /// The last advice given in answer.
    fn say(&mut self, at: DateTime<Utc>, text: &str) -> Option<Advice> {
        let line = serde_json::json!({ "at": at, "from": PHONE, "text": text });
        let answers = self.runtime.block_on(self.conversation.line(&line.to_string())).expect("an answer");
        answers.into_iter().rev().find_map(|answer| answer.advice)
    }

    /// What a family says of its day.
    fn tells(&self, kg: f64, water_l: f64, truth: &Truth, noticed: &truth::Noticed, rng: &mut StdRng) -> String {
        let mut said = vec![];
        if kg < 0.05 {
            said.push("no feed today".to_owned());
        } else {
            let foods: Vec<String> = truth
                .mix
                .iter()
                .filter(|(_, share)| *share > 0.05)
                .map(|(feed, share)| format!("{:.1} kg {}", kg * share, name(feed.id())))
                .collect();
            said.push(format!("fed {} and {:.0} L water", foods.join(", "), water_l));
        }
        if rng.random_range(0.0..1.0) < 0.6 {
            said.push(format!("cooked {:.0} min", noticed.cooked_min));
        }
        if noticed.gas_low && rng.random_range(0.0..1.0) < 0.6 {
            said.push("gas low".into());
        }
        if noticed.yellow && rng.random_range(0.0..1.0) < 0.2 {
            said.push("flame yellow".into());
        }
        if noticed.sour_smell && rng.random_range(0.0..1.0) < 0.4 {
            said.push("sour smell".into());
        }
        said.join(". ")
    }
}

fn name(id: &str) -> &str {
    match id {
        "food_waste" => "scraps",
        "cooked_rice" => "rice",
        "vegetable_waste" => "vegetable peels",
        "maize_meal" => "ugali",
        _ => "fruit scraps",
    }
}
