//! Signs: what people see, smell and feel at a digester, dangers among them.
//!
//! A sign is listed whole ("overflowing"), or made of a thing and what is said of it in the same clause ("outlet" and
//! "blocked"). Denied signs are none; what may be is none.

use super::clauses::Clause;
use super::dishes::beast;
use super::nodes::Kind;
use super::notions::{Cue, Cues};
use super::reader::Reader;
use super::reading::{About, Control};
use bellyful_core::fact::{Sign, What};
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
    (&[Cue::Gas, Cue::Pipe, Cue::GasBag, Cue::Stove, Cue::Bag, Cue::Tank], &[Cue::Hiss], Sign::GasLeak, 12),
];

impl Reader<'_> {
    pub fn signs(&mut self, clause: &Clause) {
        if self.only_supposed(clause) || clause.has(Cue::AskDigestate) {
            return;
        }
        self.listed_signs(clause);
        self.smells(clause);
        self.sours(clause);
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
                let says_how = node.meaning.level.is_some() || node.has(Cue::Chatter) && !node.any(&beside);
                (node.any(&beside) || node.meaning.order() == Some(&Control::Help)) && !says_how
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
    pub(super) fn only_supposed(&self, clause: &Clause) -> bool {
        clause.range().any(|at| {
            let node = self.node(at);
            let supposes = node.kind == Kind::Phrase && (node.has(Cue::If) || node.has(Cue::Hypothetical));
            supposes && !(at == clause.from && node.meaning.control.is_some())
        })
    }

    fn listed_signs(&mut self, clause: &Clause) {
        for at in clause.range() {
            let node = *self.node(at);
            let Some(sign) = node.meaning.sign.filter(|_| !node.used && node.kind == Kind::Phrase) else { continue };
            // "does gas make you dizzy?": nobody is.
            let in_general = sign == Sign::Unwell
                && clause.asks
                && self.has(clause.from, Cue::AsksFirst)
                && !clause.any(&Cues::of(&[Cue::My, Cue::WeAre, Cue::Folk]));
            // "can the bag catch fire?": none has.
            let in_general = in_general
                || sign == Sign::Fire
                    && clause.asks
                    && self.node(clause.from).any(&Cues::of(&[Cue::AsksFirst, Cue::CanI]));
            let beast_is_ill = sign == Sign::Unwell && (self.of_beast(clause, at) || self.food_is_burnt(clause, at));
            if self.denied(clause, at)
                || !sign.is_danger() && sign != Sign::LevelDrop && self.is_over(clause, at)
                || beast_is_ill
                || in_general
            {
                self.use_up([at]);
                continue;
            }
            // Worms put in as food, foam of soap, a dozen rotten eggs: a measured thing is no sign.
            let of = usize::from(at > clause.from + 1 && self.has(at - 1, Cue::Of));
            let before = (at > clause.from + of).then(|| self.node(at - 1 - of));
            let measured = before.is_some_and(|before| {
                before.quantity().is_some_and(|q| !q.implied && q.unit.is_some())
                    || before.number().is_some_and(|n| !n.weak && (sign == Sign::EggSmell || !n.fraction))
            });
            if measured && node.meaning.feed.is_some() {
                continue;
            }
            let sign = match sign {
                Sign::EggSmell if self.where_gas_is(clause) => Sign::GasLeak,
                // "he fainted in the kitchen, it smells of rotten eggs in there"
                Sign::EggSmell if self.overcome_indoors(clause) => Sign::GasLeak,
                Sign::EggSmell if clause.asks && clause.any(&Cues::of(&[Cue::CanI, Cue::Good4])) => continue,
                Sign::BadSmell if self.indoors(clause) && self.is_of_eggs(clause, at) && !clause.has(Cue::Outlet) => {
                    Sign::GasLeak
                }
                Sign::BadSmell if self.is_of_gas(clause, at) && !clause.has(Cue::Outlet) => Sign::GasLeak,
                Sign::BadSmell if at + 1 < clause.to && self.has(at + 1, Cue::RottenEgg) => Sign::EggSmell,
                // "khatta badbu": the taste says which.
                Sign::BadSmell if self.has(at, Cue::Smell) && at > clause.from && self.has(at - 1, Cue::Sour) => {
                    continue;
                }
                // "spilled a bottle of soda into the inlet"
                Sign::Overflow
                    if clause.range().any(|i| self.node(i).feed().is_some())
                        && clause.range().any(|i| self.node(i).quantity().is_some_and(|q| !q.implied)) =>
                {
                    continue;
                }
                // "soap foam on the joints"
                Sign::Foam
                    if at >= clause.from + 2
                        && self.has(at - 1, Cue::Of)
                        && self.node(at - 2).feed() == Some(Feed::Soap) =>
                {
                    continue;
                }
                Sign::BadSmell if clause.has(Cue::OutletUsual) => continue,
                // "a smell of vinegar comes out"
                Sign::BadSmell if self.sour_follows(clause, at).is_some() => {
                    self.use_up(self.sour_follows(clause, at));
                    Sign::SourSmell
                }
                // "stinking like bad eggs" says once of what it stinks.
                Sign::BadSmell if self.eggs_follow(clause, at) => continue,
                // "wrapped with foam"
                Sign::Foam if clause.has(Cue::Insulated) => continue,
                Sign::GasLeak if clause.has(Cue::OutletUsual) => continue,
                other => other,
            };
            self.tell_sign(at, clause.day(at), sign);
            self.use_up([at]);
            // "sade ande jaisi gandh": the smell of it is told.
            if matches!(sign, Sign::EggSmell | Sign::SourSmell) && at + 1 < clause.to && self.has(at + 1, Cue::Smell) {
                self.use_up([at + 1]);
            }
            if matches!(sign, Sign::GasLeak | Sign::EggSmell) {
                self.use_up(
                    clause.range().filter(|&i| i.abs_diff(at) <= 3 && self.has(i, Cue::RottenEgg)).collect::<Vec<_>>(),
                );
            }
        }
    }

    /// "the rice got burnt": the food did, and nobody.
    fn food_is_burnt(&self, clause: &Clause, at: usize) -> bool {
        const LITTLE: Cues = Cues::of(&[Cue::Is, Cue::Was, Cue::Modifier, Cue::My, Cue::Chatter]);
        let burns = self.speaks_of(at, &Cues::of(&[Cue::Burning, Cue::Harm]));
        let little = |i: &usize| {
            self.node(*i).kind == Kind::Phrase && self.node(*i).any(&LITTLE) && self.node(*i).feed().is_none()
        };
        let what = (clause.from..at).rev().find(|i| !little(i));
        burns && what.is_some_and(|i| self.node(i).feed().is_some() && beast(self.node(i)).is_none())
    }

    fn overcome_indoors(&self, clause: &Clause) -> bool {
        let unwell = |told: &super::reading::Told| matches!(told.what, What::Sign { sign: Sign::Unwell });
        self.sentence(clause).cues.has(Cue::Indoors) && self.facts.iter().any(|(_, told)| unwell(told))
    }

    /// "the smell is gone", "ya se fue el olor": it was, and is no more. Of a danger that is not enough: it is told all the same.
    pub fn is_over(&self, clause: &Clause, at: usize) -> bool {
        let and = |i: &usize| self.node(*i).kind == Kind::Phrase && self.has(*i, Cue::And);
        let mut before = (at.saturating_sub(3).max(clause.from)..at).rev().take_while(|i| !and(i));
        let before = before.any(|i| self.has(i, Cue::Over));
        before || (at + 1..clause.to.min(at + 6)).any(|i| self.has(i, Cue::Over))
    }

    fn made_signs(&mut self, clause: &Clause) {
        for &(things, says, sign, reach) in PAIRS {
            let (things, says) = (Cues::of(things), Cues::of(says));
            let said = clause
                .range()
                .find(|&at| self.node(at).any(&says) && !self.node(at).used && self.node(at).feed().is_none());
            let Some(said) = said else { continue };
            // "a thick crust": the crust is.
            let crust = |(told_at, told): &(usize, super::reading::Told)| {
                clause.range().contains(told_at) && told.what == What::Sign { sign: Sign::Scum }
            };
            if sign == Sign::ThickSlurry && self.facts.iter().any(crust) {
                continue;
            }
            let thing = clause
                .range()
                .filter(|&at| {
                    self.node(at).any(&things) && at.abs_diff(said) <= reach || at == said && self.node(at).any(&things)
                })
                .min_by_key(|&at| at.abs_diff(said))
                .or_else(|| self.meant_by_it(clause, said, &things));
            let Some(thing) = thing else { continue };
            if (thing.min(said) + 1..thing.max(said)).any(|i| {
                self.has(i, Cue::And) && self.node(i).kind == Kind::Phrase && thing < said && self.parts(i, said)
            }) {
                continue;
            }
            self.use_up([said]);
            // "the kettle hisses on the stove"
            let hiss = says.has(Cue::Hiss) && self.other_thing(clause);
            if hiss && !clause.any(&Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Bag, Cue::Pipe, Cue::Leak])) {
                continue;
            }
            // "the beans burned and the house is full of smoke": the beans did.
            let and = |i: usize| self.has(i, Cue::And) && self.node(i).kind == Kind::Phrase;
            let food = sign == Sign::Fire && (clause.from..said).any(|i| self.node(i).feed().is_some());
            // "burnt rice given to the digester"
            let burnt = sign == Sign::Fire
                && said > clause.from
                && self.node(said - 1).feed().is_some_and(|feed| {
                    !matches!(feed, Feed::Wood | Feed::Straw | Feed::Plastic | Feed::Paper | Feed::Grass)
                })
                && !self.has(said - 1, Cue::BurnThing);
            if food && (said + 1..thing).any(and) || burnt {
                continue;
            }
            let denied = self.denied_span(clause, said, said) || thing < said && self.denied(clause, thing);
            // "swollen like it wants to burst"
            let will = |at: usize| at > clause.from && self.has(at - 1, Cue::Will);
            if !sign.is_danger() && (will(said) || said > clause.from && will(said - 1)) {
                continue;
            }
            if !denied && !(sign == Sign::Fire && clause.any(&Cues::of(&[Cue::Flame])) && !clause.has(Cue::BurnThing)) {
                self.tell_sign(said, clause.day(said), sign);
            }
        }
        // "nothing comes out of the outlet"
        for (thing, does, sign) in
            [(Cue::Outlet, Cue::ComesOut, Sign::OutletBlocked), (Cue::Inlet, Cue::GoesIn, Sign::InletBlocked)]
        {
            let Some(at) = clause.range().find(|&at| self.free(at, does)) else { continue };
            let here = clause.has(thing) || self.anywhere(&Cues::of(&[thing]));
            // "neeche nahi ja raha": the denial may stand right before the going.
            let before = at > clause.from && self.has(at - 1, Cue::Not) && self.node(at - 1).kind == Kind::Phrase;
            if here && (before || self.denied(clause, at)) {
                self.tell_sign(at, clause.day(at), sign);
                self.use_up([at]);
            }
        }
    }

    /// "the bag was full but it has torn": the thing that "it" means, last named in the clause before.
    fn meant_by_it(&self, clause: &Clause, said: usize, things: &Cues) -> Option<usize> {
        const LITTLE: Cues = Cues::of(&[Cue::Is, Cue::Was, Cue::ThatOne, Cue::Now, Cue::Modifier, Cue::Chatter]);
        let it = clause.range().any(|at| self.has(at, Cue::ThatOne));
        let bare = clause.range().all(|at| at == said || self.node(at).any(&LITTLE) && self.node(at).feed().is_none());
        let before = self.clause_before(clause).filter(|_| it && bare)?;
        let of_gas = |at: usize| self.node(at).any(&Cues::of(&[Cue::Gas, Cue::Flame, Cue::Stove]));
        let last = before
            .range()
            .rev()
            .find(|&at| self.node(at).any(things) || of_gas(at) || self.node(at).feed().is_some())?;
        self.node(last).any(things).then_some(last)
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
            self.tell_sign(water, clause.day(water), Sign::WaterInGasLine);
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
            self.tell_sign(at, clause.day(at), Sign::WaterySlurry);
            self.use_up([at]);
        }
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
        // "2 pints of off milk"
        if self.has(at, Cue::Odd) && at + 1 < clause.to && self.node(at + 1).feed().is_some() {
            return;
        }
        // "changed the hose": somebody did, and it is well.
        let ours = ours && !(self.has(at, Cue::Odd) && at + 1 < clause.to && self.has(at + 1, Cue::My));
        let of = ours || self.has(at, Cue::Wrong) && !self.said_of_another(clause, at);
        // "one problem, worms in the slurry": what is wrong is told.
        let told = |(at, told): &(usize, super::reading::Told)| {
            clause.range().contains(at) && matches!(told.what, What::Sign { .. })
        };
        let of = of && !self.facts.iter().any(told);
        if of && !clause.asks && !self.endangers(clause) && !self.denied(clause, at) {
            self.use_up([at]);
            self.doubt(About::Sign, clause.from, clause.to);
        }
    }
}
