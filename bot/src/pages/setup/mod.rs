//! People and set-up: staff and roles, new households, gateways, numbers to call, words of the district, how long
//! texts are kept.
//!
//! Takes forms; keeps what they say, with who said it. Nothing here decides what a family is told.

mod family;
mod people;
mod rules;
mod tokens;
mod wording;

use super::access::{Bar, Role, Worker};
use super::{Broken, Pages, Tongue, page, trail};
use crate::reply::word::Voice;
use crate::store::{EMERGENCY, FeedWord, KEEP_TEXTS_DAYS, Member, NEEDS_PIN, PROGRAMME, Traffic};
use askama::Template;
use axum::Extension;
use axum::extract::State;
use axum::response::Response;
use bellyful_core::fact::Walls;
use bellyful_core::feeds::Feed;
use chrono::{DateTime, Duration, Utc};
pub use family::household;
pub use people::{gateway, number, staff};
pub use rules::{emergency, keeping, pin, word};
use std::collections::BTreeMap;
use std::sync::Arc;
pub use tokens::{change as change_tokens, tokens};
pub use wording::wording;

/// Acts of staff shown.
const TRAIL: u32 = 50;

/// One of a list.
struct Choice {
    id: String,
    name: String,
}

struct StaffRow {
    name: String,
    phone: String,
    gateway: String,
    lang: String,
    role: Role,
    logs_in: bool,
    has_pin: bool,
}

impl StaffRow {
    fn role_long(&self) -> &'static str {
        self.role.long_name()
    }
    fn phoned(&self, tongue: &Tongue) -> String {
        let values = [("number", self.phone.as_str().into()), ("gateway", self.gateway.as_str().into())];
        tongue.with("staff-phone", &values)
    }
}

struct GatewayRow {
    name: String,
    class: &'static str,
    state: String,
    texts_in: i64,
    last_in: String,
    sent: i64,
    delivered: i64,
    lost: i64,
    waiting: i64,
}

struct NumberRow {
    country: String,
    number: String,
    own: bool,
}

#[derive(Template)]
#[template(path = "setup.html")]
struct Setup {
    tongue: Tongue,
    worker: Bar,
    notice: String,
    members: Vec<StaffRow>,
    langs: Vec<Choice>,
    gateways: Vec<String>,
    traffic: Vec<GatewayRow>,
    numbers: Vec<NumberRow>,
    roles: [Role; 3],
    walls: Vec<Choice>,
    words: Vec<FeedWord>,
    feeds: Vec<Choice>,
    keep_days: String,
    needs_pin: bool,
    trail: Vec<trail::Line>,
}

pub async fn show(State(pages): State<Arc<Pages>>, Extension(worker): Extension<Worker>) -> Result<Response, Broken> {
    whole(&pages, &worker, String::new()).await
}

/// The page, under a line that says what was just done.
async fn whole(pages: &Pages, worker: &Worker, notice: String) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let settings = pages.store.settings().await?;
    let traffic = pages.store.traffic(now - Duration::days(1), now).await?;
    let lang_name = |code: &str| pages.mind.catalog.say(code, "language-name", &[]);
    let (tongue, voice) = (pages.tongue(worker), Voice::in_lang(&pages.mind.catalog, &worker.lang));
    page(&Setup {
        roles: Role::ALL,
        walls: Walls::ALL
            .iter()
            .map(|walls| Choice { id: walls.id().into(), name: tongue.say(&format!("walls-{walls}")) })
            .collect(),
        worker: worker.bar("/setup"),
        notice,
        members: pages.store.members().await?.into_iter().map(|member| staff_row(member, lang_name)).collect(),
        langs: pages.mind.catalog.languages().map(|code| Choice { id: code.into(), name: lang_name(code) }).collect(),
        gateways: pages.gateways.clone(),
        traffic: gateway_rows(&tongue, &pages.gateways, traffic, now),
        numbers: number_rows(pages, &settings),
        words: pages.store.feed_words().await?,
        feeds: Feed::ALL
            .iter()
            .map(|feed| Choice { id: feed.id().into(), name: tongue.say(&format!("feed-{feed}")) })
            .collect(),
        needs_pin: settings.contains_key(NEEDS_PIN),
        keep_days: settings.get(KEEP_TEXTS_DAYS).cloned().unwrap_or_default(),
        trail: trail::lines(&tongue, &voice, pages.store.trail(PROGRAMME, TRAIL).await?),
        tongue,
    })
}

