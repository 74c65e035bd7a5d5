//! Every sentence that the bot can text, in every language, with the longest plausible values in its places and, where
//! that reads otherwise, with one of a thing: read as a family gets them. After a change, `INSTA_UPDATE=always cargo
//! test -p bellyful-tests --test languages` writes them anew: read what differs before you keep it.

use bellyful::lang::folders;
use bellyful::reply::catalog::{Catalog, Value, ids};
use bellyful::reply::samples::longest;
use std::fmt::Write;

#[test]
fn every_message_reads_as_it_was_last_read_by_us() {
    let folders = folders(None).expect("the built-in languages");
    let catalog = Catalog::new(&folders).expect("the built-in sentences");
    let many = longest();
    let one: Vec<(&'static str, Value)> = many
        .iter()
        .map(|(place, value)| (*place, if matches!(value, Value::Number(_)) { 1.0.into() } else { value.clone() }))
        .collect();
    let mut read = 0;
    for folder in folders.iter().filter(|folder| !folder.replies.is_empty()) {
        let mut said = String::new();
        for id in ids(&folder.replies) {
            let text = catalog.try_say(&folder.code, id, &many).unwrap_or_else(|| panic!("{} {id}", folder.code));
            let of_one = catalog.try_say(&folder.code, id, &one).filter(|of_one| *of_one != text);
            writeln!(said, "{id}: {text}").expect("a text takes more");
            if let Some(of_one) = of_one {
                writeln!(said, "{id} (1): {of_one}").expect("a text takes more");
            }
            read += 1;
        }
        insta::assert_snapshot!(folder.code.as_str(), said);
    }
    assert!(read >= 7 * 200, "only {read} messages were read");
}
