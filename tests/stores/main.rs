//! One behaviour, three stores: every row here runs in memory, in a SQLite file and on PostgreSQL.

mod forgetting;
mod keeping;
mod night;
mod order;
mod outbox;
mod people;
