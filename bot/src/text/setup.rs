//! What a household tells of itself once: tank, gas store, walls, people, place, measures, when it started.

use super::clauses::Clause;
use super::measured::round;
use super::nodes::{Kind, Quantity, When};
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::About;
use super::wordlist::Side;
use bellyful_core::fact::{Measure, Walls, What};

/// Words that only lead from one part of a clause to the next.
const JOINTS: Cues = Cues::of(&[
    Cue::Is,
    Cue::Was,
    Cue::Of,
    Cue::In,
    Cue::Holds,
    Cue::My,
    Cue::About,
    Cue::Modifier,
    Cue::Sized,
    Cue::Other,
    Cue::Colon,
    Cue::Only,
    Cue::With,
    Cue::Now,
    Cue::Chatter,
    Cue::NewTank,
    Cue::To,
    Cue::Buried,
    Cue::Insulated,
    Cue::Painted,
]);

impl Reader<'_> {
    pub fn set_up(&mut self, clause: &Clause) {
        self.people(clause);
        self.place(clause);
        if clause.plan || (clause.asks && !clause.has(Cue::Holds)) {
            return;
        }
        self.vessels(clause);
        self.place_of_the_tank(clause);
        self.measures(clause);
        self.in_litres_too(clause);
        self.walls(clause);
        self.started(clause);
    }

    fn litres(quantity: Quantity) -> Option<f64> {
        if quantity.implied || !matches!(quantity.unit, Some(UnitWord::Volume(_))) || quantity.sized.is_some() {
            return None;
        }
        let number = quantity.number.filter(|number| !number.doubtful())?;
        let by = quantity.in_base()? / number.value.max(1e-9);
        let litres = number.value * by;
        // A tank of 1.5 litres is one of 1500 written the other way.
        Some(match number.other {
            Some(other) if litres < 20.0 && other * by >= 20.0 => other * by,
            _ => litres,
        })
    }

    /// "tank is 1000 L", "1000 L tank", "gas bag 500 litres".
    fn vessels(&mut self, clause: &Clause) {
        const DOINGS: Cues = Cues::of(&[Cue::Put, Cue::Fell, Cue::Remove, Cue::Seed]);
        for at in clause.range() {
            let Some(litres) = self.node(at).quantity().and_then(Self::litres) else { continue };
            if self.node(at).used || litres < 20.0 {
                continue;
            }
            let reach = |found: &dyn Fn(usize) -> bool| {
                let before =
                    (clause.from..at).rev().take(7).take_while(|&i| found(i) || self.joins(i)).find(|&i| found(i));
                let mut after = (at + 1..clause.to)
                    .take(4)
                    .take_while(|&i| {
                        found(i)
                            || self.node(i).any(&Cues::of(&[
                                Cue::Of,
                                Cue::Sized,
                                Cue::Modifier,
                                Cue::Is,
                                Cue::My,
                                Cue::Other,
                            ]))
                    })
                    .find(|&i| found(i));
                // "2000 L tank we put 60 kg dung": what goes in is told after the tank.
                let done = clause.range().find(|&i| self.node(i).any(&DOINGS));
                if done.is_some_and(|done| after.is_none_or(|after| done < after || after > at + 1)) {
                    after = None;
                }
                before.or(after)
            };
            let tank = reach(&|i| self.node(i).any(&Cues::of(&[Cue::Tank, Cue::NewTank])) && !self.has(i, Cue::GasBag));
            let store = reach(&|i| self.node(i).has(Cue::GasBag));
            let thing_next =
                // "tank 1000 litres, put dung": what goes in is told after the doing.
                (at + 1..clause.to.min(at + 3))
                    .take_while(|&i| !self.has(i, Cue::Put))
                    .any(|i| self.node(i).feed().is_some() || self.has(i, Cue::Water));
            let behind = self.row.lexicon.habits.part == Side::After;
            let inside = |tank: usize| tank > 0 && self.has(tank - 1, Cue::In) || behind && self.has(tank + 1, Cue::In);
            let in_tank = tank.is_some_and(|tank| inside(tank) && clause.any(&DOINGS));
            // "tank 3000 L and gas bag 800 L": a size stands with what is named before it.
            let store = store.filter(|&store| store < at || tank.is_none_or(|tank| tank > at));
            if let Some(store) = store.filter(|_| !thing_next) {
                self.tell(at, None, What::Store { litres: round(litres, 2) });
                self.use_up([at, store]);
            } else if let Some(tank) = tank.filter(|_| !thing_next && !in_tank) {
                self.tell(at, None, What::Tank { litres: round(litres, 2) });
                self.use_up([at, tank]);
            } else if !thing_next && store.is_none() && (self.is_its_size(clause, at) || self.cubic_alone(clause, at)) {
                self.tell(at, None, What::Tank { litres: round(litres, 2) });
                self.use_up([at]);
            }
        }
    }

    /// "digester is buried, 6 m3": so many cubic metres are a tank's, where a tank was spoken of.
    fn cubic_alone(&self, clause: &Clause, at: usize) -> bool {
        let cubic = self.node(at).quantity().is_some_and(|q| q.unit == Some(UnitWord::Volume(1000.0)));
        let tank = self.sentence(clause).cues.any(&Cues::of(&[Cue::Tank, Cue::NewTank]));
        cubic && tank && clause.range().all(|i| i == at || self.joins(i))
    }

    /// "gas bag 800 ltr ka aur tanki 1600 ki", "balti 20 litre, tasla 10 ka": after one that was told in litres, a bare
    /// number right behind a vessel is of litres too.
    fn in_litres_too(&mut self, clause: &Clause) {
        let sentence = self.sentence(clause).from;
        let told = |(at, told): &(usize, super::reading::Told)| {
            let vessel = matches!(told.what, What::Tank { .. } | What::Store { .. } | What::Measure { .. });
            (sentence <= *at && *at < clause.to && vessel).then_some(*at)
        };
        let Some(first) = self.facts.iter().find_map(told) else { return };
        for at in clause.range().filter(|&at| at > first.max(clause.from)) {
            let number = self.node(at).number().filter(|n| !n.weak && !n.fraction && !n.doubtful() && n.value > 0.0);
            let Some(litres) = number.map(|n| n.value).filter(|_| !self.node(at).used) else { continue };
            let ends = at + 1 == clause.to || {
                let next = self.node(at + 1);
                next.meaning.unit.is_none()
                    && next.any(&Cues::of(&[Cue::Of, Cue::Is, Cue::Holds, Cue::Sized, Cue::And]))
            };
            let big = litres >= 20.0;
            // "el balde es de 12 litros y la palangana de 30"
            let of = at >= clause.from + 2 && self.has(at - 1, Cue::Of) && self.node(at - 1).meaning.unit.is_none();
            let vessel = if of { at - 2 } else { at - 1 };
            let what = match self.implied_measure(vessel) {
                Some(unit) => What::Measure { unit, litres: round(litres, 4) },
                None if self.has(vessel, Cue::GasBag) && big => What::Store { litres: round(litres, 2) },
                None if self.has(vessel, Cue::Tank) && big => What::Tank { litres: round(litres, 2) },
                None => continue,
            };
            if ends {
                self.tell(at, None, what);
                self.use_up([vessel, at]);
            }
        }
    }

    /// "started the tank with 80 kg dung and it is 1200 litres": what was named before is so big.
    fn is_its_size(&self, clause: &Clause, at: usize) -> bool {
        const SIZE: Cues = Cues::of(&[Cue::Is, Cue::Holds]);
        const LITTLE: Cues = Cues::of(&[Cue::Of, Cue::About, Cue::Other, Cue::My, Cue::Chatter]);
        let little = |i: &usize| self.node(*i).any(&LITTLE) && !self.row.is_long(self.node(*i));
        let before = (clause.from..at).rev().find(|i| self.node(*i).any(&SIZE) || !little(i));
        let is = before.filter(|&i| self.node(i).any(&SIZE)).or_else(|| {
            let after = (at + 1..clause.to).find(|i| self.node(*i).any(&SIZE) || !little(i));
            after.filter(|&i| self.node(i).any(&SIZE))
        });
        let joined = is.is_some_and(|is| {
            (clause.from..is.min(at)).rev().take(3).any(|i| self.has(i, Cue::And) && self.node(i).kind == Kind::Phrase)
        });
        // "tangi limefukiwa ardhini, ni la lita 3000"
        let goes_on = is.is_some()
            && clause.range().all(|i| i == at || self.node(i).any(&SIZE) || little(&i))
            && self.clause_before(clause).is_some_and(|before| {
                before.has(Cue::Tank) && !before.has(Cue::GasBag) && !before.any(&Cues::of(&[Cue::Put, Cue::Remove]))
            });
        goes_on
            || self.only_litres(clause, at)
            || joined
                && clause.any(&Cues::of(&[Cue::Tank, Cue::NewTank]))
                && !clause.any(&Cues::of(&[Cue::Fell, Cue::Remove]))
    }

    /// "the tank is outside, it is white, 1500 L": so much and no more, where only the tank was spoken of.
    fn only_litres(&self, clause: &Clause, at: usize) -> bool {
        const LEAST: f64 = 200.0;
        const OTHER: Cues = Cues::of(&[Cue::Put, Cue::Remove, Cue::Seed, Cue::Fell, Cue::Water, Cue::GasBag]);
        let large = self.node(at).quantity().and_then(Self::litres).is_some_and(|litres| litres >= LEAST);
        large
            && clause.range().all(|i| i == at || self.has(i, Cue::Chatter))
            && self.anywhere(&Cues::of(&[Cue::Tank]))
            && !self.anywhere(&OTHER)
            && !self.facts.iter().any(|(_, told)| matches!(told.what, What::Tank { .. }))
            && self.row.nodes.iter().all(|node| node.feed().is_none())
    }

    fn joins(&self, at: usize) -> bool {
        let node = self.node(at);
        let implied = node.quantity().is_some_and(|q| q.implied && q.unit.is_none());
        (node.kind == Kind::Phrase && node.any(&JOINTS)
            || implied
            || node.number().is_some_and(|n| n.weak)
            || node.unknown())
            && node.feed().is_none()
            && !node.has(Cue::Water)
    }

    /// "my bucket is 15 litres", "balti 18 litre ki".
    fn measures(&mut self, clause: &Clause) {
        const TELLS: Cues = Cues::of(&[Cue::Holds, Cue::My, Cue::Is, Cue::Colon]);
        let mut start = clause.from;
        for at in clause.range() {
            let node = self.node(at);
            let Some(litres) = node.quantity().filter(|_| !node.used) else { continue };
            let thing = |i: usize| self.node(i).feed().is_some() || self.has(i, Cue::Water) || self.has(i, Cue::Put);
            // A sized measure with nothing in it is its size told: "hamari 14 litre wali balti hai".
            if let Some((unit, one)) = litres.sized {
                // "2 buckets of 20 litres" is how much, not how big.
                if litres.amount() != Some(one) || self.follows_a_food(clause) {
                    continue;
                }
                let told = clause.any(&TELLS) || clause.range().all(|i| i == at || self.joins(i));
                if told && !clause.range().any(thing) && !clause.has(Cue::Put) {
                    let Some(amount) = litres.amount() else { continue };
                    // "I use a 55 gal drum as digester"
                    let what = if clause.has(Cue::Tank) && amount >= 50.0 {
                        What::Tank { litres: round(amount, 4) }
                    } else {
                        What::Measure { unit, litres: round(amount, 4) }
                    };
                    self.tell(at, None, what);
                    self.use_up([at]);
                }
                continue;
            }
            let weighed = matches!(litres.unit, Some(UnitWord::Mass(_))) && !litres.implied;
            let held = at > clause.from && self.implied_measure(at - 1).is_some() && self.has(at + 1, Cue::Of);
            if weighed && held && !clause.any(&Cues::of(&[Cue::Put, Cue::Fell])) && at + 2 >= clause.to {
                // "tasla 8 kilo ka": how much it holds by weight says no litres.
                self.use_up([at - 1, at]);
                continue;
            }
            let Some(amount) = Self::litres(litres) else { continue };
            let found = (clause.from..at)
                .rev()
                .take(8)
                .take_while(|&i| self.joins(i) || self.implied_measure(i).is_some() || self.holder(i))
                .find(|&i| self.implied_measure(i).is_some());
            let Some(measure) = found else { continue };
            let between = measure + 1..at;
            let tells = clause.any(&TELLS) || between.is_empty();
            let used_for_feed = (at + 1..clause.to.min(at + 4)).any(thing)
                || (start..measure).any(thing) && !self.holder_before(clause, measure);
            if tells && !used_for_feed {
                let unit = self.implied_measure(measure).expect("found as one");
                // "drum 500 litre ka gas ke liye": what the gas is kept in.
                let store = (clause.has(Cue::Gas) || unit == Measure::Bag) && amount >= 100.0;
                let litres = round(amount, 4);
                self.tell(at, None, if store { What::Store { litres } } else { What::Measure { unit, litres } });
                self.use_up(measure..=at);
                start = at + 1;
            }
        }
    }

    /// "swill, a 20 litre can": how much of it there was.
    fn follows_a_food(&self, clause: &Clause) -> bool {
        let before = self.clause_before(clause);
        let food = |at: usize| self.node(at).feed().is_some();
        before.is_some_and(|before| {
            before.range().any(food) && before.range().all(|at| food(at) || self.joins(at) || self.has(at, Cue::Put))
        })
    }

    /// "the cup I use holds": use is no feeding.
    fn holder(&self, at: usize) -> bool {
        self.has(at, Cue::Holds) || self.has(at, Cue::Put) || self.has(at, Cue::WeAre)
    }
    fn holder_before(&self, clause: &Clause, measure: usize) -> bool {
        (clause.from..measure).all(|i| self.joins(i) || self.holder(i))
    }

    fn implied_measure(&self, at: usize) -> Option<Measure> {
        let node = self.node(at);
        let quantity = node.quantity().filter(|q| !node.used && q.number.is_none_or(|n| n.value == 1.0))?;
        if let Some(UnitWord::Of(measure)) = quantity.unit { Some(measure) } else { None }
    }

    fn walls(&mut self, clause: &Clause) {
        let about = clause.any(&Cues::of(&[Cue::Tank, Cue::Painted, Cue::NewTank]));
        for (cue, look, alone) in [
            (Cue::Insulated, Walls::Insulated, true),
            (Cue::Greenhouse, Walls::Greenhouse, true),
            (Cue::Heated, Walls::Heated, false),
            (Cue::Buried, Walls::Buried, false),
            (Cue::Black, Walls::Black, false),
            (Cue::White, Walls::White, false),
        ] {
            let said =
                |&at: &usize| self.has(at, cue) || self.has(at, Cue::Painted) && self.speaks_of(at, &Cues::of(&[cue]));
            let Some(at) = clause.range().find(said) else { continue };
            let other = clause.any(&Cues::of(&[Cue::Smell, Cue::Flame, Cue::FireWord, Cue::Slurry]));
            // "it is buried up to the neck": of what else would this text speak?
            let little = Cues::of(&[Cue::Is, Cue::In, Cue::To, Cue::Of, Cue::Buried, Cue::Chatter]);
            let itself = cue == Cue::Buried && clause.has(Cue::Is) && clause.range().all(|i| self.node(i).any(&little));
            let bare = clause.range().all(|i| i == at || self.node(i).any(&little))
                && self.clause_before(clause).is_some_and(|before| {
                    let tank = |told: &What| matches!(told, What::Tank { .. });
                    self.facts.iter().any(|(i, told)| before.range().contains(i) && tank(&told.what))
                });
            // "the tank is outside, it is white"
            let colour = Cues::of(&[Cue::Is, Cue::Chatter, Cue::Black, Cue::White]);
            let of_the_tank = clause.has(Cue::Is)
                && clause.range().all(|i| self.node(i).any(&colour))
                && self.clause_before(clause).is_some_and(|before| before.has(Cue::Tank));
            let of_it = alone || about || itself || bare || of_the_tank;
            if of_it && !other && !self.denied(clause, at) && !self.node(at).used {
                self.tell(at, None, What::Walls { look });
                self.use_up([at]);
            }
        }
    }

    fn people(&mut self, clause: &Clause) {
        self.people_in_all(clause);
        self.me_and_mine(clause);
        for at in clause.range() {
            let node = self.node(at);
            let Some(number) = node
                .number()
                .filter(|n| !node.used && !n.fraction && n.value >= 1.0 && n.value <= 500.0 && n.value.fract() == 0.0)
            else {
                continue;
            };
            let people_next = (at + 1..clause.to.min(at + 3))
                .find(|&i| self.has(i, Cue::People) || i == at + 1 && self.has(i, Cue::PeopleAre))
                .filter(|&i| i == at + 1 || !self.counts(at + 1))
                // "2 personnes sont venues": what they did, and not who lives here.
                // Where the verb comes last, "9 log hain" tells that they are.
                .filter(|&i| {
                    let verb_last = self.row.lexicon.habits.negation == Side::After;
                    verb_last || clause.has(Cue::Indoors) || i + 1 >= clause.to || !self.has(i + 1, Cue::Is)
                });
            let people_back = (clause.from..at)
                .rev()
                .take(3)
                .take_while(|&i| {
                    self.joins(i)
                        || self.node(i).any(&Cues::of(&[Cue::People, Cue::PeopleAre, Cue::Indoors, Cue::WeAre]))
                })
                .find(|&i| self.node(i).any(&Cues::of(&[Cue::PeopleAre, Cue::People])));
            let unit_next =
                at + 1 < clause.to && (self.node(at + 1).meaning.unit.is_some() || self.node(at + 1).feed().is_some());
            // "on vit à 3 km de la ville"
            let far = |word: &usize| {
                let ends = at + 1 == clause.to || self.node(at + 1).any(&Cues::of(&[Cue::In, Cue::Chatter, Cue::And]));
                !self.has(*word, Cue::LiveIn) || ends
            };
            let people_back = people_back.filter(far);
            let found = people_next.filter(|_| !number.weak).or(people_back.filter(|_| !number.weak && !unit_next));
            // "do aadmi tanki dekhne aaye": not those who live here.
            const OURS: Cues = Cues::of(&[Cue::PeopleAre, Cue::Indoors, Cue::My, Cue::WeAre]);
            let strangers = |word: usize| self.has(word, Cue::Folk) && !clause.any(&OURS) && clause.has(Cue::Tank);
            // "3 logo ka khana": whose it was.
            let of_food = |word: usize| {
                self.row.lexicon.habits.part == Side::After
                    && self.has(word, Cue::People)
                    && self.has(word + 1, Cue::Of)
                    && self.row.nodes.get(word + 2).is_some_and(|node| node.feed().is_some())
            };
            if let Some(word) = found.filter(|&word| !strangers(word) && !of_food(word)) {
                let count = number.value as u32 + self.more_people(clause, word.max(at));
                self.tell(at, None, What::People { count });
                self.use_up([at, word]);
                return;
            }
        }
    }

    /// "six of us plus grandmother, so 7": a clause of a number alone, right after who lives there, is all of them.
    fn people_in_all(&mut self, clause: &Clause) {
        let number = |at: &usize| self.node(*at).number().filter(|n| !n.weak && n.value.fract() == 0.0);
        let Some((at, number)) = clause.range().find_map(|at| Some((at, number(&at)?))) else { return };
        let plain = |i: usize| i == at || self.node(i).any(&Cues::of(&[Cue::Chatter, Cue::People, Cue::Only, Cue::Is]));
        let before = self.clause_before(clause).map_or(0..0, Clause::range);
        if clause.asks || !clause.range().all(plain) {
            return;
        }
        let told = self.facts.iter_mut().rev().take(3).find_map(|(at, told)| match &mut told.what {
            What::People { count } if before.contains(at) => Some(count),
            _ => None,
        });
        if let Some(count) = told.filter(|count| f64::from(**count) < number.value) {
            *count = number.value as u32;
            self.use_up([at]);
        }
    }

    /// "3 adults and 4 children": those counted after the ones at `word`. "6 people and 2 of them kids" counts none twice.
    fn more_people(&self, clause: &Clause, word: usize) -> u32 {
        const FOLK: Cues = Cues::of(&[Cue::People, Cue::Folk]);
        let (mut more, mut at) = (0, word + 1);
        while at + 1 < clause.to && self.has(at, Cue::And) && self.node(at).kind == Kind::Phrase {
            // "wakubwa 3 na watoto 4": where numbers follow what they count.
            let behind = (at + 2 < clause.to)
                .then(|| self.node(at + 2).number())
                .flatten()
                .filter(|n| !n.weak && n.value.fract() == 0.0);
            if let Some(count) = behind.filter(|_| self.node(at + 1).any(&FOLK) && !self.counts(at + 1)) {
                more += count.value as u32;
                at += 3;
                continue;
            }
            // "4 of us plus grandma"
            let one = at + 1 + usize::from(self.has(at + 1, Cue::My));
            if one < clause.to && self.has(one, Cue::Folk) && !self.has(one, Cue::People) {
                more += 1;
                at = one + 1;
                continue;
            }
            let count = self.row.nodes.get(at + 1).and_then(|node| node.number());
            let next =
                (at + 2..clause.to.min(at + 4)).find(|&i| self.node(i).any(&FOLK) || !self.has(i, Cue::Modifier));
            let (Some(count), Some(folk)) = (count.filter(|n| n.value.fract() == 0.0), next) else { break };
            if !self.node(folk).any(&FOLK) || self.has(folk, Cue::Of) {
                break;
            }
            more += count.value as u32;
            at = folk + 1;
        }
        more
    }

    /// "just me and my two sons": a text of nothing but who lives there, told by one of them.
    fn me_and_mine(&mut self, clause: &Clause) {
        const LITTLE: Cues = Cues::of(&[
            Cue::And,
            Cue::With,
            Cue::My,
            Cue::Only,
            Cue::Chatter,
            Cue::Is,
            Cue::WeAre,
            Cue::PeopleAre,
            Cue::In,
            Cue::Indoors,
            Cue::Modifier,
            Cue::Colon,
        ]);
        let counted = |at: usize| at > 0 && self.node(at - 1).number().is_some();
        let folk = |at: usize| self.has(at, Cue::Folk) || self.has(at, Cue::People) && counted(at);
        let plain = |at: usize| {
            let node = self.node(at);
            node.number().is_some_and(|n| n.value.fract() == 0.0) || node.any(&LITTLE.and(Cue::People)) || folk(at)
        };
        let sentence = self.sentence(clause);
        let all = sentence.from..sentence.to;
        let me = all.clone().find(|&at| self.has(at, Cue::Myself));
        let said = all.clone().filter(|&at| folk(at) && !self.has(at, Cue::Myself) && self.node(at).feed().is_none());
        let said: Vec<usize> = said.collect();
        let whole = all.clone().all(|at| plain(at) || self.node(at).mark().is_some());
        let told = self.facts.iter().any(|(_, told)| matches!(told.what, What::People { .. }));
        // "only me at home"
        let alone = said.is_empty() && all.clone().any(|at| self.has(at, Cue::Only));
        let alone = alone && all.clone().any(|at| self.node(at).any(&Cues::of(&[Cue::People, Cue::Indoors])));
        let (Some(me), false) = (me, said.is_empty() && !alone || told || !whole) else { return };
        let count = |at: usize| {
            let number = (all.start..at).rev().take(2).find_map(|i| self.node(i).number());
            number.map_or(1, |number| number.value as u32)
        };
        // "we are four, me, my wife and two children": how many in all is told first.
        let whole = (all.start..me).find_map(|at| self.node(at).number().filter(|n| !n.weak));
        let whole =
            whole.filter(|_| (all.start..me).any(|at| self.node(at).any(&Cues::of(&[Cue::WeAre, Cue::PeopleAre]))));
        let count = whole.map_or_else(|| 1 + said.iter().map(|&at| count(at)).sum::<u32>(), |whole| whole.value as u32);
        self.tell(me, None, What::People { count });
        self.use_up(all);
    }

    fn counts(&self, at: usize) -> bool {
        self.node(at).feed().is_some() || self.node(at).meaning.unit.is_some()
    }

    /// "the tank is 3 months old", "1000 litre ki tanki, 3 mahine purani": a clause of its age and nothing else.
    fn aged(&mut self, clause: &Clause) {
        const TANK: Cues = Cues::of(&[Cue::Tank, Cue::NewTank]);
        /// Without a word for age, a shorter time is rather how long something has been so.
        const LONG: i32 = 14;
        let before = |clause: &Clause| self.clause_before(clause).is_some_and(|before| before.any(&TANK));
        let word = clause.has(Cue::Aged);
        if !clause.any(&TANK) && !(word && before(clause)) {
            return;
        }
        let span = |at: &usize| match self.node(*at).when() {
            Some(When::Span(days)) if word || days >= LONG => Some((*at, days)),
            _ => None,
        };
        let Some((at, days)) = clause.range().find_map(|at| span(&at)) else { return };
        let plain = |i: usize| {
            let node = self.node(i);
            node.used
                || i == at
                || node.any(&TANK.and(Cue::Aged))
                || self.joins(i) && !node.unknown() && !node.any(&Cues::of(&[Cue::With, Cue::Only]))
        };
        if clause.range().all(plain) {
            self.tell(at, Some(-days), What::Started);
            self.use_up([at]);
        }
    }

    /// "started 3 weeks ago", "filled first in January".
    fn started(&mut self, clause: &Clause) {
        if clause.asks {
            return;
        }
        if !clause.any(&Cues::of(&[Cue::Start, Cue::NewTank])) {
            self.aged(clause);
            return;
        }
        let portion = clause.range().any(|at| {
            let node = self.node(at);
            !node.used
                && (node.feed().is_some()
                    || node
                        .quantity()
                        .is_some_and(|q| !q.implied && !matches!(q.unit, Some(UnitWord::Days(_) | UnitWord::Time(_)))))
        });
        if portion || !clause.has(Cue::Start) && !clause.has(Cue::NewTank) {
            return;
        }
        for at in clause.range() {
            let day = match self.node(at).when() {
                Some(When::Ago(days) | When::Span(days) | When::Since(days)) => -days,
                Some(When::Day(day)) if clause.has(Cue::Start) => day,
                Some(When::EitherWay(days)) if clause.has(Cue::Start) && clause.days.contains(&(at, -days)) => -days,
                _ => continue,
            };
            if let Some(vague) = self.node(at).quantity().filter(|q| q.number.is_none()) {
                let _ = vague;
                self.doubt(About::Day, at, at + 1);
                return;
            }
            self.tell(at, Some(day), What::Started);
            self.use_up([at]);
            return;
        }
    }
}
