//! Anything that comes near to a rig: it is one, or an error points at the very word.

use super::CATALOGUE;
use boughline::Draft;
use boughline::error::{Error, Reason};
use boughline::field::{Refusal, Said};
use boughline::question::can_i_climb::{Inputs, ask};
use boughline::question::{Effort, rope_length};
use boughline::reeving::OWN_RIG;
use boughline::reeving::notation::{canonical, read, tidy};
use boughline::words::message;

/// What is put in.
const PIECES: &[&str] = &[
    ",",
    " ",
    "\n",
    ".",
    "-",
    "--",
    "---",
    "\t",
    "\u{a0}",
    "0",
    "1",
    "9",
    "85",
    "%",
    "½",
    "m",
    "N",
    "upper",
    "upper-3",
    "tree",
    "climber",
    "ground",
    "tied",
    "turn",
    "hitch",
    "hand",
    "helper",
    "knot",
    "ring",
    "bark",
    "é",
    "🪢",
    "İ",
    "\u{0}",
    "tied tree",
    ", hand climber",
    "\nturn ground 0.5",
    "knot tree 3 ft",
    "helper ground 40 lbf",
    "&",
    "=",
    "inf",
    "nan",
];

/// Sebastiano Vigna's splitmix64.
struct Dice(u64);

impl Dice {
    fn below(&mut self, count: usize) -> usize {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mixed = (self.0 ^ (self.0 >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        let mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((mixed ^ (mixed >> 31)) % count.max(1) as u64) as usize
    }
}

/// The text with one thing changed.
fn changed(text: &str, dice: &mut Dice) -> String {
    let letters: Vec<char> = text.chars().collect();
    let (mut one, mut other) = (dice.below(letters.len() + 1), dice.below(letters.len() + 1));
    if one > other {
        std::mem::swap(&mut one, &mut other);
    }
    let (before, rest) = letters.split_at(one);
    let (within, after) = rest.split_at(other - one);
    let piece = PIECES.get(dice.below(PIECES.len())).copied().unwrap_or_default();
    let join = |parts: &[&[char]]| parts.concat().into_iter().collect::<String>();
    match dice.below(6) {
        0 => join(&[before, after]),
        1 => join(&[before, within, within, after]),
        2 => join(&[after, within, before]),
        3 => text.to_uppercase(),
        _ => join(&[before]) + piece + &join(&[within, after]),
    }
}

/// What must hold of any text.
fn holds(text: &str) -> bool {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "own").set("ownRig", text);
    let errors = match Inputs::of(&draft) {
        Ok(inputs) => {
            let answer = ask(&inputs, Effort::samples(50));
            assert!(answer.need.likely >= 0.0 && answer.advantage.likely > 0.0, "{text:?}: {:?}", answer.need);
            Vec::new()
        }
        Err(errors) => errors,
    };
    let _ = rope_length::Inputs::of(&draft).map(|inputs| rope_length::ask(&inputs));
    for error in &errors {
        let told = message(error, Default::default());
        assert!(told.ends_with(['.', '?']) && !told.contains(['{', '}']), "{text:?}: {told}");
    }
    let refused = OWN_RIG.row.reading(&Said::Text(text.to_owned()));
    match read(text) {
        Ok(own) => {
            let link = canonical(text).expect("what can be read has a link");
            for other in [link.clone(), tidy(text, Default::default())] {
                assert_eq!(
                    read(&other).map(|own| (own.rig, own.turns, own.help)),
                    Ok((own.rig.clone(), own.turns.clone(), own.help.clone())),
                    "{text:?}: {other}"
                );
            }
            assert_eq!(canonical(&link), Some(link));
            let faults = errors.iter().all(|error| matches!(error.reason, Reason::ImpossibleRig { .. }));
            assert!(refused.is_ok() && faults, "{text:?}: {errors:?}");
            true
        }
        Err(mistake) => {
            let lower = text.to_lowercase();
            assert!(lower.contains(&mistake.word.to_lowercase()), "{text:?}: {mistake:?}");
            let lines = text.split('\n').flat_map(|line| line.split("---")).count();
            assert!((1..=lines).contains(&mistake.line) && mistake.stop > 0, "{text:?}: {mistake:?}");
            // Nothing is refused but what is blank or cannot be read, and that is pointed at.
            match refused {
                Err(Refusal::Miswritten { said }) => {
                    assert_eq!(said, text);
                    let reason = Reason::Refused(Refusal::Miswritten { said });
                    let told = message(&Error::of("ownRig", reason), Default::default());
                    assert!(told.contains(&mistake.word), "{text:?}: {told}");
                }
                other => assert!(text.trim().is_empty() && other.is_err(), "{text:?}: {other:?}"),
            }
            assert!(
                errors.iter().all(|error| error.fields == ["ownRig"]) && !errors.is_empty(),
                "{text:?}: {errors:?}"
            );
            false
        }
    }
}

/// 20,000 texts, each up to eight changes from a rig.
#[test]
fn whatever_is_written_is_a_rig_or_is_pointed_at() {
    let mut dice = Dice(5);
    let (mut rigs, mut wrong) = (0, 0);
    for _ in 0..20_000 {
        let (_, text) = CATALOGUE.get(dice.below(CATALOGUE.len())).expect("within");
        let mut text = if dice.below(3) == 0 { canonical(text).expect("a rig") } else { (*text).to_owned() };
        for _ in 0..dice.below(9) {
            text = changed(&text, &mut dice);
            text = text.chars().take(400).collect();
        }
        if holds(&text) { rigs += 1 } else { wrong += 1 }
    }
    assert!(rigs > 2_000 && wrong > 2_000, "{rigs} {wrong}");
}
