//! The texts that a fuzzer found worth keeping, each once more: see `pkg-config/fuzz`.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::indexing_slicing, clippy::panic, reason = "what does not hold fails the test")]

#[path = "corpus/holds.rs"]
mod holds;
#[path = "corpus/typed.rs"]
mod typed;

/// The kept texts of a target.
fn kept(lines: &str) -> Vec<String> {
    let texts: Vec<String> = lines.lines().map(|line| serde_json::from_str(line).expect("a text as JSON")).collect();
    assert!(texts.len() >= 5, "a corpus that has something in it");
    texts
}

/// Checks every kept text of the target of this name.
macro_rules! holds_of_every_kept_text {
    ($($target:ident),*) => {$(
        #[test]
        fn $target() {
            for text in kept(include_str!(concat!("data/corpus/", stringify!($target), ".jsonl"))) {
                holds::$target(&text, holds::Breadth::All);
            }
        }
    )*};
}

holds_of_every_kept_text!(quantity, rig, link, answer);
