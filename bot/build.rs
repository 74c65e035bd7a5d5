//! Builds again when a migration changes: they are compiled in.
fn main() {
    println!("cargo:rerun-if-changed=../migrations");
}
