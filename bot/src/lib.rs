//! Bellyful: from a text about a digester to one with the next right step.

pub mod household;
pub mod message;
pub mod places;
pub mod read_command;
pub mod simulate;
pub mod store;
pub mod text;
