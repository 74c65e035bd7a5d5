//! The digester itself: what happened to it, what it is made of, what it must be like inside, and what to do next.
//!
//! Reading order, each room eating what the one before gives:
//! [`units`] → [`fact`] → [`site`] → [`feeds`] → [`climate`] → [`warmth`] → [`gas`] → [`ledger`] → [`twin`] →
//! [`limits`] → [`advice`] → [`yields`].
//!
//! This crate knows no I/O, no clock and no language: time and randomness are handed in, and the same input gives
//! the same bytes on any machine (no fused multiply-add, `libm` for exp and log, lanes of fixed number).

pub mod adm1;
pub mod advice;
pub mod climate;
pub mod fact;
pub mod feeds;
pub mod gas;
pub mod ids;
pub mod lab;
pub mod ledger;
pub mod limits;
pub mod site;
pub mod solve;
pub mod twin;
pub mod units;
pub mod warmth;
pub mod yields;
