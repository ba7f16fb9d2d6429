//! Public docs have one form: whoever looks for units, guarantees, errors or a source knows where they stand.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::indexing_slicing, reason = "what cannot be read fails the test")]

use std::path::{Path, PathBuf};

/// The headings, in the order in which they stand.
const HEADINGS: &[&str] = &["Units", "Guarantees", "Errors", "Source", "Example"];
/// What the crate's own page has beside them.
const OF_THE_CRATE: &[&str] = &["Example", "The storeys", "What it does not do"];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    for entry in std::fs::read_dir(folder).expect("a folder") {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            found.push(path);
        }
    }
}

/// The headings of every doc comment of a file, outside of examples.
fn headings(text: &str) -> Vec<Vec<String>> {
    let (mut blocks, mut block, mut in_code) = (Vec::new(), Vec::new(), false);
    for line in text.lines() {
        let line = line.trim_start();
        let Some(said) = line.strip_prefix("///").or_else(|| line.strip_prefix("//!")) else {
            blocks.push(std::mem::take(&mut block));
            in_code = false;
            continue;
        };
        in_code ^= said.trim_start().starts_with("```");
        if let Some(heading) = said.strip_prefix(" # ").filter(|_| !in_code) {
            block.push(heading.to_owned());
        }
    }
    blocks.push(block);
    blocks
}

#[test]
fn headings_are_the_five_in_their_order() {
    let mut files = Vec::new();
    sources(Path::new("src"), &mut files);
    let mut count = 0;
    for file in files {
        let text = std::fs::read_to_string(&file).expect("a file");
        let known = if file.ends_with("src/lib.rs") { OF_THE_CRATE } else { HEADINGS };
        for block in headings(&text) {
            count += block.len();
            let places: Vec<_> = block.iter().map(|heading| known.iter().position(|known| known == heading)).collect();
            assert!(places.iter().all(Option::is_some), "{}: {block:?} of {known:?}", file.display());
            assert!(places.windows(2).all(|pair| pair[0] < pair[1]), "{}: {block:?}", file.display());
        }
    }
    assert!(count > 200, "headings were found at all: {count}");
}
