//! What a message centre delivers: a text, a part of one, or a delivery report.
//!
//! Takes a `deliver_sm`; gives what it says, or why it says nothing to us. Source: SMPP 3.4, sections 4.6, 5.2.12,
//! 5.3.2 and appendix B; 3GPP TS 23.040, section 9.2.3.24 for the header of a part.

use super::super::Heard;
use super::super::call::utf16;
use super::super::link::{Came, PartOf};
use crate::reply::segments;
use crate::store::Receipt;
use rusmpp::pdus::DeliverSm;
use rusmpp::tlvs::TlvValue;
use rusmpp::values::{DataCoding, GsmFeatures, MessageState, MessageType, Ton};
use serde::Deserialize;

/// What the centre means by its default alphabet.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Alphabet {
    /// GSM 7-bit, one character an octet.
    #[default]
    Gsm7,
    Latin1,
}

/// Nothing for us: another will not come of asking again.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Unreadable {
    #[error("it is no text")]
    NoText,
    #[error("its header is broken")]
    Header,
    #[error("its letters do not fit their alphabet")]
    Letters,
}

/// Reads one delivery.
pub fn delivered(deliver: &DeliverSm, alphabet: Alphabet) -> Result<Came, Unreadable> {
    let payload = deliver.tlvs().iter().find_map(|tlv| match tlv.value() {
        Some(TlvValue::MessagePayload(payload)) => Some(payload.value.as_ref()),
        _ => None,
    });
    let bytes: &[u8] = payload.unwrap_or(deliver.short_message().as_ref());
    if deliver.esm_class.message_type == MessageType::ShortMessageContainsMCDeliveryReceipt {
        return report(deliver, bytes);
    }
    let headed =
        matches!(deliver.esm_class.gsm_features, GsmFeatures::UdhiIndicator | GsmFeatures::SetUdhiAndReplyPath);
    let (part, bytes) = if headed { header(bytes)? } else { (None, bytes) };
    let heard = Heard {
        from: Some(number(deliver.source_addr_ton, deliver.source_addr.as_str())),
        to: Some(number(deliver.dest_addr_ton, deliver.destination_addr.as_str())),
        text: text(deliver.data_coding, alphabet, bytes)?,
        ..Heard::default()
    };
    Ok(match part.or_else(|| in_tlvs(deliver)) {
        Some(part) if part.total > 1 => Came::Part(heard, part),
        _ => Came::Text(heard),
    })
}

fn number(ton: Ton, number: &str) -> String {
    let international = ton == Ton::International && !number.starts_with('+');
    if international { format!("+{number}") } else { number.to_owned() }
}

fn text(coding: DataCoding, alphabet: Alphabet, bytes: &[u8]) -> Result<String, Unreadable> {
    let latin1 = || Ok(bytes.iter().map(|&byte| char::from(byte)).collect());
    match coding {
        DataCoding::McSpecific if alphabet == Alphabet::Gsm7 => segments::from_gsm7(bytes).ok_or(Unreadable::Letters),
        DataCoding::McSpecific | DataCoding::Ia5 | DataCoding::Latin1 => latin1(),
        DataCoding::Ucs2 => utf16(bytes).ok_or(Unreadable::Letters),
        _ => Err(Unreadable::NoText),
    }
}

/// Takes the user data header off; gives what it says of parts, if anything.
fn header(bytes: &[u8]) -> Result<(Option<PartOf>, &[u8]), Unreadable> {
    let (&length, rest) = bytes.split_first().ok_or(Unreadable::Header)?;
    let (mut elements, body) = rest.split_at_checked(length.into()).ok_or(Unreadable::Header)?;
    let mut part = None;
    while let [id, length, more @ ..] = elements {
        let (value, more) = more.split_at_checked((*length).into()).ok_or(Unreadable::Header)?;
        match (id, value) {
            (0x00, &[reference, total, number]) => {
                part = Some(PartOf { reference: reference.into(), number, total });
            }
            (0x08, &[high, low, total, number]) => {
                part = Some(PartOf { reference: u16::from_be_bytes([high, low]), number, total });
            }
            _ => {}
        }
        elements = more;
    }
    // A part that cannot be one of so many stands alone.
    Ok((part.filter(|part| (1..=part.total).contains(&part.number)), body))
}

