//! The conversation: danger first, then orders to the bot, answers to its questions, and what it asks next.
//!
//! Takes the situation and a reading; gives decisions. Knows when to speak, never how a digester works.

mod alarm;
mod ask;
mod controls;
mod settle;

pub use alarm::{AGAIN_AFTER, alarm, alarm_text, tell_staff};
pub use ask::next_question;
pub use controls::obey;
pub use settle::{Settled, first, settle};
