//! British spelling.

use std::path::{Path, PathBuf};

/// American forms that turn up in this trade, as the words begin.
const AMERICAN: &[&str] = &[
    "color",
    "center",
    "analyz",
    "organiz",
    "recogniz",
    "summariz",
    "minimiz",
    "maximiz",
    "normaliz",
    "standardiz",
    "aluminum",
    "fiber",
    "behavior",
    "neighbor",
    "favor",
    "honor",
    "labor",
    "harbor",
    "rigor",
    "vapor",
    "gray",
    "caliber",
    "maneuver",
    "mold",
    "traveled",
    "traveling",
    "traveler",
    "labeled",
    "labeling",
    "modeled",
    "modeling",
    "canceled",
    "defense",
    "offense",
    "plow",
    "skeptic",
    "catalog ",
    "meager",
    "somber",
    "theater",
    "carabinier",
    "kilometer",
    "centimeter",
    "millimeter",
    "meter",
];

/// Where a unit's name is spelt as some people write it, which is read.
fn may_stand(path: &Path, word: &str) -> bool {
    (path.ends_with("quantity/length.rs") || path.ends_with("quantity/speed.rs")) && word.contains("meter")
}

fn sources_below(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources_below(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|letter: char| !letter.is_alphabetic()).filter(|word| !word.is_empty())
}

#[test]
fn words_are_spelt_as_in_britain() {
    let mut found = Vec::new();
    sources_below(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut found);
    assert!(found.len() > 30, "the library has more files than that");
    for path in found {
        let text = std::fs::read_to_string(&path).unwrap();
        for word in words(&text) {
            let lower = word.to_lowercase();
            let american = AMERICAN.iter().find(|form| lower.starts_with(form.trim_end()));
            let american = american.filter(|form| !form.ends_with(' ') || lower == form.trim_end());
            assert!(american.is_none() || may_stand(&path, &lower), "{}: {word}", path.display());
        }
    }
}

#[test]
fn american_forms_are_found() {
    let is_american =
        |text: &str| words(text).any(|word| AMERICAN.iter().any(|form| word.to_lowercase().starts_with(form)));
    assert!(is_american("the rope's Color") && is_american("a traveler") && !is_american("a traveller's colour"));
}
