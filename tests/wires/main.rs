//! The plain gateway end to end: the real server as a process, a phone network that misbehaves, kill -9. And field
//! workers by text.

mod answers;
mod door;
mod gateways;
mod hook;
mod promise;
mod silence;
mod smpp;
mod staff;
mod trouble;
