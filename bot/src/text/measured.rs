//! What was measured: temperature, pH, pressure.

use super::clauses::Clause;
use super::nodes::{Kind, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::tokens::Mark;
use bellyful_core::fact::{Medium, What};

/// Words that may stand between "temperature" and its number.
const LINKS: usize = 5;

/// What may stand beside a day and a number where a reading is told again.
const READ_AGAIN: Cues = Cues::of(&[
    Cue::Is,
    Cue::Was,
    Cue::Now,
    Cue::Still,
    Cue::And,
    Cue::But,
    Cue::Only,
    Cue::About,
    Cue::Chatter,
    Cue::Morning,
    Cue::In,
    Cue::To,
]);

impl Reader<'_> {
    pub fn measured(&mut self, clause: &Clause) {
        if clause.plan {
            return;
        }
        for at in clause.range() {
            if self.free(at, Cue::Ph) {
                self.ph(clause, at);
            } else if self.free(at, Cue::Gauge) {
                self.pressure(clause, at);
            }
        }
        self.reading_goes_on(clause);
        self.only_centimetres(clause);
        self.temperatures(clause);
    }

    /// The nearest free number after `at`, else right before it.
    fn number_near(&self, clause: &Clause, at: usize) -> Option<usize> {
        let bare = |at: usize| {
            let node = self.node(at);
            !node.used
                && (node.number().is_some_and(|n| !n.weak)
                    || node.quantity().is_some_and(|q| {
                        q.number.is_some()
                            && !q.implied
                            && matches!(
                                q.unit,
                                Some(
                                    UnitWord::Pressure(_) | UnitWord::Celsius | UnitWord::Fahrenheit | UnitWord::Degree
                                )
                            )
                    }))
        };
        let ends = |at: usize| {
            // One word may feed and tell ("deu").
            let feeds = self.has(at, Cue::Put) && !self.has(at, Cue::Is);
            feeds || self.node(at).any(&Cues::of(&[Cue::Ph, Cue::Gauge, Cue::Water])) || self.node(at).feed().is_some()
        };
        let mut found = None;
        for next in at + 1..clause.to.min(at + 2 + LINKS) {
            if bare(next) {
                found = Some(next);
                break;
            }
            if ends(next) || self.node(next).quantity().is_some_and(|q| !q.implied) {
                break;
            }
        }
        // "8 cm of water on the gauge"
        const JOINTS: Cues = Cues::of(&[Cue::In, Cue::Of, Cue::Water, Cue::Modifier, Cue::Is, Cue::To, Cue::At]);
        let joint = |at: &usize| self.node(*at).any(&JOINTS) || self.node(*at).number().is_some_and(|n| n.weak);
        let behind = || {
            let back = (clause.from..at).rev().take(LINKS).find(|i| !joint(i))?;
            let pressed = |q: super::nodes::Quantity| matches!(q.unit, Some(UnitWord::Pressure(_)));
            (bare(back) && self.node(back).quantity().is_some_and(pressed)).then_some(back)
        };
        found
            .or_else(behind)
            .or_else(|| at.checked_sub(1).filter(|&before| before >= clause.from && bare(before)))
            .or_else(|| {
                at.checked_sub(2)
                    .filter(|&before| before >= clause.from && bare(before) && self.has(before + 1, Cue::Of))
            })
    }

    fn ph(&mut self, clause: &Clause, at: usize) {
        let Some(number) = self.number_near(clause, at) else { return };
        let Some(value) = self.node(number).number() else { return };
        if (0.0..=14.0).contains(&value.value) && !value.doubtful() {
            if !clause.asks {
                self.tell(at, Some(clause.day(at)), What::Ph { value: round(value.value, 2) });
            }
            self.use_up(at.min(number)..number.max(at) + 1);
            self.ph_of_another_day(clause, number);
        }
    }

    /// "pH 6.4 yesterday, 6.7 today": a number with a day of its own, right after one that was measured.
    fn ph_of_another_day(&mut self, clause: &Clause, told: usize) {
        let (to, day) = (self.row.nodes.len().min(told + 5), |at: usize| self.node(at).when().is_some());
        let next = (told + 1..to).find(|&at| self.node(at).number().is_some_and(|n| !n.weak && n.value <= 14.0));
        let Some(next) = next else { return };
        let little = |at: usize| {
            let node = self.node(at);
            day(at) || node.mark() == Some(Mark::Comma) || node.any(&Cues::of(&[Cue::And, Cue::Is, Cue::Was, Cue::But]))
        };
        // "5.5 yesterday and today 6", "6.4 yesterday, 6.7 today": the day beside the number, not the other's.
        let before: Vec<usize> = (told + 1..next).filter(|&at| day(at)).collect();
        let led = (told.saturating_sub(3)..told).any(day);
        let after = (!led && next + 1 < to && day(next + 1) && before.len() < 2).then_some(next + 1);
        let beside = after.or(before.last().copied()).and_then(|at| self.node(at).when());
        let Some(When::Day(of)) = beside else { return };
        let plain = (told + 1..next).all(little) && !clause.asks && of != clause.day(told);
        let counted =
            self.row.nodes.get(next + 1).is_some_and(|node| node.meaning.unit.is_some() || node.feed().is_some());
        if plain
            && !counted
            && let Some(number) = self.node(next).number()
        {
            self.tell(next, Some(of), What::Ph { value: round(number.value, 2) });
            self.use_up([next]);
            self.ph_of_another_day(clause, next);
        }
    }

    /// "8 cm on the gauge and 24 degrees": a length of water before the gauge, where none comes after.
    fn pressed_before(&self, clause: &Clause, at: usize) -> Option<usize> {
        const JOINTS: Cues = Cues::of(&[Cue::In, Cue::Of, Cue::Water, Cue::To, Cue::At, Cue::Chatter]);
        let pressed = |i: usize| {
            let quantity = self.node(i).quantity().filter(|q| !q.implied && !self.node(i).used);
            quantity.is_some_and(|q| matches!(q.unit, Some(UnitWord::Pressure(_))))
        };
        let back = (clause.from..at).rev().take(LINKS).find(|&i| !self.node(i).any(&JOINTS))?;
        (pressed(back) && !(at + 1..clause.to).any(pressed)).then_some(back)
    }

    fn pressure(&mut self, clause: &Clause, at: usize) {
        let Some(found) = self.pressed_before(clause, at).or_else(|| self.number_near(clause, at)) else { return };
        let cm = match self.node(found).kind {
            Kind::Quantity(quantity) => match quantity.unit {
                Some(UnitWord::Pressure(_)) => quantity.in_base(),
                _ => None,
            },
            Kind::Number(number) => Some(number.value),
            _ => None,
        };
        if let Some(cm_water) = cm.filter(|cm| (0.0..=2000.0).contains(cm)) {
            if !clause.asks {
                self.tell(at, Some(clause.day(at)), What::Pressure { cm_water: round(cm_water, 3) });
            }
            self.use_up(at.min(found)..found.max(at) + 1);
            // "12 cm of water": the water is the gauge's.
            let mut next = found + 1;
            while next < clause.to.min(found + 3) && (self.has(next, Cue::Of) || self.has(next, Cue::Water)) {
                if self.has(next, Cue::Water) {
                    self.use_up(found..next + 1);
                }
                next += 1;
            }
        }
    }

    /// "yesterday the pH was 6.4, today 6.8": a day and a number, right after what was read on another day.
    fn reading_goes_on(&mut self, clause: &Clause) {
        let before = self.clause_before(clause).map_or(0..0, Clause::range);
        let last = self.facts.iter().rev().find(|(at, _)| before.contains(at)).map(|(_, told)| told.what.clone());
        let Some(number) = clause.range().find(|&at| self.counted(at)) else { return };
        let value = self.node(number).number().filter(|n| !n.weak && !n.doubtful()).map(|n| n.value);
        let what = match (last, value) {
            (Some(What::Ph { .. }), Some(value)) if value <= 14.0 => What::Ph { value: round(value, 2) },
            (Some(What::Pressure { .. }), Some(value)) => What::Pressure { cm_water: round(value, 3) },
            _ => return,
        };
        let plain = |at: usize| at == number || self.node(at).when().is_some() || self.node(at).any(&READ_AGAIN);
        if (!clause.days.is_empty() || clause.has(Cue::Now)) && !clause.asks && clause.range().all(plain) {
            self.tell(number, Some(clause.day(number)), what);
            self.use_up([number]);
        }
    }

    /// "tank 27.5; pH 6.8; 11 cm": a clause of centimetres alone, among other readings.
    fn only_centimetres(&mut self, clause: &Clause) {
        const READINGS: Cues = Cues::of(&[Cue::Temp, Cue::TempLetter, Cue::Ph, Cue::Flame]);
        let pressed = |at: &usize| {
            let quantity = self.node(*at).quantity().filter(|q| !self.node(*at).used && !q.implied);
            quantity.filter(|q| matches!(q.unit, Some(UnitWord::Pressure(_)))).and_then(|q| q.in_base())
        };
        let Some((at, cm_water)) = clause.range().find_map(|at| Some((at, pressed(&at)?))) else { return };
        let alone = clause.range().all(|i| i == at || self.has(i, Cue::Chatter) || self.has(i, Cue::And));
        if alone && !clause.asks && self.anywhere(&READINGS) {
            self.tell(at, Some(clause.day(at)), What::Pressure { cm_water: round(cm_water, 3) });
            self.use_up([at]);
        }
    }

    fn temperatures(&mut self, clause: &Clause) {
        for at in clause.range() {
            let node = self.node(at);
            if node.used || clause.asks {
                continue;
            }
            let (value, fahrenheit, sure) = match node.kind {
                Kind::Quantity(quantity) if !quantity.implied => match (quantity.unit, quantity.amount()) {
                    (Some(UnitWord::Celsius), Some(value)) => (value, Some(false), true),
                    (Some(UnitWord::Fahrenheit), Some(value)) => (value, Some(true), true),
                    (Some(UnitWord::Degree), Some(value)) => (value, None, true),
                    _ => continue,
                },
                Kind::Number(number) if !number.weak && !number.doubtful() => (number.value, None, false),
                _ => continue,
            };
            let (temp, medium) = self.thermometer(clause, at);
            if !sure && !temp || !(-30.0..=212.0).contains(&value) {
                continue;
            }
            // What is counted or weighed is no temperature.
            let next = at + 1;
            let told = at > clause.from && self.node(at - 1).any(&Cues::of(&[Cue::Temp, Cue::TempLetter]));
            if !sure
                && !told
                && next < clause.to
                && (self.node(next).feed().is_some()
                    || self.has(next, Cue::People)
                    || self.node(next).meaning.unit.is_some())
            {
                continue;
            }
            let mut last = at;
            let mut fahrenheit = fahrenheit;
            if fahrenheit.is_none()
                && self
                    .row
                    .nodes
                    .get(next)
                    .is_some_and(|n| matches!(n.meaning.unit, Some(UnitWord::Celsius | UnitWord::Fahrenheit)))
            {
                fahrenheit = Some(matches!(self.node(next).meaning.unit, Some(UnitWord::Fahrenheit)));
                last = next;
            }
            let celsius = if fahrenheit.unwrap_or(value > 45.0) { (value - 32.0) / 1.8 } else { value };
            self.tell(at, Some(clause.day(at)), What::Temperature { celsius: round(celsius, 1), of: medium });
            self.use_up(at..=last);
            let words: Vec<usize> = clause
                .range()
                .filter(|&i| i.abs_diff(at) <= LINKS && self.node(i).any(&Cues::of(&[Cue::Temp, Cue::TempLetter])))
                .collect();
            self.use_up(words);
        }
    }

    /// Whether the number at `at` is a thermometer's, and of what.
    fn thermometer(&self, clause: &Clause, at: usize) -> (bool, Medium) {
        const IN_TANK: Cues = Cues::of(&[Cue::Tank, Cue::Slurry]);
        if let Some(medium) = self.one_of_a_pair(clause, at) {
            return (true, medium);
        }
        const THERMO: Cues = Cues::of(&[Cue::Temp, Cue::TempLetter]);
        let within = |cues: &Cues, reach: usize| {
            let from = at.saturating_sub(reach).max(clause.from);
            let to = (at + reach + 1).min(clause.to);
            // Not across another number.
            let before = (from..at).rev().take_while(|&i| !self.counted(i)).any(|i| self.speaks_of(i, cues));
            let after = (at + 1..to).take_while(|&i| !self.counted(i)).any(|i| self.speaks_of(i, cues));
            (before, after)
        };
        let (outside_before, outside_after) = within(&Cues::of(&[Cue::Outside]), 6);
        let (tank_before, _) = within(&IN_TANK, 4);
        let (temp_before, temp_after) = within(&THERMO, LINKS);
        let another = self.facts.iter().any(|(_, told)| matches!(told.what, What::Temperature { .. }));
        let of_air = outside_before || outside_after && !tank_before || self.of_the_weather(clause);
        let medium = if of_air { Medium::Air } else { Medium::Tank };
        if let Some(medium) = self.a_reading_alone(clause, at) {
            return (true, medium);
        }
        let carried = (another || self.only_a_number(clause))
            && (outside_before || tank_before || outside_after || self.only_a_number(clause));
        // "tank 23.5, ph 6.9, gauge 7 cm": among readings, what stands behind the tank is its temperature.
        let reading = at > clause.from
            && self.node(at - 1).any(&IN_TANK)
            && self.anywhere(&Cues::of(&[Cue::Ph, Cue::Gauge]))
            && self.node(at).number().is_some_and(|n| (5.0..=60.0).contains(&n.value));
        (temp_before || temp_after || carried || reading, medium)
    }

    /// "it is cold, 16 degrees": the weather, where no tank is named.
    fn of_the_weather(&self, clause: &Clause) -> bool {
        let sentence = self.sentence(clause);
        let weather =
            clause.has(Cue::Weather) || self.clause_before(clause).is_some_and(|before| before.has(Cue::Weather));
        weather && !(sentence.from..sentence.to).any(|at| self.speaks_of(at, &Cues::of(&[Cue::Tank, Cue::Slurry])))
    }

    /// "pH 6.4, tank 23, air 29": the tank or the air and a number alone, in a report of what was measured.
    fn a_reading_alone(&self, clause: &Clause, at: usize) -> Option<Medium> {
        const WHERE: Cues = Cues::of(&[Cue::Tank, Cue::Outside]);
        const LITTLE: Cues =
            Cues::of(&[Cue::Is, Cue::Colon, Cue::My, Cue::In, Cue::At, Cue::About, Cue::Only, Cue::Morning, Cue::Now]);
        const MEASURED: Cues = Cues::of(&[Cue::Gauge, Cue::Ph, Cue::Temp]);
        let value = self.node(at).number().filter(|n| !n.weak)?.value;
        let plain = |i: usize| {
            i == at || self.node(i).any(&WHERE) || self.node(i).any(&LITTLE) || self.node(i).when().is_some()
        };
        let named = clause.range().find(|&i| self.node(i).any(&WHERE))?;
        // "tank's reading 88 this afternoon": as warm as a tank is, and said to be so.
        let warm = (10.0..=45.0).contains(&value) || (60.0..=110.0).contains(&value);
        let said = warm && clause.has(Cue::Is) && clause.has(Cue::Tank);
        let report = self.anywhere(&MEASURED) && (5.0..=120.0).contains(&value);
        let reads = (report || said) && clause.range().all(plain);
        reads.then(|| if self.has(named, Cue::Outside) { Medium::Air } else { Medium::Tank })
    }

    /// "air 18 tank 26.5", "inside 31 outside 24": two numbers and nothing fed, each behind where it was read.
    fn one_of_a_pair(&self, clause: &Clause, at: usize) -> Option<Medium> {
        const NONE_OF_IT: Cues = Cues::of(&[Cue::Put, Cue::Cook, Cue::People, Cue::Water]);
        const OTHER: Cues = Cues::of(&[Cue::Gauge, Cue::Ph]);
        if !clause.has(Cue::Outside) || clause.any(&NONE_OF_IT) {
            return None;
        }
        let of_another = |i: usize| i > clause.from && self.node(i - 1).any(&OTHER);
        let numbers = clause.range().filter(|&i| self.counted(i) && !of_another(i)).count();
        if numbers != 2 || clause.range().any(|i| self.node(i).feed().is_some()) {
            return None;
        }
        let behind = at.checked_sub(1).filter(|&i| i >= clause.from && !self.counted(i));
        const WHERE: Cues = Cues::of(&[Cue::Outside, Cue::Tank, Cue::In]);
        // "17 outside and 20 in the tank", "it's 40 outside and the tank is 61": where nothing stands before, what stands at once after.
        let before = (clause.from..at).rev().take_while(|&i| !self.counted(i)).find(|&i| self.speaks_of(i, &WHERE));
        let after = (at + 1..clause.to.min(at + 2)).find(|&i| self.speaks_of(i, &WHERE));
        let first = clause.range().find(|&i| self.counted(i)).unwrap_or(at);
        let led = (clause.from..first).any(|i| self.speaks_of(i, &WHERE));
        let named = if led { before.or(after) } else { after.or(before) };
        let outside = self.speaks_of(named.or(behind)?, &Cues::of(&[Cue::Outside]));
        Some(if outside { Medium::Air } else { Medium::Tank })
    }

    /// "temp yesterday 24, today 26": a day and a number, right after what was measured.
    fn only_a_number(&self, clause: &Clause) -> bool {
        const BESIDE: Cues =
            Cues::of(&[Cue::Is, Cue::Was, Cue::Now, Cue::And, Cue::Chatter, Cue::Morning, Cue::In, Cue::Tank]);
        let before = self.clause_before(clause);
        let measured = |told: &What| matches!(told, What::Temperature { .. });
        let told = before.is_some_and(|before| {
            self.facts.iter().any(|(at, told)| before.range().contains(at) && measured(&told.what))
        });
        // "took the temp, 68"
        let asked = |before: &Clause| before.has(Cue::Temp) && !before.range().any(|at| self.counted(at));
        (told || before.is_some_and(asked))
            && clause.range().all(|at| {
                let node = self.node(at);
                node.number().is_some() || node.when().is_some() || node.kind == Kind::Phrase && node.any(&BESIDE)
            })
    }

    fn counted(&self, at: usize) -> bool {
        self.node(at).number().is_some_and(|n| !n.weak)
            || self.node(at).quantity().is_some_and(|q| !q.implied && q.number.is_some())
    }
}

pub fn round(value: f64, places: i32) -> f64 {
    let by = 10_f64.powi(places);
    (value * by).round() / by
}
