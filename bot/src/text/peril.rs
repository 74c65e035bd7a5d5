//! Peril told sideways: by who lies there, what befell them and where, in no listed phrase.
//!
//! Takes a clause; tells the danger that its words make together with those near them in the sentence. Each rule is of
//! one kind: somebody in the tank, somebody overcome, a body harmed, slurry swallowed, a bang, fire that climbs, a room
//! full of gas.

use super::clauses::Clause;
use super::nodes::Kind;
use super::notions::{BEASTS, Cue, Cues};
use super::reader::Reader;
use super::wordlist::Side;
use bellyful_core::fact::Sign;
use bellyful_core::feeds::Feed;
use std::ops::Range;

/// Words of the sentence on either side that are looked at.
const REACH: usize = 14;
/// What harms whoever is near it.
const HAZARD: Cues = Cues::of(&[
    Cue::Gas,
    Cue::GasBag,
    Cue::Tank,
    Cue::Stove,
    Cue::Flame,
    Cue::FireWord,
    Cue::Smell,
    Cue::Leak,
    Cue::Hiss,
    Cue::Slurry,
    Cue::Pipe,
]);
const HAZARD_OR_INDOORS: Cues = HAZARD.and(Cue::Indoors);
const FOLK: Cues = Cues::of(&[Cue::Folk]);
/// What a beast that lies there tells of: a tank alone says nothing.
const CHOKES: Cues = Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Smell, Cue::Leak, Cue::Hiss, Cue::Pipe, Cue::Indoors]);

/// What is said of a stove and how it burns.
const OF_A_STOVE: Cues =
    Cues::of(&[Cue::Blue, Cue::Yellow, Cue::Weak, Cue::NoLight, Cue::GoesOut, Cue::Lights, Cue::Stove, Cue::Cook]);