/// The other way to say it.
fn in_tlvs(deliver: &DeliverSm) -> Option<PartOf> {
    let (mut reference, mut total, mut number) = (None, None, None);
    for tlv in deliver.tlvs() {
        match tlv.value() {
            Some(TlvValue::SarMsgRefNum(value)) => reference = Some(*value),
            Some(TlvValue::SarTotalSegments(value)) => total = Some(*value),
            Some(TlvValue::SarSegmentSeqnum(value)) => number = Some(*value),
            _ => {}
        }
    }
    let part = PartOf { reference: reference?, total: total?, number: number? };
    (1..=part.total).contains(&part.number).then_some(part)
}

/// A report says id and state in fields of their own, or in words, or both.
fn report(deliver: &DeliverSm, words: &[u8]) -> Result<Came, Unreadable> {
    let words = String::from_utf8_lossy(words);
    let word =
        |name: &str| words.split_whitespace().find_map(|word| word.strip_prefix(name)).filter(|word| !word.is_empty());
    let (mut id, mut state) = (None, None);
    for tlv in deliver.tlvs() {
        match tlv.value() {
            Some(TlvValue::ReceiptedMessageId(value)) => id = Some(value.as_str().to_owned()),
            Some(TlvValue::MessageState(value)) => state = Some(*value),
            _ => {}
        }
    }
    let id = id.or_else(|| word("id:").map(str::to_owned)).ok_or(Unreadable::NoText)?;
    let receipt = match (state, word("stat:")) {
        (Some(MessageState::Delivered), _) | (None, Some("DELIVRD")) => Receipt::Delivered,
        (
            Some(MessageState::Expired | MessageState::Deleted | MessageState::Undeliverable | MessageState::Rejected),
            _,
        )
        | (None, Some("EXPIRED" | "DELETED" | "UNDELIV" | "REJECTD")) => Receipt::Failed,
        // On its way: the last word is still to come.
        _ => return Ok(Came::Report { ids: Vec::new(), receipt: Receipt::Failed }),
    };
    Ok(Came::Report { ids: forms(&id), receipt })
}

/// Some centres write an id in hexadecimal when they give it and in decimal when they report, or the other way.
/// Common practice, no source.
fn forms(id: &str) -> Vec<String> {
    let mut forms = vec![id.to_owned()];
    forms.extend(id.parse::<u64>().ok().map(|number| format!("{number:x}")));
    forms.extend(id.parse::<u64>().ok().map(|number| format!("{number:X}")));
    forms.extend(u64::from_str_radix(id, 16).ok().map(|number| number.to_string()));
    forms.dedup();
    forms
}

#[cfg(test)]
mod tests {
    use super::*;
    use rusmpp::tlvs::MessageDeliveryRequestTlvValue as Tlv;
    use rusmpp::types::{COctetString, OctetString};
    use rusmpp::values::EsmClass;

    fn deliver(esm_class: u8, coding: u8, message: &[u8]) -> DeliverSm {
        DeliverSm::builder()
            .source_addr_ton(Ton::International)
            .source_addr(COctetString::from_string("15550100".to_owned()).expect("a number"))
            .destination_addr(COctetString::from_string("12345".to_owned()).expect("a number"))
            .esm_class(EsmClass::from(esm_class))
            .data_coding(DataCoding::from(coding))
            .short_message(OctetString::from_slice(message).expect("short"))
            .build()
    }

    fn heard(text: &str) -> Heard {
        let (from, to) = (Some("+15550100".to_owned()), Some("12345".to_owned()));
        Heard { from, to, text: text.to_owned(), ..Heard::default() }
    }

