//! The texts that a fuzzer found worth keeping, each once more: see `pkg-config/fuzz`.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::indexing_slicing, clippy::panic, reason = "what does not hold fails the test")]

#[path = "corpus/holds.rs"]
mod holds;
#[path = "corpus/typed.rs"]
mod typed;
#[path = "lib/views.rs"]
mod views;

/// The kept texts of a target, and those that once broke it.
fn kept(target: &str, lines: &str) -> Vec<String> {
    let mut texts: Vec<String> =
        lines.lines().map(|line| serde_json::from_str(line).expect("a text as JSON")).collect();
    assert!(texts.len() >= 5, "a corpus that has something in it");
    for line in include_str!("data/corpus/broke.jsonl").lines() {
        let (of, text): (String, String) = serde_json::from_str(line).expect("a target and a text as JSON");
        if of == target {
            texts.push(text);
        }
    }
    texts
}

/// Checks every kept text of the target of this name.
macro_rules! holds_of_every_kept_text {
    ($($target:ident),*) => {$(
        #[test]
        fn $target() {
            for text in kept(stringify!($target), include_str!(concat!("data/corpus/", stringify!($target), ".jsonl"))) {
                holds::$target(&text, holds::Breadth::All);
            }
        }
    )*};
}

holds_of_every_kept_text!(quantity, rig, link, answer);
