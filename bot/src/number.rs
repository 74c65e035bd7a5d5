//! Phone numbers: which country one is from.
//!
//! Source of the prefixes: ITU-T E.164 country codes, through the `phonelib` library.

/// ISO 3166 code of an international number's country; `None` for short codes, names and unknown prefixes.
pub fn country(number: &str) -> Option<&'static str> {
    let digits = number.strip_prefix('+')?;
    let plausible = (7..=15).contains(&digits.len()) && digits.bytes().all(|b| b.is_ascii_digit());
    plausible.then(|| phonelib::extract_country(number)).flatten().map(|country| country.code)
}
#[cfg(test)]
mod tests {
    use super::*;

    /// Source: ITU-T E.164 assigned country codes.
    #[test]
    fn a_number_tells_its_country() {
        assert_eq!(country("+254712345678"), Some("KE"));
        assert_eq!(country("+919812345678"), Some("IN"));
        assert_eq!(country("+18095551234"), Some("DO"));
    }

    #[test]
    fn short_codes_and_names_have_none() {
        for number in ["12345", "Kisumu", "+12", "", "+1234567890123456", "0712345678"] {
            assert_eq!(country(number), None, "{number}");
        }
    }
}
