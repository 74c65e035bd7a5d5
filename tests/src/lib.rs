//! What the tests share: stores to run on, made fresh for each.

pub mod postgres;
pub mod stores;
