//! Signs: what people see, smell and feel at a digester, dangers among them.
//!
//! A sign is listed whole ("overflowing"), or made of a thing and what is said of it in the same clause ("outlet" and
//! "blocked"). Denied signs are none; what may be is none.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{CONTROLS, Cue, Cues, UnitWord};
use super::reader::Reader;
use super::reading::{About, Control};
use bellyful_core::fact::{Measure, Sign};
use bellyful_core::feeds::Feed;

/// A thing, what is said of it, and the sign they make when they stand at most so far apart.
const PAIRS: &[(&[Cue], &[Cue], Sign, usize)] = &[
    (&[Cue::Outlet], &[Cue::Blocked], Sign::OutletBlocked, 6),
    (&[Cue::Inlet], &[Cue::Blocked], Sign::InletBlocked, 6),
    (&[Cue::Pipe, Cue::Gas], &[Cue::Blocked], Sign::GasLineBlocked, 6),
    (&[Cue::Level], &[Cue::Drop], Sign::LevelDrop, 5),
    (&[Cue::Slurry, Cue::Tank, Cue::Outlet], &[Cue::Thick], Sign::ThickSlurry, 6),
    (&[Cue::Slurry, Cue::Tank, Cue::Outlet], &[Cue::Watery], Sign::WaterySlurry, 7),
    (&[Cue::Slurry, Cue::Water, Cue::Outlet, Cue::Tank, Cue::Fertilizer], &[Cue::Green], Sign::GreenLiquid, 6),
    (&[Cue::Tank, Cue::Slurry], &[Cue::Cracked, Cue::Torn], Sign::TankCracked, 6),
    (&[Cue::GasBag, Cue::Bag], &[Cue::Torn, Cue::Cracked], Sign::BagTorn, 6),
    (&[Cue::BurnThing, Cue::Pipe, Cue::GasBag, Cue::Bag, Cue::Indoors, Cue::Tank], &[Cue::Burning], Sign::Fire, 5),
    (&[Cue::Gas], &[Cue::Escape], Sign::GasLeak, 6),
    (&[Cue::Gas, Cue::Pipe, Cue::GasBag, Cue::Stove, Cue::Bag, Cue::Tank], &[Cue::Hiss], Sign::GasLeak, 7),
];

const LEAKY: Cues = Cues::of(&[Cue::Gas, Cue::Pipe, Cue::GasBag, Cue::Bag, Cue::Stove]);
const WET: Cues = Cues::of(&[Cue::Tank, Cue::Slurry, Cue::Water]);

