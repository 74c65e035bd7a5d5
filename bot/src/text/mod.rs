//! Text to reading: what one text states, asks and orders, in any language; nothing that the model concludes.

pub mod reading;