    #[track_caller]
    fn check(deliver: DeliverSm, expected: Result<Came, Unreadable>) {
        assert_eq!(delivered(&deliver, Alphabet::Gsm7), expected);
    }

    #[test]
    fn texts_are_read_in_each_alphabet() {
        check(deliver(0, 0, b"a\x1b\x65 \x02"), Ok(Came::Text(heard("a€ $"))));
        check(deliver(0, 1, b"fed 3 kg"), Ok(Came::Text(heard("fed 3 kg"))));
        check(deliver(0, 3, b"\xe9t\xe9"), Ok(Came::Text(heard("été"))));
        check(deliver(0, 8, b"\x09\x28\x09\x2e\xd8\x3d\xdd\x25"), Ok(Came::Text(heard("नम🔥"))));
        check(deliver(0, 8, b"\x09"), Err(Unreadable::Letters));
        check(deliver(0, 0, b"\x80"), Err(Unreadable::Letters));
        check(deliver(0, 4, b"\x01\x02"), Err(Unreadable::NoText));
        assert_eq!(delivered(&deliver(0, 0, b"\xe9"), Alphabet::Latin1), Ok(Came::Text(heard("é"))));
    }

    #[test]
    fn parts_are_told_by_either_header_or_by_fields() {
        let part = |reference, number, total| PartOf { reference, number, total };
        check(deliver(0x40, 0, b"\x05\x00\x03\x07\x03\x02b"), Ok(Came::Part(heard("b"), part(7, 2, 3))));
        check(deliver(0x40, 0, b"\x06\x08\x04\x01\x07\x03\x02b"), Ok(Came::Part(heard("b"), part(0x107, 2, 3))));
        // A port beside it.
        check(
            deliver(0x40, 0, b"\x0b\x05\x04\x00\x00\x00\x00\x00\x03\x07\x02\x01b"),
            Ok(Came::Part(heard("b"), part(7, 1, 2))),
        );
        check(deliver(0x40, 0, b"\x05\x00\x03\x07\x01\x01b"), Ok(Came::Text(heard("b"))));
        check(deliver(0x40, 0, b"\x05\x00\x03\x07\x02\x03b"), Ok(Came::Text(heard("b"))));
        check(deliver(0x40, 0, b"\x09\x00\x03"), Err(Unreadable::Header));
        check(deliver(0x40, 0, b""), Err(Unreadable::Header));
        let mut fields = deliver(0, 0, b"b");
        fields.set_tlvs(vec![Tlv::SarMsgRefNum(300), Tlv::SarTotalSegments(2), Tlv::SarSegmentSeqnum(2)]);
        check(fields, Ok(Came::Part(heard("b"), part(300, 2, 2))));
    }

    #[test]
    fn reports_are_told_in_words_or_by_fields() {
        let report =
            |ids: &[&str], receipt| Ok(Came::Report { ids: ids.iter().map(|id| id.to_string()).collect(), receipt });
        let words = |state: &str| {
            format!("id:9z sub:001 dlvrd:001 submit date:2603020630 done date:2603020631 stat:{state} err:000 text:x")
        };
        check(deliver(4, 0, words("DELIVRD").as_bytes()), report(&["9z"], Receipt::Delivered));
        check(deliver(4, 0, words("UNDELIV").as_bytes()), report(&["9z"], Receipt::Failed));
        check(deliver(4, 0, words("ENROUTE").as_bytes()), report(&[], Receipt::Failed));
        check(deliver(4, 0, b"nothing"), Err(Unreadable::NoText));
        let mut fields = deliver(4, 0, b"");
        fields.set_tlvs(vec![
            Tlv::ReceiptedMessageId(COctetString::from_string("10".to_owned()).expect("an id")),
            Tlv::MessageState(MessageState::Delivered),
        ]);
        check(fields, report(&["10", "a", "A", "16"], Receipt::Delivered));
    }
}
