//! Advice to words: what the bot says, in the family's language and measures, in one segment where it can be.

pub mod amounts;
pub mod answer;
mod beside;
pub mod catalog;
mod cause;
pub mod compose;
mod doubt;
pub mod samples;
pub mod segments;
pub mod word;

pub use answer::reply;
pub use beside::heals;
