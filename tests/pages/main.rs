//! Pages as a browser gets them: the demo's as a process, the staff pages with every role.

mod access;
mod api;
mod broadcast;
mod demo;
mod map;
mod photos;
mod programme;
mod setup;
mod work;
