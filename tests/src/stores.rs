//! Stores to run a test on: in memory, in a file, and on PostgreSQL where it is installed.

use crate::postgres::Postgres;
use bellyful::store::Store;
use std::future::Future;
use std::path::PathBuf;
use std::sync::atomic::{AtomicU32, Ordering};

/// A folder that nobody else uses, open to all so that a server under another user can work in it.
pub fn fresh_folder(name: &str) -> PathBuf {
    static NEXT: AtomicU32 = AtomicU32::new(0);
    let number = NEXT.fetch_add(1, Ordering::Relaxed);
    let folder = std::env::temp_dir().join(format!("bellyful-{name}-{}-{number}", std::process::id()));
    std::fs::create_dir_all(&folder).expect("the temporary folder can be written to");
    let open = std::os::unix::fs::PermissionsExt::from_mode(0o777);
    std::fs::set_permissions(&folder, open).expect("our own folder");
    folder
}

/// URLs of new, empty databases of every kind that this machine can run.
pub fn fresh_urls() -> Vec<String> {
    let file = fresh_folder("sqlite").join("bellyful.db");
    let mut urls = vec![format!("sqlite:{}", file.display())];
    urls.extend(Postgres::shared().map(Postgres::database));
    urls
}

/// Runs the same test on every kind of store.
pub async fn on_each_store<F: Future<Output = ()>>(test: impl Fn(Store) -> F) {
    test(Store::in_memory().await.expect("a store in memory")).await;
    for url in fresh_urls() {
        eprintln!("on {}", url.split(':').next().expect("a URL has a scheme"));
        let store = Store::open(&url).await.expect("a new store");
        test(store.clone()).await;
        store.close().await;
    }
}
