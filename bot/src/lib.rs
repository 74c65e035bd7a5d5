//! Bellyful: from a text about a digester to one with the next right step.

pub mod app;
pub mod clock;
pub mod config;
pub mod converse;
pub mod gateway;
pub mod household;
pub mod jobs;
pub mod lang;
pub mod message;
pub mod mind;
pub mod number;
pub mod places;
pub mod read_command;
pub mod record;
pub mod reply;
pub mod setup;
pub mod simulate;
pub mod staff;
pub mod store;
pub mod talk;
pub mod text;
pub mod turn;
pub mod twins;
pub mod web;
pub mod workbench;
