//! What a told trouble may come from: one step against the likeliest cause, one question that tells it from the next.
//!
//! Takes what was recorded and believed; gives a cause to act on and perhaps one to ask after, and words the step.

use super::compose::{Piece, Rank};
use super::word::Voice;
use crate::household::{Pending, Topic};
use crate::record::Recorded;
use crate::talk::Settled;
use crate::twins::Believed;
use bellyful_core::advice::{Advice, Cause, Trouble, Verdict, causes, days_told};

/// A cause believed so much needs no question. Source: our choice.
const SURE: f64 = 0.7;
/// Days in a week with the same trouble after which somebody must come and look. Source: our choice.
const LASTS_DAYS: usize = 3;

#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspicion {
    /// What to act against; none where the advice itself is the step.
    pub cause: Option<Cause>,
    pub ask: Option<(Trouble, Cause)>,
    /// It does not pass: a fitter should look.
    pub lasts: bool,
}

/// Of the trouble just told, or of the one whose question was just answered.
pub fn suspect(recorded: &Recorded, believed: &Believed, advice: &Advice, settled: &Settled) -> Option<Suspicion> {
    let talk = &recorded.household.talk;
    let eats_little = matches!(advice.verdict, Verdict::Less | Verdict::Hold);
    let ranked = |trouble| {
        let mut ranked = causes(&believed.so_far, believed.today, trouble);
        // Who is told to feed less is not told that more would help.
        ranked.retain(|(cause, _)| !(eats_little && *cause == Cause::LittleFed));
        ranked
    };
    let lasts = |trouble| days_told(&believed.so_far, believed.today, trouble) >= LASTS_DAYS;
    let told = recorded.facts.iter().filter(|fact| fact.day == believed.today);
    if let Some(trouble) = told.filter_map(|fact| Trouble::told_by(&fact.what)).max() {
        let ranked = ranked(trouble);
        let (cause, share) = *ranked.first()?;
        let asked_today = talk.asked.get(&Topic::Cause) == Some(&believed.today);
        // A sour smell has its step already: the rest that the advice gives.
        let cause_of = (trouble != Trouble::SourSmell).then_some(cause);
        let ask = (share < SURE && !asked_today && !lasts(trouble)).then_some((trouble, cause));
        return Some(Suspicion { cause: cause_of, ask, lasts: lasts(trouble) });
    }
    let (trouble, asked) = match (&talk.pending, settled.answered) {
        (Some(Pending { cause: Some(asked), .. }), Some(Topic::Cause)) => *asked,
        _ => return None,
    };
    let cause = match settled.agreed {
        Some(true) => Some(asked),
        denied => ranked(trouble).iter().map(|(cause, _)| *cause).find(|cause| denied.is_none() || *cause != asked),
    };
    Some(Suspicion { cause, ask: None, lasts: lasts(trouble) })
}

impl Suspicion {
    /// The step in words. What the ration says anyway, and what a fitter will see to, goes where room is short.
    pub fn pieces(&self, voice: &Voice) -> Vec<Piece> {
        let by_feeding = |cause| matches!(cause, Cause::LittleFed | Cause::Overfed | Cause::Souring | Cause::Cold);
        let step = self.cause.map(|cause| match by_feeding(cause) || self.lasts {
            true => Piece::new(Rank::Why, voice.cause(cause)),
            false => Piece::new(Rank::Question, voice.cause(cause)),
        });
        step.into_iter().chain(self.lasts.then(|| voice.must("call-fitter", &[]))).collect()
    }
}
