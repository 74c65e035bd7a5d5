//! Leaks: gas or slurry that gets out, said outright or by a hiss or a hole.

use super::clauses::Clause;
use super::notions::{Cue, Cues, UnitWord};
use super::reader::Reader;
use bellyful_core::fact::{Measure, Sign, What};
use bellyful_core::feeds::Feed;

const LEAKY: Cues = Cues::of(&[Cue::Gas, Cue::Pipe, Cue::GasBag, Cue::Bag, Cue::Stove]);
const WET: Cues = Cues::of(&[Cue::Tank, Cue::Slurry, Cue::Water]);

impl Reader<'_> {
    pub fn leaks(&mut self, clause: &Clause) {
        for at in clause.range() {
            // "2 kg leek"
            let food = self.node(at).feed().is_some() && at > clause.from && self.node(at - 1).quantity().is_some();
            if !self.free(at, Cue::Leak) || food {
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
            let day = clause.day(at);
            let bag = clause
                .range()
                .any(|i| self.node(i).quantity().is_some_and(|q| matches!(q.unit, Some(UnitWord::Of(Measure::Bag)))));
            // "le lisier suinte": dung that leaks is slurry.
            let dung = |i: &usize| self.node(*i).feed().is_some_and(|feed| feed.id().ends_with("manure"));
            let dung = clause.range().filter(dung).map(|i| i.abs_diff(at)).min();
            // "the tank has a crack and drips"
            let cracked = |i: &usize| self.node(*i).meaning.sign == Some(Sign::TankCracked);
            let cracked = clause.range().filter(cracked).map(|i| i.abs_diff(at)).min();
            let wet = near(&WET).into_iter().chain(dung).chain(cracked).min();
            match (near(&LEAKY).or(bag.then_some(3)), wet) {
                (Some(gas), wet) if wet.is_none_or(|wet| gas <= wet) || clause.has(Cue::Gas) => {
                    self.tell_sign(at, day, Sign::GasLeak)
                }
                (_, Some(_)) if !self_says => self.tell_sign(at, day, Sign::TankCracked),
                (None, _) if self.goes_on_about_another(clause) => {}
                (None, _) if self_says || !self.other_thing(clause) => self.tell_sign(at, day, Sign::GasLeak),
                _ => {}
            }
        }
        self.soap_bubbles(clause);
        self.holes(clause);
        self.flows_out(clause);
        for at in clause.range() {
            if self.free(at, Cue::Hiss) && !self.denied(clause, at) && !self.other_thing(clause) {
                self.tell_sign(at, clause.day(at), Sign::GasLeak);
                self.use_up([at]);
            }
        }
    }

    /// Soap on a joint looks for bubbles; it does not go into the tank.
    pub fn soap_tests(&mut self) {
        const JOINTS: Cues = Cues::of(&[Cue::Pipe, Cue::GasBag, Cue::Leak]);
        const IN: Cues = Cues::of(&[Cue::Tank, Cue::Inlet]);
        let mut facts = std::mem::take(&mut self.facts);
        facts.retain(|(at, told)| {
            let soap = matches!(told.what, What::Fed { feed: Feed::Soap, .. });
            !soap || !self.clause_at(*at).is_some_and(|clause| clause.any(&JOINTS) && !clause.any(&IN))
        });
        self.facts = facts;
    }

    /// "bubbles when I put soap on the joint": what the soap was to show.
    fn soap_bubbles(&mut self, clause: &Clause) {
        const JOINTS: Cues = Cues::of(&[Cue::Pipe, Cue::GasBag, Cue::Stove]);
        let Some(at) = clause.range().find(|&at| self.free(at, Cue::Bubbles)) else { return };
        let sentence = self.sentence(clause);
        let all = sentence.from..sentence.to;
        // "put soap on the joint" is one listed phrase.
        let soap = |at: usize| {
            self.node(at).feed() == Some(Feed::Soap) || self.row.words_of(at).any(|word| word.feed == Some(Feed::Soap))
        };
        let soap = all.clone().any(soap);
        let joint = all.clone().any(|at| self.speaks_of(at, &JOINTS));
        if soap && joint && !self.denied(clause, at) && !clause.asks {
            self.tell_sign(at, clause.day(at), Sign::GasLeak);
            self.use_up([at]);
        }
    }

    /// "the roof, and then it leaks": what leaks stands in the clause before.
    fn goes_on_about_another(&self, clause: &Clause) -> bool {
        let before = self.clause_before(clause);
        let ours = |clause: &Clause| clause.any(&LEAKY) || clause.any(&Cues::of(&[Cue::Tank, Cue::Slurry]));
        before.is_some_and(|before| before.has(Cue::NotOurs) && !ours(before) && !ours(clause))
    }

    /// "gas comes out of the valve", where no stove, flame or level is spoken of that it may come for.
    fn flows_out(&mut self, clause: &Clause) {
        const FOR: Cues = Cues::of(&[
            Cue::Stove,
            Cue::Flame,
            Cue::FireWord,
            Cue::NoLight,
            Cue::Lights,
            Cue::GoesOut,
            Cue::Weak,
            Cue::Cook,
            Cue::Water,
            Cue::Slurry,
            Cue::Blocked,
            Cue::Put,
            Cue::Still,
            Cue::Now,
            Cue::Again,
        ]);
        let cues = self.sentence(clause).cues;
        let levelled = clause.range().any(|at| self.node(at).meaning.level.is_some());
        let gas = clause.range().find(|&at| self.free(at, Cue::Gas) && !self.has(at, Cue::Pipe));
        let out = clause.range().find(|&at| self.free(at, Cue::ComesOut) || self.free(at, Cue::Escape));
        let (Some(gas), Some(out)) = (gas, out.filter(|_| clause.has(Cue::Pipe))) else { return };
        // "comes through the pipe nicely"
        let well = (out + 1..clause.to).any(|at| self.has(at, Cue::Modifier) && self.node(at).feed().is_none());
        if well {
            return;
        }
        if cues.any(&FOR) || levelled || clause.asks || self.denied(clause, out) || self.denied(clause, gas) {
            return;
        }
        self.tell_sign(out, clause.day(out), Sign::GasLeak);
        self.use_up([gas, out]);
    }

    /// "the hose has a hole and gas comes out", "the hose came off, gas comes out": a leak, though no word of it is said.
    fn holes(&mut self, clause: &Clause) {
        let find = |cues: &[Cue]| self.find(clause, &Cues::of(cues));
        let (Some(gas), Some(_)) = (find(&[Cue::Gas]), find(&[Cue::Pipe])) else { return };
        let loose = find(&[Cue::Loose]).filter(|_| clause.any(&Cues::of(&[Cue::ComesOut, Cue::Escape])));
        let hole = find(&[Cue::Torn, Cue::Cracked]).or(loose);
        let way_out = clause.any(&Cues::of(&[Cue::Inlet, Cue::Outlet, Cue::Slurry, Cue::Blocked]));
        let told = self.facts.iter().any(|(_, told)| matches!(told.what, What::Sign { sign: Sign::GasLeak }));
        let Some(hole) = hole.filter(|_| !way_out && !told && !clause.asks) else { return };
        if !self.denied(clause, hole) && !self.denied(clause, gas) {
            self.tell_sign(hole, clause.day(hole), Sign::GasLeak);
            self.use_up([hole, gas]);
        }
    }
}