impl Reader<'_> {
    pub fn signs(&mut self, clause: &Clause) {
        if self.only_supposed(clause) || clause.has(Cue::AskDigestate) {
            return;
        }
        self.listed_signs(clause);
        self.smells(clause);
        self.leaks(clause);
        self.made_signs(clause);
        self.water_in_line(clause);
        self.too_wet(clause);
        self.oddities(clause);
    }

    /// "FIRE!!", "help fire in kitchen": a text of nothing else is a cry, not a word about the flame.
    pub fn cry_of_fire(&mut self) {
        let beside = Cues::of(&[
            Cue::FireWord,
            Cue::Burning,
            Cue::In,
            Cue::Of,
            Cue::At,
            Cue::My,
            Cue::Indoors,
            Cue::Tank,
            Cue::GasBag,
            Cue::BurnThing,
            Cue::Now,
            Cue::Person,
        ]);
        let nodes = &self.row.nodes;
        let Some(fire) = nodes.iter().position(|node| node.has(Cue::FireWord) && !node.used) else { return };
        let cry = nodes.iter().all(|node| match node.kind {
            Kind::Phrase => {
                let help = |control: u8| CONTROLS[usize::from(control)].1 == Control::Help;
                let says_how = node.meaning.level.is_some() || node.has(Cue::Chatter) && !node.any(&beside);
                (node.any(&beside) || node.meaning.control.is_some_and(help)) && !says_how
            }
            Kind::Mark(_) => true,
            _ => false,
        });
        if cry && !self.clauses.iter().any(|clause| clause.asks || clause.plan || self.denied(clause, fire)) {
            self.tell_sign(fire, 0, Sign::Fire);
            self.use_up([fire]);
        }
    }

    /// "if it smells of gas": nothing is told. A word that is "yes" as well as "if" supposes nothing at the start.
    fn only_supposed(&self, clause: &Clause) -> bool {
        clause.range().any(|at| {
            let node = self.node(at);
            let supposes = node.kind == Kind::Phrase && (node.has(Cue::If) || node.has(Cue::Hypothetical));
            supposes && !(at == clause.from && node.meaning.control.is_some())
        })
    }

    /// A sign's day: on its day when told as past, else today's unless its clause is dated.
    fn sign_day(&self, clause: &Clause, at: usize) -> i32 {
        clause.day(at)
    }

    fn listed_signs(&mut self, clause: &Clause) {
        for at in clause.range() {
            let node = *self.node(at);
            let Some(sign) = node.meaning.sign.filter(|_| !node.used && node.kind == Kind::Phrase) else { continue };
            let beast_is_ill = sign == Sign::Unwell && self.of_beast(clause, at);
            if self.denied(clause, at) || !sign.is_danger() && self.is_over(clause, at) || beast_is_ill {
                self.use_up([at]);
                continue;
            }
            // Worms put in as food, foam of soap: a measured thing is no sign.
            let measured =
                at > clause.from && self.node(at - 1).quantity().is_some_and(|q| !q.implied && q.unit.is_some());
            if measured && node.meaning.feed.is_some() {
                continue;
            }
            let sign = match sign {
                Sign::EggSmell if clause.has(Cue::Indoors) && !clause.has(Cue::Outlet) => Sign::GasLeak,
                Sign::GasLeak if clause.has(Cue::OutletUsual) => continue,
                other => other,
            };
            self.tell_sign(at, self.sign_day(clause, at), sign);
            self.use_up([at]);
        }
    }

    /// "the smell is gone": it was, and is no more. Of a danger that is not enough: it is told all the same.
    fn is_over(&self, clause: &Clause, at: usize) -> bool {
        (at + 1..clause.to.min(at + 6)).any(|i| self.has(i, Cue::Over))
    }

    /// "the cow fell sick": no person is, and no gas is spoken of.
    fn of_beast(&self, clause: &Clause, at: usize) -> bool {
        const BEASTS: Cues = Cues::of(&[Cue::Cow, Cue::Pig, Cue::Chicken, Cue::Goat, Cue::Horse]);
        let gas = self.anywhere(&Cues::of(&[Cue::Gas, Cue::Smell, Cue::Leak, Cue::Hiss, Cue::FireWord]));
        let near = (at.saturating_sub(4).max(clause.from)..(at + 5).min(clause.to)).any(|i| self.node(i).any(&BEASTS));
        near && !gas
    }

    fn smells(&mut self, clause: &Clause) {
        for at in clause.range() {
            if !self.free(at, Cue::Smell) {
                continue;
            }
            if self.denied(clause, at) {
                self.use_up(self.smell_words(clause, at));
                continue;
            }
            let kind = self.smell_kind(clause, at);
            if !matches!(kind, Some((_, Sign::GasLeak))) && self.is_over(clause, at) {
                self.use_up(self.smell_words(clause, at));
                continue;
            }
            let day = self.sign_day(clause, at);
            let words = self.smell_words(clause, at);
            match kind {
                Some((what, Sign::GasLeak)) => {
                    if !clause.has(Cue::OutletUsual)
                        && !(clause.has(Cue::Outlet) && !clause.has(Cue::Indoors))
                        && !self.denied(clause, what)
                    {
                        self.tell_sign(at, day, Sign::GasLeak);
                    }
                    self.use_up([what]);
                }
                Some((what, sign)) => {
                    if !self.denied(clause, what) {
                        self.tell_sign(at, day, sign);
                    }
                    self.use_up([what]);
                }
                None if clause.asks && !clause.has(Cue::Why) => {}
                // "the food smells good"
                None if self.smells_good(clause, at) => self.use_up(clause.range()),
                None => self.tell_sign(at, day, Sign::BadSmell),
            }
            self.use_up(words);
        }
    }

    fn smells_good(&self, clause: &Clause, at: usize) -> bool {
        (at.saturating_sub(2).max(clause.from)..(at + 3).min(clause.to))
            .any(|i| self.node(i).meaning.level == Some(bellyful_core::fact::GasLevel::Good))
    }

    fn smell_words(&self, clause: &Clause, at: usize) -> Vec<usize> {
        clause
            .range()
            .filter(|&i| i.abs_diff(at) <= 2 && self.node(i).any(&Cues::of(&[Cue::Smell, Cue::Stink])))
            .collect()
    }

    /// What a smell is of: the nearest word that says so.
    fn smell_kind(&self, clause: &Clause, at: usize) -> Option<(usize, Sign)> {
        let egg = |i: usize| {
            self.has(i, Cue::RottenEgg)
                || self.node(i).meaning.feed == Some(Feed::Egg)
                || self.node(i).meaning.feed == Some(Feed::Eggshell)
        };
        let indoors = clause.has(Cue::Indoors);
        let mut best: Option<(usize, usize, Sign)> = None;
        for i in clause.range() {
            let apart = i.abs_diff(at);
            let reach = if i > at { 6 } else { 4 };
            if apart == 0 && !self.has(i, Cue::Sour) && !self.has(i, Cue::RottenEgg)
                || apart > reach
                || self.node(i).used
            {
                continue;
            }
            // Another smell, or a new thing, stands between.
            let (low, high) = (at.min(i), at.max(i));
            let parted = (low + 1..high).any(|k| {
                self.has(k, Cue::And) && k + 1 != high
                    || self.node(k).any(&Cues::of(&[Cue::Flame, Cue::Put]))
                    || self.node(k).meaning.level.is_some()
            });
            if parted {
                continue;
            }
            let sign = if self.has(i, Cue::Sour) {
                Sign::SourSmell
            } else if egg(i) {
                if indoors && !clause.has(Cue::Outlet) { Sign::GasLeak } else { Sign::EggSmell }
            } else if self.has(i, Cue::Gas) {
                let between = (low + 1..high)
                    .filter(|&k| {
                        !self.node(k).any(&Cues::of(&[
                            Cue::Of,
                            Cue::Is,
                            Cue::In,
                            Cue::Modifier,
                            Cue::Stink,
                            Cue::My,
                            Cue::Other,
                        ]))
                    })
                    .count();
                if between > 0 || self.gas_is_levelled(clause, i, at) {
                    continue;
                }
                Sign::GasLeak
            } else if self.has(i, Cue::Stink) {
                Sign::BadSmell
            } else {
                continue;
            };
            // Gas outweighs "bad"; a taste outweighs both by standing nearer.
            let rank = match sign {
                Sign::GasLeak => apart.min(3),
                Sign::BadSmell => apart + 8,
                _ => apart,
            };
            if best.is_none_or(|(was, ..)| rank < was) {
                best = Some((rank, i, sign));
            }
        }
        best.map(|(_, i, sign)| (i, sign))
    }

    /// "gas low smells": the gas has its own word.
    fn gas_is_levelled(&self, clause: &Clause, gas: usize, smell: usize) -> bool {
        let (low, high) = (gas.min(smell), gas.max(smell));
        (low + 1..high).any(|k| self.node(k).meaning.level.is_some())
            || gas > clause.from && smell > gas && self.node(gas - 1).any(&Cues::of(&[Cue::Not])) && smell > gas + 1
    }

    fn leaks(&mut self, clause: &Clause) {
        for at in clause.range() {
            if !self.free(at, Cue::Leak) {
                continue;
            }
            self.use_up([at]);
            if self.denied(clause, at) || clause.asks && !clause.has(Cue::Why) && clause.has(Cue::How) {
                continue;
            }
            let near = |cues: &Cues| {
                clause.range().filter(|&i| i != at && self.node(i).any(cues)).map(|i| i.abs_diff(at)).min()
            };
            let elsewhere = near(&Cues::of(&[Cue::NotOurs])).unwrap_or(usize::MAX);
            let ours = near(&LEAKY).into_iter().chain(near(&Cues::of(&[Cue::Tank, Cue::Slurry]))).min();
            let ours = ours.unwrap_or(usize::MAX);
            if elsewhere < ours && !clause.has(Cue::Gas) {
                continue;
            }
            let self_says = self.node(at).any(&LEAKY);
            let day = self.sign_day(clause, at);
            let bag = clause
                .range()
                .any(|i| self.node(i).quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Of(Measure::Bag)))));
            match (near(&LEAKY).or(bag.then_some(3)), near(&WET)) {
                (Some(gas), wet) if wet.is_none_or(|wet| gas <= wet) || clause.has(Cue::Gas) => {
                    self.tell_sign(at, day, Sign::GasLeak)
                }
                (_, Some(_)) if !self_says => self.tell_sign(at, day, Sign::TankCracked),
                (None, _) if self_says || !self.other_thing(clause) => self.tell_sign(at, day, Sign::GasLeak),
                _ => {}
            }
        }
        self.holes(clause);
        for at in clause.range() {
            if self.free(at, Cue::Hiss) && !self.denied(clause, at) && !self.other_thing(clause) {
                self.tell_sign(at, self.sign_day(clause, at), Sign::GasLeak);
                self.use_up([at]);
            }
        }
    }

    /// "the hose has a hole and gas comes out", "gas comes from the pipe": a leak, though no word of it is said.
    fn holes(&mut self, clause: &Clause) {
        let find = |cues: &[Cue]| self.find(clause, &Cues::of(cues));
        let (Some(gas), Some(_)) = (find(&[Cue::Gas]), find(&[Cue::Pipe])) else { return };
        let hole = find(&[Cue::Torn, Cue::Cracked]);
        let way_out = clause.any(&Cues::of(&[Cue::Inlet, Cue::Outlet, Cue::Slurry, Cue::Blocked]));
        let told = self
            .facts
            .iter()
            .any(|(_, told)| matches!(told.what, bellyful_core::fact::What::Sign { sign: Sign::GasLeak }));
        let Some(hole) = hole.filter(|_| !way_out && !told && !clause.asks) else { return };
        if !self.denied(clause, hole) && !self.denied(clause, gas) {
            self.tell_sign(hole, self.sign_day(clause, hole), Sign::GasLeak);
            self.use_up([hole, gas]);
        }
    }

    /// Something that is not the digester's does the leaking.
    fn other_thing(&self, clause: &Clause) -> bool {
        clause.range().any(|i| {
            let node = self.node(i);
            let vessel = node.quantity().is_some_and(
                |q| matches!(q.unit, Some(UnitWord::Of(measure)) if !matches!(measure, Measure::Bag | Measure::Sack)),
            );
            node.unknown() || node.any(&Cues::of(&[Cue::BurnThing, Cue::NotOurs])) || vessel
        })
    }

    fn made_signs(&mut self, clause: &Clause) {
        for &(things, says, sign, reach) in PAIRS {
            let (things, says) = (Cues::of(things), Cues::of(says));
            let said = clause
                .range()
                .find(|&at| self.node(at).any(&says) && !self.node(at).used && self.node(at).feed().is_none());
            let Some(said) = said else { continue };
            let thing = clause
                .range()
                .filter(|&at| {
                    self.node(at).any(&things) && at.abs_diff(said) <= reach || at == said && self.node(at).any(&things)
                })
                .min_by_key(|&at| at.abs_diff(said));
            let Some(thing) = thing else { continue };
            if (thing.min(said) + 1..thing.max(said)).any(|i| {
                self.has(i, Cue::And) && self.node(i).kind == Kind::Phrase && thing < said && self.parts(i, said)
            }) {
                continue;
            }
            self.use_up([said]);
            let denied = self.denied_span(clause, said, said) || thing < said && self.denied(clause, thing);
            if !denied && !(sign == Sign::Fire && clause.any(&Cues::of(&[Cue::Flame])) && !clause.has(Cue::BurnThing)) {
                self.tell_sign(said, self.sign_day(clause, said), sign);
            }
        }
        // "nothing comes out of the outlet"
        for (thing, does, sign) in
            [(Cue::Outlet, Cue::ComesOut, Sign::OutletBlocked), (Cue::Inlet, Cue::GoesIn, Sign::InletBlocked)]
        {
            let Some(at) = clause.range().find(|&at| self.free(at, does)) else { continue };
            let here = clause.has(thing) || self.anywhere(&Cues::of(&[thing]));
            if here && self.denied(clause, at) {
                self.tell_sign(at, self.sign_day(clause, at), sign);
                self.use_up([at]);
            }
        }
    }

    /// "and" parts the thing from what is said when a new thing follows it.
    fn parts(&self, and: usize, said: usize) -> bool {
        (and + 1..said).any(|i| {
            self.node(i).any(&Cues::of(&[
                Cue::Gas,
                Cue::Flame,
                Cue::Slurry,
                Cue::Tank,
                Cue::Level,
                Cue::Outlet,
                Cue::Inlet,
            ]))
        })
    }

    fn water_in_line(&mut self, clause: &Clause) {
        let Some(pipe) = clause.range().find(|&at| self.has(at, Cue::Pipe)) else { return };
        let Some(water) = clause.range().find(|&at| self.free(at, Cue::Water) && at.abs_diff(pipe) <= 6) else {
            return;
        };
        let linked = (pipe.min(water)..=pipe.max(water)).any(|at| self.has(at, Cue::In))
            || clause.has(Cue::Is)
            || self.has(pipe + 1, Cue::In);
        if !linked || clause.has(Cue::Put) && !clause.has(Cue::Gas) {
            return;
        }
        self.use_up([water]);
        if !self.denied(clause, water) && !clause.any(&Cues::of(&[Cue::HowMuch])) {
            self.tell_sign(water, self.sign_day(clause, water), Sign::WaterInGasLine);
        }
    }

    /// "there is too much water in it": the slurry is watery, unless they say that they put it in.
    fn too_wet(&mut self, clause: &Clause) {
        const DONE: Cues = Cues::of(&[Cue::Put, Cue::PutPlan, Cue::Pipe, Cue::Gas, Cue::Remove]);
        let Some(at) = clause.range().find(|&at| {
            self.free(at, Cue::Water)
                && (at.saturating_sub(2).max(clause.from)..(at + 3).min(clause.to)).any(|i| self.has(i, Cue::TooMuch))
        }) else {
            return;
        };
        let inside = clause.any(&Cues::of(&[Cue::In, Cue::Tank, Cue::Slurry]));
        if inside && !clause.asks && !clause.any(&DONE) && !self.denied(clause, at) {
            self.tell_sign(at, self.sign_day(clause, at), Sign::WaterySlurry);
            self.use_up([at]);
        }
    }

    /// "the road is bad", "a problem with my phone": an ordinary word stands where the digester could.
    pub fn said_of_another(&self, clause: &Clause, at: usize) -> bool {
        const JOINTS: Cues = Cues::of(&[Cue::Is, Cue::With, Cue::Of, Cue::My, Cue::Modifier, Cue::In]);
        let joint = |i: &usize| {
            let node = self.node(*i);
            node.number().is_some_and(|n| n.weak) || node.kind == Kind::Phrase && node.any(&JOINTS)
        };
        let before = (clause.from..at).rev().find(|i| !joint(i));
        let linked = at + 1 < clause.to && joint(&(at + 1));
        let after = (at + 1..clause.to).find(|i| !joint(i)).filter(|_| linked);
        before.is_some_and(|i| self.ordinary(i)) || after.is_some_and(|i| self.ordinary(i))
    }

    /// A word of daily life that is no matter of the digester's, a beast among them.
    pub fn ordinary(&self, at: usize) -> bool {
        const BEASTS: Cues = Cues::of(&[Cue::Cow, Cue::Pig, Cue::Chicken, Cue::Goat, Cue::Horse, Cue::NotOurs]);
        let node = self.node(at);
        node.kind == Kind::Phrase && (node.meaning.cues == Cues::of(&[Cue::Other]) || node.any(&BEASTS))
    }

    fn oddities(&mut self, clause: &Clause) {
        let Some(at) =
            clause.range().find(|&at| self.node(at).any(&Cues::of(&[Cue::Wrong, Cue::Odd])) && !self.node(at).used)
        else {
            return;
        };
        let ours = clause.any(&Cues::of(&[
            Cue::Tank,
            Cue::Flame,
            Cue::FireWord,
            Cue::Gas,
            Cue::Slurry,
            Cue::GasBag,
            Cue::Smell,
            Cue::Stove,
        ]));
        let of = ours || self.has(at, Cue::Wrong) && !self.said_of_another(clause, at);
        if of && !clause.asks && !self.denied(clause, at) {
            self.use_up([at]);
            self.doubt(About::Sign, clause.from, clause.to);
        }
    }
}
