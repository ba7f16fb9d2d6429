//! Anything that comes near to a quantity, for as long as one likes.
//!
//! `BOUGHLINE_FUZZ_SECONDS` says how long; `BOUGHLINE_FUZZ_SEED` repeats the texts of an earlier run.

#![allow(clippy::disallowed_types, reason = "it is told how long to take, and the clock is a seed")]
#![allow(clippy::expect_used, clippy::indexing_slicing, clippy::panic, reason = "what is missing fails the test")]

use super::properties::holds_of;
use super::reading::accepted;
use super::{VIEWS, spellings};
use boughline::error::{Error, Reason};
use boughline::field::{Kind, Limits, Row, Said};
use boughline::quantity::{Dimension, Unit, View, read, units, written};
use boughline::question::all_fields;
use boughline::words::message;
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

/// What is put in: marks, spaces, digits of other scripts, what is long in bytes or grows when its case changes.
const PIECES: [&str; 46] = [
    " ",
    "\u{a0}",
    "\u{2009}",
    "\t",
    "\n",
    ".",
    ",",
    "/",
    "-",
    "−",
    "–",
    "+",
    "'",
    "\"",
    "′",
    "″",
    "’",
    "”",
    "·",
    "°",
    "%",
    "0",
    "1",
    "3",
    "9",
    "000",
    "12",
    "½",
    "⅞",
    "1/2",
    "/0",
    "e",
    "E3",
    "inf",
    "NaN",
    "∞",
    "٣",
    "１",
    "é",
    "ß",
    "İ",
    "🪢",
    "\u{301}",
    "\u{0}",
    "\u{feff}",
    "99999999999999999999",
];

/// Sebastiano Vigna's splitmix64.
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    fn below(&mut self, count: usize) -> usize {
        (self.roll() % count.max(1) as u64) as usize
    }

    fn one_of<T: Copy>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())]
    }
}

/// The text with one thing changed.
fn changed(text: &str, other: &str, dice: &mut Dice) -> String {
    let letters: Vec<char> = text.chars().collect();
    let (one, two) = (dice.below(letters.len() + 1), dice.below(letters.len() + 1));
    let (one, two) = (one.min(two), one.max(two));
    let (before, within, after) = (&letters[..one], &letters[one..two], &letters[two..]);
    let join = |parts: [&[char]; 3]| parts.concat().into_iter().collect::<String>();
    let put = |piece: &str| join([before, &piece.chars().collect::<Vec<_>>(), &letters[one..]]);
    match dice.below(9) {
        0 => join([before, after, &[]]),
        1 => join([before, within, within]) + &join([after, &[], &[]]),
        2 => join([after, within, before]),
        3 => put(dice.one_of(&PIECES)),
        4 => put(&char::from_u32(dice.roll() as u32 % 0x11_0000).map_or_else(String::new, String::from)),
        5 => format!("{text}{}{other}", dice.one_of(&["", " ", "-", "/", "\u{a0}"])),
        6 => text.to_uppercase(),
        7 => text.to_lowercase(),
        _ => join([&letters[..one], &[], &[]]) + &other.chars().skip(dice.below(4)).collect::<String>(),
    }
}

/// The quantities that a refusal tells people to write, and whether the field itself must take them.
fn told(message: &str) -> Vec<(String, bool)> {
    let after = |mark: &str| message.split_once(mark).map(|(_, rest)| rest);
    let ways = |rest: &str, between: &str, field: bool| {
        let rest = rest.strip_suffix('.').unwrap_or(rest);
        rest.split(between).map(|way| (way.to_owned(), field)).collect::<Vec<_>>()
    };
    // The sentences quote what was said, so the last of each mark is the sentence's own.
    if let Some((_, example)) = message.rsplit_once("Write it like “") {
        vec![(example.trim_end_matches(['”', '.']).to_owned(), true)]
    } else if let Some((_, meant)) = message.rsplit_once("Did you mean ") {
        vec![(meant.trim_end_matches('?').to_owned(), true)]
    } else if let Some((_, range)) = message.rsplit_once(" is outside ") {
        ways(range, " to ", false)
    } else if let Some(units) = after("write the unit too: ") {
        ways(units, " or ", false)
    } else if let Some((_, example)) = message.rsplit_once("after every number, like ") {
        ways(example, " or ", false)
    } else if let Some((_, force)) = message.rsplit_once("of a scale, write ") {
        ways(force, " or ", false)
    } else if let Some((_, either)) = message.rsplit_once("two ways. Write ") {
        ways(either, " or ", false)
    } else {
        Vec::new()
    }
}

