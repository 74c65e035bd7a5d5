#![no_main]
//! See `bellyful_tests::outside`.
use bellyful_tests::outside::TARGETS;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| (TARGETS[13].run)(bytes));
