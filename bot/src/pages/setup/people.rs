//! Staff: added, changed, given a password, freed of a PIN, taken off.

use super::super::access::{Role, Worker};
use super::super::tongue::counted;
use super::super::{Broken, Pages, hash};
use super::whole;
use crate::deed::Did;
use crate::store::NewStaff;
use axum::Extension;
use axum::extract::{Form, State};
use axum::response::Response;
use serde::Deserialize;
use std::sync::Arc;

#[derive(Deserialize)]
pub struct Member {
    act: String,
    name: String,
    #[serde(default)]
    phone: String,
    #[serde(default)]
    gateway: String,
    #[serde(default)]
    lang: String,
    #[serde(default)]
    role: String,
}

const NAME_MOST: usize = 40;

/// Changes the staff. Errors: a sentence on what was typed; nothing is changed then.
pub async fn staff(
    State(pages): State<Arc<Pages>>,
    Extension(worker): Extension<Worker>,
    Form(form): Form<Member>,
) -> Result<Response, Broken> {
    let now = (pages.clock)();
    let name = form.name.trim();
    if name.is_empty() || name.chars().count() > NAME_MOST {
        return Err(Broken::form("form-name-letters", [("most", counted(NAME_MOST))]));
    }
    let tongue = pages.tongue(&worker);
    let members = pages.store.members().await?;
    let known = members.iter().find(|member| member.staff.name == name);
    let leads = members.iter().filter(|member| member.role == Role::Lead && member.logs_in).count();
    let last_lead = known.is_some_and(|member| member.role == Role::Lead && member.logs_in) && leads == 1;
    let own = || name.to_owned();
    let (notice, did) = match (form.act.as_str(), known) {
        ("add", Some(_)) => {
            return Err(Broken::form("form-staff-there", [("name", name.into())]));
        }
        ("add", None) => {
            let password = password();
            let staff = read(&pages, &form, name, &members, Some(hashed(&password)?))?;
            pages.store.add_staff(&staff).await?;
            (
                tongue.with("said-password", &[("name", name.into()), ("password", password.into())]),
                Did::AddedStaff { name: own(), role: Role::of(&staff.role) },
            )
        }
        (_, None) => return Err(Broken::form("form-staff-none", [("name", name.into())])),
        ("change", Some(member)) => {
            let role = role(&form.role)?;
            let lang = language(&pages, &form.lang)?;
            if last_lead && role != Role::Lead {
                return Err(Broken::form("form-staff-last", [("name", name.into())]));
            }
            pages.store.add_staff(&NewStaff { role: role.id().into(), lang: lang.clone(), ..same(member) }).await?;
            {
                let values = [("name", name.into()), ("role", tongue.say(role.name()).into())];
                let mut said = tongue.with("said-role", &values);
                if lang != member.staff.lang {
                    let lang_name = pages.mind.catalog.say(&lang, "language-name", &[]);
                    let values = [("name", name.into()), ("lang", lang_name.into())];
                    said = format!("{said} {}", tongue.with("said-lang", &values));
                }
                (said, Did::ChangedStaff { name: own(), role })
            }
        }
        ("password", Some(member)) => {
            let password = password();
            pages.store.add_staff(&NewStaff { password_hash: Some(hashed(&password)?), ..same(member) }).await?;
            (
                tongue.with("said-new-password", &[("name", name.into()), ("password", password.into())]),
                Did::GavePassword { name: own() },
            )
        }
        ("pin", Some(_)) => {
            pages.store.reset_pin(name).await?;
            (tongue.of_name("said-pin-free", name), Did::FreedOfPin { name: own() })
        }
        ("remove", Some(_)) if last_lead => {
            return Err(Broken::form("form-staff-last", [("name", name.into())]));
        }
        ("remove", Some(_)) => {
            pages.store.remove_staff(name).await?;
            (tongue.of_name("said-off", name), Did::TookOffStaff { name: own() })
        }
        _ => return Err(Broken::Form("form-choose".into())),
    };
    pages.store.write_down_alone(&did.by(&worker.name), now).await?;
    whole(&pages, &worker, notice).await
}

fn same(member: &crate::store::Member) -> NewStaff {
    let staff = member.staff.clone();
    NewStaff {
        name: staff.name,
        phone: staff.phone,
        gateway: staff.gateway,
        lang: staff.lang,
        role: member.role.id().into(),
        password_hash: None,
    }
}

fn role(id: &str) -> Result<Role, Broken> {
    let found = Role::ALL.into_iter().find(|role| role.id() == id);
    found.ok_or_else(|| Broken::Form("form-choose".into()))
}

fn read(
    pages: &Pages,
    form: &Member,
    name: &str,
    members: &[crate::store::Member],
    password_hash: Option<String>,
) -> Result<NewStaff, Broken> {
    let lang = language(pages, &form.lang)?;
    let phone = number(&form.phone)?;
    if phone.is_some() && members.iter().any(|member| member.staff.phone == phone) {
        return Err(Broken::Form("form-staff-number".into()));
    }
    let gateway = match &phone {
        None => None,
        Some(_) => Some(gateway(pages, &form.gateway)?),
    };
    Ok(NewStaff { name: name.to_owned(), phone, gateway, lang, role: role(&form.role)?.id().into(), password_hash })
}

fn language(pages: &Pages, code: &str) -> Result<String, Broken> {
    if pages.mind.catalog.speaks(code) { Ok(code.to_owned()) } else { Err(Broken::Form("form-choose".into())) }
}

/// A gateway that there is.
pub fn gateway(pages: &Pages, name: &str) -> Result<String, Broken> {
    let found = pages.gateways.iter().find(|gateway| *gateway == name);
    found.cloned().ok_or_else(|| Broken::Form("form-choose".into()))
}

/// A number in the form that gateways write it; `None` when none was typed.
pub fn number(typed: &str) -> Result<Option<String>, Broken> {
    let number: String = typed.chars().filter(|c| !matches!(c, ' ' | '-' | '(' | ')' | '.')).collect();
    if number.is_empty() {
        return Ok(None);
    }
    let digits = number.strip_prefix('+').unwrap_or(&number);
    // The most and fewest digits of an international number: ITU-T E.164.
    if !number.starts_with('+') || !(7..=15).contains(&digits.len()) || !digits.bytes().all(|b| b.is_ascii_digit()) {
        return Err(Broken::Form("form-number-shape".into()));
    }
    Ok(Some(number))
}

fn password() -> String {
    hex::encode(rand::random::<[u8; 6]>())
}

fn hashed(password: &str) -> Result<String, Broken> {
    hash(password).map_err(|error| Broken::Table(error.to_string()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_taken_as_people_write_them_and_kept_as_gateways_do() {
        let check = |typed: &str, expected: Option<Option<&str>>| {
            assert_eq!(number(typed).ok(), expected.map(|number| number.map(str::to_owned)), "{typed}");
        };
        check("+254 700 000-000", Some(Some("+254700000000")));
        check("  ", Some(None));
        check("0700000000", None);
        check("+12", None);
        check("+2547000000000000", None);
        check("+25470000000x", None);
    }
}