/// What must hold of anything typed in a field.
fn holds_in(row: &Row, text: &str, view: View) {
    let said = Said::Text(text.to_owned());
    let refusal = match row.reading(&said) {
        Ok(reading) => {
            let linked = row.linked(&said).expect("what can be read can be linked");
            if let Kind::Text(_) = row.kind {
                for other in [linked.clone(), row.tidied(text, view.system)] {
                    assert_eq!(row.linked(&Said::Text(other)), Some(linked.clone()));
                }
                return;
            }
            assert_eq!(row.reading(&Said::Text(linked.clone())), Ok(reading.clone()), "{linked:?}");
            let tidied = row.tidied(text, view.system);
            assert_eq!(row.reading(&Said::Text(tidied.clone())), Ok(reading), "{tidied:?}");
            return;
        }
        Err(refusal) => refusal,
    };
    assert_eq!(row.linked(&said), None);
    let message = message(&Error::of(row.id, Reason::Refused(refusal)), view);
    match row.kind {
        Kind::Quantity(Limits { dimension, bare, .. }) => {
            let ways = told(&message);
            assert!(!ways.is_empty(), "{message:?} tells nothing");
            for (way, by_field) in ways {
                let read = read(&way, dimension, bare.map(|[si, _]| si));
                assert!(read.is_ok(), "{message:?} tells {way:?}: {read:?}");
                assert!(!by_field || row.reading(&Said::Text(way)).is_ok(), "{message:?} tells what is refused");
            }
        }
        Kind::Text(_) if row.id == "ropeStock" => assert!(!told(&message).is_empty(), "{message:?} tells nothing"),
        Kind::Text(_) => {
            let does = [". ", "write ", "put a unit ", "use one of them", "carry them over"];
            assert!(does.iter().any(|what| message.contains(what)), "{message:?} does not say what to do");
        }
        _ => assert!(message.contains("Choose one: "), "{message:?}"),
    }
}

fn from_environment(name: &str) -> Option<u64> {
    std::env::var(name).ok().map(|value| value.parse().unwrap_or_else(|_| panic!("{name} is a whole number")))
}

/// Changed texts against every law, for so many seconds unless the environment says how many.
fn run(seconds: u64) {
    let seconds = from_environment("BOUGHLINE_FUZZ_SECONDS").unwrap_or(seconds);
    let now = SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_nanos() as u64);
    let seed = from_environment("BOUGHLINE_FUZZ_SEED").unwrap_or(now);
    println!("seed {seed}");
    let mut dice = Dice(seed);
    let mut corpus: Vec<(Dimension, String)> =
        accepted().map(|(dimension, (text, ..))| (dimension, text.to_owned())).collect();
    corpus.extend(units().flat_map(spellings).map(|spelling| (Dimension::Length, format!("2 {spelling}"))));
    let units: Vec<&'static Unit> = units().collect();
    let fields = all_fields();
    let (mut texts, mut taken) = (0_u64, 0_u64);
    let end = Instant::now() + Duration::from_secs(seconds);
    while Instant::now() < end {
        for _ in 0..1000 {
            let (home, seed_text) = &corpus[dice.below(corpus.len())];
            let mut text = seed_text.clone();
            for _ in 0..dice.below(5) {
                let other = &corpus[dice.below(corpus.len())].1;
                text = changed(&text, other, &mut dice);
            }
            let dimension = if dice.below(4) == 0 { dice.one_of(&Dimension::ALL) } else { *home };
            let (unit, view, row) = (dice.one_of(&units), dice.one_of(&VIEWS), dice.one_of(&fields));
            let case = format!("{text:?} as {dimension:?}, {}, {view:?}, {}", unit.symbol, row.id);
            // A panic of the library names the text too.
            let held = std::panic::catch_unwind(|| {
                holds_of(&text, dimension, unit).unwrap_or_else(|broken| panic!("{broken}"));
                holds_in(row, &text, view);
                read(&text, dimension, None).is_ok_and(|si| {
                    let shown = written(si, dimension, view);
                    let back = read(&shown, dimension, None).ok();
                    // Beyond 2^53 there is no figure, and nobody can read one.
                    assert!(shown == "—" || back.is_some(), "{shown:?} is not read back");
                    true
                })
            });
            texts += 1;
            taken += u64::from(held.unwrap_or_else(|_| panic!("{case}; seed {seed}, text {texts}")));
        }
    }
    println!("{texts} texts in {seconds} s, {taken} of them quantities");
    assert!(taken * 20 > texts, "too few are quantities to prove anything: {taken} of {texts}");
    assert!(taken * 10 < texts * 9, "too few are none: {taken} of {texts}");
}

#[test]
fn any_text_near_a_quantity_is_read_alike_everywhere_or_refused_with_advice() {
    run(1);
}

/// Thirty minutes of it: `pkg-config/prove reading`.
#[test]
#[ignore = "half an hour"]
fn prove_reading() {
    run(1800);
}
