//! What the tests share: stores to run on, made fresh for each, and sayings with what they mean.

pub mod corpus;
pub mod postgres;
pub mod stores;
