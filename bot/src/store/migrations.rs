//! The tables' history: every file of the dialect's folder, in the order of the number it starts with.

use include_dir::{Dir, include_dir};
use sqlx::SqlSafeStr;
use sqlx::migrate::{Migration, MigrationType, Migrator};

static SQLITE: Dir = include_dir!("$CARGO_MANIFEST_DIR/../migrations/sqlite");
static POSTGRES: Dir = include_dir!("$CARGO_MANIFEST_DIR/../migrations/postgres");

pub fn sqlite() -> Migrator {
    migrator(&SQLITE)
}

pub fn postgres() -> Migrator {
    migrator(&POSTGRES)
}

fn migrator(folder: &'static Dir) -> Migrator {
    let migrations = folder.files().map(|file| {
        let name = file.path().file_stem().and_then(|stem| stem.to_str()).expect("file names are plain");
        let (version, description) = name.split_once('_').expect("files are called NUMBER_VERB_NOUN.sql");
        Migration::new(
            version.parse().expect("file names start with a number"),
            description.replace('_', " ").into(),
            MigrationType::Simple,
            file.contents_utf8().expect("SQL is text").into_sql_str(),
            false,
        )
    });
    Migrator::with_migrations(migrations.collect())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_dialects_have_the_same_migrations() {
        let names =
            |migrator: Migrator| migrator.iter().map(|m| (m.version, m.description.to_string())).collect::<Vec<_>>();
        assert!(!names(sqlite()).is_empty());
        assert_eq!(names(sqlite()), names(postgres()));
    }
}
