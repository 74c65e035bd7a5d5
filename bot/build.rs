//! Builds again when a migration, a word list or a reply changes: they are compiled in.
fn main() {
    println!("cargo:rerun-if-changed=../migrations");
    println!("cargo:rerun-if-changed=lang");
}