fn staff_row(member: Member, lang_name: impl Fn(&str) -> String) -> StaffRow {
    StaffRow {
        name: member.staff.name,
        phone: member.staff.phone.unwrap_or_default(),
        gateway: member.staff.gateway.unwrap_or_default(),
        lang: lang_name(&member.staff.lang),
        role: member.role,
        logs_in: member.logs_in,
        has_pin: member.has_pin,
    }
}

/// Waiting longer than this, a gateway is in trouble. Source: our choice.
const WAITS_LONG: Duration = Duration::minutes(5);

fn gateway_rows(
    tongue: &Tongue,
    names: &[String],
    mut traffic: BTreeMap<String, Traffic>,
    now: DateTime<Utc>,
) -> Vec<GatewayRow> {
    for name in names {
        traffic.entry(name.clone()).or_default();
    }
    let row = |(name, seen): (String, Traffic)| {
        let stuck = seen.waiting_since.is_some_and(|since| now - since > WAITS_LONG);
        let (class, state) = match (stuck, seen.trouble) {
            (true, Some(why)) => ("red", tongue.of_name("traffic-stuck-why", why)),
            (true, None) => ("red", tongue.say("traffic-stuck")),
            (false, _) if seen.lost > 0 && seen.lost * 10 >= seen.sent => ("amber", tongue.say("traffic-many-lost")),
            _ if seen.texts_in + seen.sent == 0 => ("blue", tongue.say("traffic-quiet")),
            _ => ("green", tongue.say("traffic-well")),
        };
        GatewayRow {
            name,
            class,
            state,
            texts_in: seen.texts_in,
            last_in: seen.last_in.map_or_else(|| tongue.say("traffic-never"), |at| ago(tongue, now - at)),
            sent: seen.sent,
            delivered: seen.delivered,
            lost: seen.lost,
            waiting: seen.waiting,
        }
    };
    traffic.into_iter().map(row).collect()
}

fn ago(tongue: &Tongue, passed: Duration) -> String {
    match passed.num_minutes() {
        ..1 => tongue.say("ago-now"),
        minutes @ 1..60 => tongue.count("ago-minutes", minutes),
        minutes => tongue.count("ago-hours", minutes / 60),
    }
}

fn number_rows(pages: &Pages, settings: &BTreeMap<String, String>) -> Vec<NumberRow> {
    let mut numbers: BTreeMap<String, (String, bool)> =
        pages.mind.emergency_numbers().map(|(country, number)| (country.into(), (number.into(), false))).collect();
    for (name, number) in settings {
        if let Some(country) = name.strip_prefix(EMERGENCY) {
            numbers.insert(country.to_owned(), (number.clone(), true));
        }
    }
    let row = |(country, (number, own))| NumberRow { country, number, own };
    numbers.into_iter().map(row).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mind::Mind;

    #[test]
    fn a_gateway_whose_texts_wait_is_red_and_one_nobody_used_is_not() {
        let tongue = Tongue::of(&Arc::new(Mind::new(None, 1).expect("sound words")), "en");
        let now = DateTime::from_timestamp(1_780_000_000, 0).expect("in range");
        let check = |traffic: Traffic, expected| {
            let rows = gateway_rows(&tongue, &[], [("plain".to_owned(), traffic)].into(), now);
            assert_eq!(rows[0].class, expected, "{}", rows[0].state);
        };
        let waits = |minutes| Traffic {
            waiting: 3,
            waiting_since: Some(now - Duration::minutes(minutes)),
            ..Traffic::default()
        };
        check(waits(20), "red");
        check(Traffic { sent: 5, ..waits(1) }, "green");
        check(Traffic { sent: 20, lost: 4, ..Traffic::default() }, "amber");
        check(Traffic::default(), "blue");
        assert_eq!(gateway_rows(&tongue, &["other".to_owned()], BTreeMap::new(), now)[0].name, "other");
    }
}
