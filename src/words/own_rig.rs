//! What is wrong with somebody's own rig, in words that point at theirs.

use super::RigRow;
use super::refusal::{refused, wanted};
use super::template::{said, worded};
use crate::field::Spread;
use crate::quantity::{View, joined};
use crate::reeving::Fault;
use crate::reeving::notation::{Mistake, OwnRig, OwnRope, Place, Wrong, read};

/// Somebody's own rig as rows of words, a list for each rope.
#[must_use]
pub fn rig_rows(own: &OwnRig) -> Vec<Vec<RigRow>> {
    let mut ropes = Vec::new();
    for rope in &own.ropes {
        let mut rows = Vec::new();
        for stop in &rope.stops {
            rows.push(RigRow { does: stop.does.named().id, on: stop.on.named().id, with: stop.with.clone() });
        }
        ropes.push(rows);
    }
    ropes
}

/// What is wrong with the text, in a sentence or two.
pub(super) fn mistake_words(mistake: &Mistake, view: View) -> String {
    let Mistake { line, stop, word, wrong } = mistake;
    let at = [&whole(*line), &whole(*stop)];
    let there = said("“{}” in line {0}, stop {0}", &at, &[word], view);
    let template = match wrong {
        Wrong::NoStop => {
            return said(
                "Stop {0} in line {0} is empty. Write what the rope does there, or take a comma away.",
                &[&whole(*stop), &whole(*line)],
                &[],
                view,
            );
        }
        Wrong::NoClimber => {
            return "None of these ropes comes to the climber. Write climber where a rope comes to their harness."
                .to_owned();
        }
        Wrong::TooLarge => {
            return "This is more rope than can be worked out exactly: 32 strands are the most. Leave something out."
                .to_owned();
        }
        Wrong::NotAnAmount { row, refusal } => return refused(&there, refusal, Some(row), view),
        Wrong::NoAmount { row } => {
            return worded("{}, needs an amount behind its place. {}", &[&there, &wanted(Some(row), view)]);
        }
        Wrong::NotDone => {
            "{}, is nothing that a rope does. Write tied, turn, hitch, backup, knot, hand or helper, and then where."
        }
        Wrong::NoPlace => "{}, needs a place behind it. Write tree, ground, climber or upper.",
        Wrong::NotAPlace => "{}, is no place. Write tree, ground, climber or upper.",
        Wrong::Skips => {
            "{}, leaves one out. What moves is counted from the top down: upper, upper-2, upper-3, upper-4."
        }
        Wrong::NotByHand => "{}, is no place for the hand that pulls. Write hand climber, or hand ground.",
        Wrong::NotByHelper => "{}, is no place for a helper. Write helper ground or helper tree, and what they pull.",
        Wrong::TiedOnTheWay => {
            "{}, is on the way, and a rope is tied only at its ends. Write hitch, turn or knot there, or begin a new line."
        }
        Wrong::NotATurn => {
            "{}, is nothing that a rope turns round here. Write bearing-pulley, bush-pulley, ring, carabiner or bark, or the share it keeps, like 0.85."
        }
        Wrong::TooMuch => "{}, is too much. Only a turn, a knot and a helper take more than a place.",
        Wrong::SecondHand => {
            "{}, is a second hand, and one drives a rig. For anybody else write helper ground, and what they pull."
        }
    };
    worded(template, &[&there])
}

fn whole(number: usize) -> Spread {
    Spread::point(number as f64)
}

/// Why a rig that can be read cannot be worked out, in a sentence or two.
pub(super) fn fault_words(text: &str, fault: Fault, view: View) -> String {
    let Ok(own) = read(text) else { return UNWORKABLE.to_owned() };
    match fault {
        Fault::NoHand => {
            "No hand pulls this rig. Write hand climber where you pull, or hand ground where somebody hauls.".to_owned()
        }
        Fault::HandPullsNothing { rope } => said(
            "A hand in line {0} pulls nothing. To one side of it the rope must come to a tie or a hitch that grips; to the other it must run out loose, with neither between.",
            &[&line(&own, rope)],
            &[],
            view,
        ),
        Fault::LooseBody { body } => {
            worded("Nothing tells where “{}” goes when the hand pulls. {}", &[place(&own, body), LOOSE])
        }
        Fault::StuckRope { rope } => said(
            "The rope in line {0} cannot move: to let the hand take rope it would have to grow longer. Leave out one of the ties and hitches that hold it.",
            &[&line(&own, rope)],
            &[],
            view,
        ),
        Fault::NotMoved => {
            "The pull does not lift the climber. See on which side of each hand the rope is held, and that it comes to the climber from above.".to_owned()
        }
        Fault::SharedStrand { rope, strand } => {
            let between = between(&own, rope, strand, view);
            worded("What the rope carries {} cannot be told: the load can be shared in more ways than one. Leave out a tie or a hitch.", &[&between])
        }
        Fault::Unbalanced { body } => worded(
            "“{}” cannot balance: what pulls it one way is never matched by what pulls it the other. Give it a hitch, a tie or a turn on the other side.",
            &[place(&own, body)],
        ),
        Fault::SlackStrand { rope, strand } => {
            let between = between(&own, rope, strand, view);
            worded("The rope would have to push {}, and it can only pull. Leave out what is on it there, or turn it round.", &[&between])
        }
        Fault::TooLarge => {
            "More than eight turns and hitches stand still under load, too many to work out. Leave some out.".to_owned()
        }
        _ => UNWORKABLE.to_owned(),
    }
}

/// For what no text brings about.
const UNWORKABLE: &str = "Your own rig cannot be worked out. Change it, or choose another.";

const LOOSE: &str = "Let a rope that is held come to it with a hitch, a tie or a turn.";

/// The line of a rope.
fn line(own: &OwnRig, rope: usize) -> Spread {
    whole(own.ropes.get(rope).map_or(1, |rope| rope.line))
}

/// The word for a body.
fn place(own: &OwnRig, body: usize) -> &'static str {
    let mut before = 0;
    for place in Place::ALL {
        if own.ropes.iter().flat_map(|rope| &rope.stops).any(|stop| stop.on == *place) {
            if before == body {
                return place.named().id;
            }
            before += 1;
        }
    }
    ""
}

/// Between which stops a strand is.
fn between(own: &OwnRig, rope: usize, strand: usize, view: View) -> String {
    let Some(said_rope) = own.ropes.get(rope) else { return String::new() };
    let stops = own.rig.ropes().get(rope).map_or(&[][..], |rope| &rope.stops);
    // A loose tail that begins it is not written.
    let tail = usize::from(stops.first().is_some_and(|stop| stop.body.is_none()));
    let first = strand.checked_sub(tail);
    let ends = [first.and_then(|at| words(said_rope, at)), words(said_rope, strand + 1 - tail)];
    let line = [&whole(said_rope.line)];
    match ends {
        [Some(one), Some(other)] => said("between “{}” and “{}” in line {0}", &line, &[&one, &other], view),
        [one, other] => said("beyond “{}” in line {0}", &line, &[&one.or(other).unwrap_or_default()], view),
    }
}

/// A stop in its words.
fn words(rope: &OwnRope, stop: usize) -> Option<String> {
    let stop = rope.stops.get(stop)?;
    Some(joined(&[stop.does.named().id, " ", stop.on.named().id]))
}
