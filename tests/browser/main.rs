//! A walk through every page in a real browser, as each role, in two languages, on a phone and on a desk; see `walk.mjs`.
//!
//! Needs Chromium and node (Debian packages) and `npm ci` in this folder, which `.ci/long` sees to; a walk that was not
//! taken is no walk passed.
//! `BELLYFUL_PICTURES=folder` keeps a picture of each page.

use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// A filled demo, ended with the test.
struct Demo(Child);

impl Drop for Demo {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

fn found(names: &[&str]) -> Option<PathBuf> {
    let path = std::env::var_os("PATH")?;
    std::env::split_paths(&path)
        .flat_map(|folder| names.iter().map(move |name| folder.join(name)))
        .find(|at| at.is_file())
}

/// How long the invented households take to live through their history, on a busy machine.
const FILLING_MOST: Duration = Duration::from_secs(600);

#[test]
#[ignore = "needs Chromium, node and its modules; .ci/long installs them"]
fn every_page_is_sound_in_a_real_browser_for_every_role() {
    let here = Path::new(env!("CARGO_MANIFEST_DIR")).join("browser");
    let modules = std::env::var_os("BELLYFUL_BROWSER_MODULES").map_or(here.clone(), PathBuf::from);
    let chromium = found(&["chromium", "chromium-browser"]).expect("the Debian package chromium");
    let node = found(&["node"]).expect("the Debian package nodejs");
    assert!(modules.join("node_modules/playwright-core").is_dir(), "run `npm ci` in {}", here.display());
    let (mut demo, said) = demo();
    let url = said.iter().find_map(|line| line.strip_prefix("ready ")).expect("`ready URL`").to_owned();
    let staff = said.iter().find_map(|line| line.strip_prefix("staff ")).expect("`staff USER PASSWORD`");
    let (name, password) = staff.split_once(' ').expect("a user and a password");
    let started = Instant::now();
    let mut filled = false;
    while !filled {
        assert!(started.elapsed() < FILLING_MOST, "the history is not whole after {FILLING_MOST:?}");
        std::thread::sleep(Duration::from_secs(1));
        assert!(demo.0.try_wait().expect("is asked").is_none(), "the demo ended");
        let page = Command::new(&node)
            .args(["-e", "fetch(process.argv[1]).then(r => r.text()).then(t => console.log(t))", &format!("{url}/try")])
            .output()
            .expect("node runs");
        filled = String::from_utf8_lossy(&page.stdout).contains("action=\"/try/day\"");
    }
    let walk = Command::new(node)
        .arg(here.join("walk.mjs"))
        .env("MODULES", modules)
        .env("URL", &url)
        .env("STAFF_NAME", name)
        .env("PASSWORD", password)
        .env("CHROMIUM", chromium)
        .env("PICTURES", std::env::var_os("BELLYFUL_PICTURES").unwrap_or_default())
        .output()
        .expect("node runs");
    let (told, broke) = (String::from_utf8_lossy(&walk.stdout), String::from_utf8_lossy(&walk.stderr));
    let walked = told.lines().find_map(|line| line.strip_prefix("walked ")).and_then(|n| n.parse().ok()).unwrap_or(0);
    assert!(walk.status.success() && walked > 180, "{told}{broke}");
    println!("{walked} pages walked");
}

/// The demo, and the two lines it says at the start.
fn demo() -> (Demo, Vec<String>) {
    let program = bellyful_tests::server::program();
    let mut child = Command::new(program)
        .args(["demo", "--listen", "127.0.0.1:0"])
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .expect("the program starts");
    let out = child.stdout.take().expect("piped");
    let lines =
        std::io::BufRead::lines(std::io::BufReader::new(out)).take(2).collect::<Result<_, _>>().expect("two lines");
    (Demo(child), lines)
}
