//! What the tests share: stores to run on, made fresh for each, and sayings with what they mean.

pub mod corpus;
pub mod day;
pub mod network;
pub mod outside;
pub mod postgres;
pub mod server;
pub mod smsc;
pub mod stores;