impl Reader<'_> {
    pub fn perils(&mut self, clause: &Clause) {
        const ASKED: Cues = Cues::of(&[Cue::CanI, Cue::Good4, Cue::HowMuch, Cue::HowLong, Cue::How]);
        const LEADS: Cues = Cues::of(&[Cue::And, Cue::But, Cue::Chatter]);
        const TOLD: Cues = Cues::of(&[
            Cue::Enters,
            Cue::Drops,
            Cue::Fell,
            Cue::Stirs,
            Cue::Lifeless,
            Cue::Ails,
            Cue::Ill,
            Cue::Body,
            Cue::Drinks,
            Cue::Blast,
            Cue::Rises,
            Cue::Filled,
            Cue::FireWord,
            Cue::Smoke,
        ]);
        if !clause.any(&TOLD) {
            return;
        }
        // "can my son go into the tank": asked where the question opens the clause, since "can" stands in much else.
        let first = clause.range().find(|&at| !self.node(at).any(&LEADS));
        let asked = first.is_some_and(|at| self.node(at).any(&ASKED));
        // What was to be done is no plan of what befell: "he bent down to stir and slumped".
        let planned = clause.plan && (clause.has(Cue::Will) || !clause.has(Cue::PutPlan));
        if planned || asked || self.only_supposed(clause) {
            return;
        }
        self.beast_in_the_tank(clause);
        self.in_the_tank(clause);
        self.overcome(clause);
        self.made_ill(clause);
        self.harmed(clause);
        self.swallowed(clause);
        self.bang(clause);
        self.smoke_with_fire(clause);
        self.fire_on_the_pipe(clause);
        self.fire_climbs(clause);
        self.full_of_gas(clause);
    }

    /// The nodes of the clause's sentence within reach of `at`.
    fn around(&self, clause: &Clause, at: usize) -> Range<usize> {
        let sentence = self.sentence(clause);
        at.saturating_sub(REACH).max(sentence.from)..sentence.to.min(at + REACH + 1)
    }

    /// Whether a hazard of the sort stands near `at`: "gas is full" is of the gas alone.
    fn beside(&self, clause: &Clause, at: usize, hazards: &Cues) -> bool {
        let around = self.around(clause, at);
        let levelled = |i: usize| {
            self.node(i).any(&Cues::of(&[Cue::Gas, Cue::GasBag]))
                && (i + 1..around.end.min(i + 4)).any(|k| self.node(k).meaning.level.is_some())
        };
        around.clone().any(|i| self.speaks_of(i, hazards) && !levelled(i))
    }

    /// Whether a danger was told of this clause.
    pub fn endangers(&self, clause: &Clause) -> bool {
        self.facts.iter().rev().take(REACH).any(|(at, told)| clause.range().contains(at) && told.endangers())
    }

    /// The word at `at`, or a word within its phrase, bears one of `cues`: "dans la cuve" is one phrase.
    pub fn speaks_of(&self, at: usize, cues: &Cues) -> bool {
        let node = self.node(at);
        node.any(cues) || node.kind == Kind::Phrase && self.words_say(at).any(cues)
    }

    fn words_say(&self, at: usize) -> &Cues {
        let spoken = self.spoken.get_or_init(|| {
            let of = |at: usize| {
                self.row.words_of(at).fold(Cues::default(), |mut all, word| {
                    all.join(&word.cues);
                    all
                })
            };
            (0..self.row.nodes.len()).map(of).collect()
        });
        &spoken[at]
    }

    fn is_someone(&self, at: usize) -> bool {
        self.speaks_of(at, &FOLK) || self.node(at).any(&BEASTS)
    }

    /// "the boy bent over the pit and slumped", "she will not wake, we cooked with the window shut".
    fn overcome(&mut self, clause: &Clause) {
        const THINGS: Cues = Cues::of(&[Cue::Slurry, Cue::Pipe, Cue::GasBag, Cue::Flame, Cue::Stove]);
        for at in clause.range() {
            let falls = self.free(at, Cue::Drops) && !self.not_beside(clause, at);
            let still = self.free(at, Cue::Ails)
                || self.free(at, Cue::Lifeless)
                || self.free(at, Cue::Stirs) && self.not_done(clause, at);
            if !falls && !still {
                continue;
            }
            let before = self.around(clause, at).start..at;
            let someone = before.clone().rev().find(|&i| {
                let node = self.node(i);
                let food = node.feed().is_some_and(|feed| feed != Feed::Digestate) && !node.has(Cue::Tank);
                self.is_someone(i) || food || node.quantity().is_some_and(|q| q.number.is_some())
            });
            let folk = self.sentence(clause).cues.has(Cue::Folk) || someone.is_some_and(|i| self.speaks_of(i, &FOLK));
            let someone = someone.is_some_and(|i| self.is_someone(i));
            // "the slurry does not move, says my son": nothing of the digester's lies nearer than they do.
            let nearest =
                before.rev().find(|&i| self.is_someone(i) || self.has(i, Cue::Drops) || self.speaks_of(i, &THINGS));
            let their_own = nearest.is_some_and(|i| self.is_someone(i) || self.has(i, Cue::Drops));
            // "not waking up after cooking"
            let lifeless = folk && self.free(at, Cue::Lifeless);
            let place = match (folk, still) {
                (true, true) if lifeless => HAZARD_OR_INDOORS.and(Cue::Cook),
                (false, _) => CHOKES,
                (true, true) => HAZARD_OR_INDOORS,
                (true, false) => HAZARD,
            };
            // "he went in to clean the tank and stopped talking"
            let went_in = self.free(at, Cue::Lifeless)
                && clause.has(Cue::Enters)
                && clause.range().any(|i| self.speaks_of(i, &Cues::of(&[Cue::Tank])));
            if went_in || someone && (falls || their_own) && self.beside(clause, at, &place) {
                self.tell_sign(at, clause.day(at), Sign::Unwell);
                self.use_up([at]);
                return;
            }
        }
    }

    /// "the child is sick because of the gas": told of the gas and of nothing that is done with it. Who is ill beside a gas
    /// that is empty has another illness.
    fn made_ill(&mut self, clause: &Clause) {
        const ELSE: Cues =
            Cues::of(&[Cue::Put, Cue::PutNot, Cue::Cook, Cue::CookNot, Cue::Not, Cue::Nothing, Cue::Without]);
        let Some(at) = clause.range().find(|&at| self.free(at, Cue::Ill)) else { return };
        let level = |i: usize| i != at && self.node(i).meaning.level.is_some();
        let gas = clause.range().any(|i| i != at && self.has(i, Cue::Gas));
        let beast = clause.any(&BEASTS) && !clause.has(Cue::Folk);
        if gas && !beast && !clause.any(&ELSE) && !clause.range().any(level) {
            self.tell_sign(at, clause.day(at), Sign::Unwell);
            self.use_up(clause.range());
        }
    }

    /// "did not fall down", and not "fell down and does not talk".
    fn not_beside(&self, clause: &Clause, at: usize) -> bool {
        let after =
            self.row.lexicon.habits.negation != Side::Before && at + 1 < clause.to && self.has(at + 1, Cue::Not);
        after || (at.saturating_sub(2).max(clause.from)..at).any(|i| self.has(i, Cue::Not))
    }

    /// "does not get up", and not "does not get up to feed it".
    fn not_done(&self, clause: &Clause, at: usize) -> bool {
        // "uth nahi rahi": the denial is within a phrase that follows.
        let after = self.row.lexicon.habits.negation != Side::Before
            && at + 1 < clause.to
            && self.speaks_of(at + 1, &Cues::of(&[Cue::Not]));
        let feeds = (at + 1..clause.to.min(at + 4)).any(|i| self.has(i, Cue::Put));
        (after || self.denied(clause, at)) && !feeds
    }

    /// "my legs are jelly since I opened the gas", "the flame took his eyebrows", "slurry in my eye, it stings".
    fn harmed(&mut self, clause: &Clause) {
        const NEAR: usize = 6;
        for at in clause.range() {
            // "a hand of bananas"
            let fruit = at + 1 < clause.to && self.has(at + 1, Cue::Of) && self.food_follows(clause, at + 1);
            // "the level went down by 2 feet"
            let length = at > clause.from
                && self.node(at - 1).number().is_some()
                && clause.any(&Cues::of(&[Cue::Level, Cue::Drop, Cue::Slurry]));
            if !self.has(at, Cue::Body) || self.node(at).used || fruit || length {
                continue;
            }
            let around = self.around(clause, at);
            let ends = |i: &usize| self.node(*i).mark().is_some();
            // "the gas stings the nose" is smelt.
            let smelt = |i: usize| self.node(i).meaning.sign == Some(Sign::GasLeak);
            let harms = |i: usize| !self.node(i).used && !smelt(i) && self.speaks_of(i, &Cues::of(&[Cue::Harm]));
            let back = (around.start..at).rev().take(NEAR).take_while(|i| !ends(i));
            let on = (at..around.end).take(NEAR + 1).take_while(|i| !ends(i));
            let harm = back.chain(on).filter(|&i| harms(i)).min_by_key(|&i| i.abs_diff(at));
            let Some(harm) = harm else { continue };
            // "mes cheveux": one's own, though hair may be put in too.
            let own = |i: usize| i == at && at > 0 && self.has(at - 1, Cue::My);
            let food = (at.min(harm)..at.max(harm)).any(|i| self.node(i).feed().is_some() && !own(i));
            // "mes cheveux ont brulé quand j'ai allumé"
            let near_fire = HAZARD.and(Cue::Lights);
            if !food && !self.denied_span(clause, at.min(harm), at.max(harm)) && self.beside(clause, at, &near_fire) {
                self.tell_sign(at, clause.day(at), Sign::Unwell);
                self.use_up([at, harm]);
                return;
            }
        }
    }

    fn food_follows(&self, clause: &Clause, at: usize) -> bool {
        (at..clause.to.min(at + 3)).any(|i| self.node(i).feed().is_some())
    }

    /// "the little one drank from the slurry bucket".
    fn swallowed(&mut self, clause: &Clause) {
        const NEAR: usize = 6;
        let slurry = |i: usize| {
            self.speaks_of(i, &Cues::of(&[Cue::Slurry, Cue::Fertilizer]))
                || self.node(i).feed() == Some(Feed::Digestate)
        };
        let Some(drinks) = clause.range().find(|&at| self.free(at, Cue::Drinks)) else { return };
        let near = drinks.saturating_sub(NEAR).max(clause.from)..clause.to.min(drinks + NEAR + 1);
        let someone = self.around(clause, drinks).any(|at| self.speaks_of(at, &FOLK));
        if someone && near.clone().any(slurry) && !self.denied(clause, drinks) {
            self.tell_sign(drinks, clause.day(drinks), Sign::Unwell);
            self.use_up(near);
        }
    }

    /// "a loud bang at the stove": no fire is named, but what bangs there burns.
    fn bang(&mut self, clause: &Clause) {
        const THERE: Cues =
            Cues::of(&[Cue::Gas, Cue::GasBag, Cue::Bag, Cue::Tank, Cue::Stove, Cue::Pipe, Cue::Flame, Cue::FireWord]);
        let Some(bang) = clause.range().find(|&at| self.free(at, Cue::Blast)) else { return };
        // "the bag burst with a bang" is torn, and does not burn for that.
        if !clause.has(Cue::Torn) && !self.denied(clause, bang) && self.beside(clause, bang, &THERE) {
            self.tell_sign(bang, clause.day(bang), Sign::Fire);
            self.use_up([bang]);
        }
    }

    /// "flames shot up to the ceiling", "fire is climbing the hose": where no flame of a stove goes.
    fn fire_climbs(&mut self, clause: &Clause) {
        const THERE: Cues = Cues::of(&[Cue::BurnThing, Cue::Pipe, Cue::GasBag, Cue::Bag, Cue::Tank]);
        const ENDS: Cues = Cues::of(&[Cue::But, Cue::If, Cue::Stove, Cue::Blue, Cue::Yellow]);
        const FLAMES: Cues = Cues::of(&[Cue::Flame, Cue::FireWord]);
        const SPAN: usize = 9;
        // "flame is blue and the bag rises"; what burns elsewhere may come: "he burned rubbish and it ran to our bag".
        let and = |i: usize| self.has(i, Cue::And) && !self.has(i, Cue::With);
        let near = |rises: usize, of: &Cues, over_and: bool| {
            let ends = |i: &usize| self.speaks_of(*i, &ENDS) || !over_and && and(*i);
            let back = (clause.from.max(rises.saturating_sub(SPAN))..rises).rev().take_while(|i| !ends(i));
            let on = (rises + 1..clause.to.min(rises + SPAN)).take_while(|i| !ends(i));
            let near: Vec<usize> = back.chain([rises]).chain(on).collect();
            let flame = near.iter().copied().find(|&i| self.node(i).any(of))?;
            near.iter().any(|&i| i != flame && self.speaks_of(i, &THERE)).then_some(flame)
        };
        let rises = clause.range().filter(|&at| self.free(at, Cue::Rises));
        let found = rises
            .into_iter()
            .find_map(|rises| near(rises, &FLAMES, false).or_else(|| near(rises, &Cues::of(&[Cue::Burning]), true)));
        if let Some(flame) = found.filter(|&flame| !self.denied(clause, flame) && !self.is_over(clause, flame)) {
            self.tell_sign(flame, clause.day(flame), Sign::Fire);
            self.use_up([flame]);
        }
    }

    /// "the room is thick with gas".
    fn full_of_gas(&mut self, clause: &Clause) {
        const NEAR: usize = 3;
        let Some(full) = clause.range().find(|&at| self.free(at, Cue::Filled)) else { return };
        let near = full.saturating_sub(NEAR).max(clause.from)..clause.to.min(full + NEAR + 1);
        let says = |cue: Cue| near.clone().any(|i| i != full && self.speaks_of(i, &Cues::of(&[cue])));
        if says(Cue::Gas) && says(Cue::Indoors) && !self.denied(clause, full) {
            self.tell_sign(full, clause.day(full), Sign::GasLeak);
            self.use_up([full]);
        }
    }

    /// "two men went down into the tank": somebody, then what takes them in, and the tank on either side of it.
    fn in_the_tank(&mut self, clause: &Clause) {
        const REACH: usize = 5;
        /// "my brother opened the lid of the tank and fell in"
        const FAR: usize = 10;
        const NEAR: usize = 3;
        if !clause.range().any(|at| self.speaks_of(at, &FOLK)) {
            return;
        }
        let Some(enters) = clause.range().find(|&at| self.free(at, Cue::Enters)) else { return };
        // "my son says a spoon fell in": the spoon did.
        let things = |from: usize| {
            (from + 1..enters)
                .rev()
                .take(NEAR)
                .any(|at| self.node(at).feed().is_some() || self.node(at).quantity().is_some())
        };
        // "dans la cuve": the tank and what leads into it may be within a phrase.
        let says = |at: usize, cue: Cue| self.speaks_of(at, &Cues::of(&[cue]));
        let tank_between = |from: usize| (from..enters).any(|at| says(at, Cue::Tank));
        let folk = (clause.from..enters)
            .rev()
            .take(FAR)
            .find(|&at| self.speaks_of(at, &FOLK) && !things(at) && (enters - at <= REACH || tank_between(at)));
        let tank = (folk.unwrap_or(enters)..clause.to.min(enters + REACH)).find(|&at| says(at, Cue::Tank));
        // "went down to the tank" is to feed it.
        let tank = tank.is_some_and(|tank| {
            // "... of the tank and fell inside"
            let last = if tank < enters { (enters + 1).min(clause.to - 1) } else { tank };
            (tank.min(enters)..=last).any(|at| says(at, Cue::In))
        });
        // "my son went down to the tank to put dung in"
        const LIES: Cues = Cues::of(&[Cue::Not, Cue::Lifeless, Cue::Stirs, Cue::Drops, Cue::Ails]);
        let after = enters + 1..clause.to;
        let to_feed = !self.has(enters, Cue::Fell)
            && after.clone().any(|at| self.node(at).any(&Cues::of(&[Cue::Put, Cue::PutPlan])))
            && !after.clone().any(|at| self.node(at).any(&LIES));
        if to_feed {
            return;
        }
        let Some(folk) = folk.filter(|_| tank) else { return };
        // "went down into the tank and do not answer": the denial after the tank is of what comes then.
        let tank_follows = (enters + 1..clause.to.min(enters + 3)).any(|at| says(at, Cue::Tank));
        let denied = if tank_follows {
            (clause.from..enters).rev().take(3).any(|at| self.has(at, Cue::Not))
        } else {
            self.denied(clause, enters) || self.denied(clause, folk)
        };
        if !denied {
            self.tell_sign(enters, clause.day(enters), Sign::Unwell);
            // "two men": no count of who lives here.
            self.use_up(folk.saturating_sub(1).max(clause.from)..=enters);
        }
    }

    /// "smoke and flames from the shed": no stove makes both, and nothing is said of how one burns.
    fn smoke_with_fire(&mut self, clause: &Clause) {
        const FIRE: Cues = Cues::of(&[Cue::FireWord, Cue::Flame]);
        let joined = |smoke: usize| {
            let beside = |fire: usize, and: usize| {
                clause.range().contains(&fire) && self.node(fire).any(&FIRE) && self.has(and, Cue::And)
            };
            beside(smoke + 2, smoke + 1) || smoke >= 2 && beside(smoke - 2, smoke - 1)
        };
        let Some(smoke) = clause.range().find(|&at| self.free(at, Cue::Smoke) && joined(at)) else { return };
        if !clause.any(&OF_A_STOVE) && !self.denied(clause, smoke) && !self.is_over(clause, smoke) {
            self.tell_sign(smoke, clause.day(smoke), Sign::Fire);
            self.use_up(smoke.saturating_sub(2).max(clause.from)..clause.to.min(smoke + 3));
        }
    }

    /// "smoke and fire from the hose", "fire all along the pipe": no fire belongs there.
    fn fire_on_the_pipe(&mut self, clause: &Clause) {
        const ON: Cues = Cues::of(&[Cue::Pipe, Cue::GasBag, Cue::Bag, Cue::Tank]);
        const STOVE: Cues = OF_A_STOVE.and(Cue::Water).and(Cue::Blocked).and(Cue::Flame);
        const LINKS: Cues = Cues::of(&[
            Cue::In,
            Cue::Of,
            Cue::To,
            Cue::ComesOut,
            Cue::Escape,
            Cue::With,
            Cue::Since,
            Cue::Almost,
            Cue::At,
        ]);
        const REACH: usize = 5;
        let find = |cue: Cue| clause.range().find(|&at| self.free(at, cue));
        let Some(fire) = find(Cue::FireWord).or_else(|| find(Cue::Smoke)) else { return };
        let levelled = clause.range().any(|at| self.node(at).meaning.level.is_some());
        if clause.any(&STOVE) || levelled {
            return;
        }
        let near = fire.saturating_sub(REACH).max(clause.from)..clause.to.min(fire + REACH + 1);
        let on_it = |at: &usize| {
            let node = self.node(*at);
            let counted = node.quantity().is_some_and(|q| !q.implied);
            node.any(&ON) && !counted
        };
        let Some(on) = near.clone().find(on_it) else { return };
        let linked = clause.has(Cue::Smoke) || (on.min(fire)..=on.max(fire)).any(|at| self.node(at).any(&LINKS));
        if linked && !self.denied(clause, fire) && !self.is_over(clause, fire) {
            self.tell_sign(fire, clause.day(fire), Sign::Fire);
            self.use_up([fire]);
        }
    }
}
