use super::*;

/// Which town a text's words give; `None` where none should be taken.
fn check(said: &str, hint: Option<&str>, expected: Option<(&str, &str)>) {
    let found = find(said, hint);
    let got = found.as_ref().map(|found| (found.place.name.as_str(), found.place.country.as_str()));
    assert_eq!(got, expected, "{said:?} {hint:?}");
}

#[test]
fn a_name_is_found_whatever_its_case_and_marks() {
    check("Kisumu", None, Some(("Kisumu", "KE")));
    check("KISUMU!!", Some("KE"), Some(("Kisumu", "KE")));
    check("quixada", Some("BR"), Some(("Quixadá", "BR")));
    check("cochabamba", None, Some(("Cochabamba", "BO")));
    check("São Paulo", Some("BR"), Some(("São Paulo", "BR")));
    check("sao paulo", None, Some(("São Paulo", "BR")));
}

#[test]
fn the_country_decides_between_towns_of_one_name_and_else_the_biggest_wins() {
    check("La Paz", None, Some(("La Paz", "BO")));
    check("La Paz", Some("MX"), Some(("La Paz", "MX")));
    check("La Paz, Mexico", Some("BO"), Some(("La Paz", "MX")));
    check("Santo Domingo", Some("DO"), Some(("Santo Domingo", "DO")));
    check("mbale uganda", Some("KE"), Some(("Mbale", "UG")));
    check("Mbale", Some("KE"), Some(("Mbale", "KE")));
    check("Kisumu Kenia", None, Some(("Kisumu", "KE")));
}

#[test]
fn words_around_the_name_are_no_part_of_it() {
    check("near Machakos town", Some("KE"), Some(("Machakos", "KE")));
    check("we live close to Nakuru", Some("KE"), Some(("Nakuru", "KE")));
    check("cerca de Chinandega", Some("NI"), Some(("Chinandega", "NI")));
    check("près de Ziguinchor", Some("SN"), Some(("Ziguinchor", "SN")));
    check("perto de Chimoio", Some("MZ"), Some(("Chimoio", "MZ")));
    check("karibu na Mbeya", Some("TZ"), Some(("Mbeya", "TZ")));
    check("sikar ke paas", Some("IN"), Some(("Sīkar", "IN")));
    check("Hato Mayor", Some("DO"), Some(("Hato Mayor del Rey", "DO")));
}

#[test]
fn a_slip_of_the_pen_is_forgiven_and_told() {
    for (said, hint, name) in [
        ("Eldorett", "KE", "Eldoret"),
        ("Kissumu", "KE", "Kisumu"),
        ("Chitungwisa", "ZW", "Chitungwiza"),
        ("cochabanba", "BO", "Cochabamba"),
        ("Ambostira", "MG", "Ambositra"),
    ] {
        check(said, Some(hint), Some((name, hint)));
        assert!(find(said, Some(hint)).unwrap().by_slip, "{said}");
    }
    assert!(!find("Kisumu", Some("KE")).unwrap().by_slip);
}

#[test]
fn a_name_in_devanagari_or_bengali_is_found() {
    check("रामपुर", Some("IN"), Some(("Rāmpur", "IN")));
    check("सीकर", Some("IN"), Some(("Sīkar", "IN")));
    check("पोखरा", Some("NP"), Some(("Pokhara", "NP")));
    check("ঢাকা", Some("BD"), Some(("Dhaka", "BD")));
}

#[test]
fn other_names_and_parts_of_names_are_known() {
    check("El Alto", Some("BO"), Some(("La Paz", "BO")));
    check("Bombay", None, Some(("Mumbai", "IN")));
    check("Ciudad de México", Some("MX"), Some(("Mexico City", "MX")));
    check("guatemala", Some("GT"), Some(("Guatemala City", "GT")));
    check("El Seibo", Some("DO"), Some(("Santa Cruz de El Seibo", "DO")));
    check("Addis", Some("ET"), Some(("Addis Ababa", "ET")));
    check("Hà Nội", Some("VN"), Some(("Hanoi", "VN")));
    check("lodz", None, Some(("Łódź", "PL")));
}

#[test]
fn a_number_of_a_country_that_lends_them_says_little() {
    check("Lima", Some("US"), Some(("Lima", "PE")));
    check("Ambositra", Some("US"), Some(("Ambositra", "MG")));
    check("Nakuru", Some("CA"), Some(("Nakuru", "KE")));
    check("Portland", Some("US"), Some(("Portland", "US")));
}

/// Villages that the list has not, beside towns of like names elsewhere.
#[test]
fn a_village_is_not_put_in_another_country() {
    for (said, hint) in [("Bondo", "KE"), ("Mbita", "KE"), ("Kendu Bay", "KE"), ("Samana", "DO"), ("Miches", "DO")] {
        check(said, Some(hint), None);
    }
    check("Musoma", Some("KE"), Some(("Musoma", "TZ")));
    check("Sabana de la Mar", Some("DO"), None);
}

#[test]
fn what_is_no_town_is_not_taken_for_one() {
    for said in ["", "   ", "!!", "home", "xqzzv", "my village", "the", "12", "near"] {
        assert_eq!(find(said, Some("KE")).map(|found| found.place.name.as_str()), None, "{said:?}");
    }
    check("Nairobi, Nepal", None, None);
}

#[test]
fn other_towns_of_the_name_are_told() {
    let found = find("La Paz", None).unwrap();
    assert!(found.others.iter().any(|place| place.country == "MX"), "{:?}", found.others);
    assert!(found.others.len() <= 3);
    assert!(find("Kisumu", Some("KE")).unwrap().others.is_empty());
}

#[test]
fn nairobi_has_its_climate() {
    let nairobi = find("Nairobi", None).unwrap().place;
    assert_eq!(nairobi.time_zone, "Africa/Nairobi");
    assert!((nairobi.normals.elevation_m - 1684.0).abs() < 30.0);
    assert!(nairobi.normals.air_c.iter().all(|c| (16.0..23.0).contains(c)), "{:?}", nairobi.normals.air_c);
}

proptest::proptest! {
    #[test]
    fn no_words_panic(said in "\\PC{0,80}", hint in proptest::option::of("[A-Z]{2}")) {
        find(&said, hint.as_deref());
    }
}
