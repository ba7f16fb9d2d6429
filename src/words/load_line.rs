//! What a part carries in a state, in words.

use super::drawing::drawn_rig;
use super::figure::figure;
use super::phrase::{listed, sentence};
use super::template::{said, say};
use super::{Figure, LoadLine, LoadState};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::loads::{Carried, Doing, InState, Load, PieceKind, Standing, Why};
use crate::reeving::WhyNot;
use crate::source::{ANSI_Z133, GEOMETRY, JUDGED, KNOT_STRENGTH, Source};

/// The state and its parts as people read them.
pub(super) fn load_state(state: &InState, heights: Option<[f64; 3]>, view: View) -> LoadState {
    let (id, noun, what) = told(state.doing);
    match &state.carried {
        Err(why) => LoadState {
            id,
            noun,
            possible: false,
            text: why_not(*why).to_owned(),
            singles: String::new(),
            parts: Vec::new(),
            drawing: None,
        },
        Ok(carried) => {
            let mut parts = Vec::new();
            for load in &carried.loads {
                parts.push(load_line(carried, load, view));
            }
            let single = |rope: usize, place: usize| {
                let here = |load: &&Load| load.piece.rope == Some(rope) && load.piece.stop == Some(place);
                carried.loads.iter().any(|load| load.single && here(&load))
            };
            // A haul begins at the ground; everything else is worst near the top.
            let heights =
                heights.map(|[crotch, start, top]| [crotch, if state.doing == Doing::Hauled { start } else { top }]);
            LoadState {
                id,
                noun,
                possible: true,
                text: match &carried.dropped {
                    Some(dropped) => said("{} You drop {M} before it holds.", &[dropped], &[what], view),
                    None => what.to_owned(),
                },
                singles: singles(carried, &parts),
                drawing: Some(drawn_rig(
                    &carried.rig,
                    (&carried.grips, carried.hands),
                    &carried.tensions,
                    &single,
                    heights,
                    what,
                    view,
                )),
                parts,
            }
        }
    }
}

const fn told(doing: Doing) -> (&'static str, &'static str, &'static str) {
    match doing {
        Doing::Climbing => ("climbing", "Climbing", "While you pull. The peak is that of climbing in jerks."),
        Doing::Resting => ("resting", "Resting on the hitch", "Every hand is off, and nothing moves."),
        Doing::HandOff => (
            "hand-off",
            "The hand lets go",
            "At the top of the climb the hand lets go, and the hitch gives back a little.",
        ),
        Doing::Slipping => (
            "slipping",
            "A slip into slack",
            "At the top of the climb, where least rope is out, you fall into the slack you named, and the hitch gives back a little.",
        ),
        Doing::Caught => (
            "caught",
            "The hitch is gone, its backup catches",
            "At the top of the climb what held you is gone, and what backs it up catches you.",
        ),
        Doing::Lowered => (
            "lowered",
            "Being lowered",
            "Somebody at the foot gives rope, and you sink. The peak is that of a rope that is stopped dead.",
        ),
        Doing::Hauled => (
            "hauled",
            "Being hauled",
            "Somebody at the foot takes rope, and you rise. The peak is that of hauling in jerks.",
        ),
    }
}

const fn why_not(why: Why) -> &'static str {
    match why {
        Why::Cannot(WhyNot::NotByTheClimber) => {
            "Not on this rig: somebody on the ground pulls, and you only hang. See being hauled."
        }
        Why::Cannot(WhyNot::NothingHolds) => {
            "Not on this rig: with every hand off nothing holds you. It takes a hitch that grips the rope by itself."
        }
        Why::Cannot(WhyNot::NothingOnTheGround) => {
            "Not on this rope: nothing of it can be given or taken on the ground. An anchor at the foot of the tree that pays out rope would make it possible, or a second rope."
        }
        Why::Cannot(WhyNot::OnlyAKnot) => {
            "Not on this rig: with every hand off nothing grips until rope has run to a knot, whose catch is told apart. It takes a hitch that grips the rope by itself."
        }
        Why::NothingBacksUp => {
            "Not on this rig: once the hitch that holds you is gone, cord and all, you fall to the ground. It takes a second hitch above it to catch you, or a knot in the tail where the tail runs through a turn; elsewhere a knot only stops a hitch that slips."
        }
        Why::NoHeights => {
            "Not reckoned yet: enter the height of the crotch and the height to climb, so that it is known how much rope is out."
        }
        Why::Unsolved => {
            "Not reckoned: in this state two parts share the load or rope hangs slack, so that what each takes cannot be told. Of two hitches on one climber, call one the backup."
        }
    }
}

/// The single parts in a sentence.
fn singles(carried: &Carried, parts: &[LoadLine]) -> String {
    let mut nouns = Vec::new();
    for part in parts.iter().filter(|part| part.single) {
        nouns.push(part.noun.to_ascii_lowercase());
    }
    let held = if carried.by_hand { " Only hands hold you: whoever lets go drops you." } else { "" };
    said(
        "The single parts this model sees: {}. It does not see a worn, misrigged or cross-loaded part.{}",
        &[],
        &[&listed(&nouns), held],
        View::default(),
    )
}

/// How many times the peak a part bears; past twenty nobody needs to know.
fn ratio_figure(ratio: &Spread, view: View) -> Figure {
    const MANY: f64 = 20.0;
    let mut figure = figure("partRatio", "strength over peak", ratio, "{1}", view, &[GEOMETRY]);
    if ratio.low > MANY {
        figure.text = said("over {0}", &[&Spread::point(MANY)], &[], view);
        figure.range = None;
    }
    figure
}

const fn kind(kind: PieceKind) -> (&'static str, &'static str) {
    match kind {
        PieceKind::Rope => ("rope", "{}"),
        PieceKind::HaulCord => ("haul-cord", "{}"),
        PieceKind::HitchCord => ("hitch-cord", "cord of the {}"),
        PieceKind::Connector => ("connector", "connector at the {}"),
        PieceKind::Pulley => ("pulley", "pulley of the {}"),
        PieceKind::Ring => ("ring", "ring of the {}"),
        PieceKind::Anchor => ("anchor", "{}"),
        PieceKind::Knot => ("knot", "{}"),
        PieceKind::Crotch => ("crotch", "crotch of the tree"),
        PieceKind::Redirect => ("redirect", "redirect"),
        PieceKind::Harness => ("harness", "harness attachment"),
    }
}

fn load_line(carried: &Carried, load: &Load, view: View) -> LoadLine {
    let piece = &load.piece;
    let (kind, template) = kind(piece.kind);
    let rope = piece.rope.and_then(|rope| carried.rig.ropes().get(rope));
    let on = piece.stop_in(&carried.rig).map(|stop| &stop.noun).or(rope.map(|rope| &rope.noun));
    let noun = said(template, &[], on.map(AsRef::as_ref).as_slice(), view);
    let mut id = kind.to_owned();
    for place in [piece.rope, piece.stop].into_iter().flatten() {
        say(&mut id, "-{0}", &[&Spread::point(place as f64)], &[], view);
    }
    let sources: Vec<Source> = load.strength.iter().flat_map(|strength| strength.source).collect();
    let strength = load.strength.as_ref().map(|strength| {
        let rigged = Spread::point(strength.rigged());
        let mut figure = figure("partStrength", "bears as rigged", &rigged, "{N}", view, &sources);
        let mut line = said("{N} new", &[&Spread::point(strength.new)], &[], view);
        line.push_str(if strength.source.is_some() { ", the least that its standard asks" } else { ", by its label" });
        if let Some(knot) = &strength.knot {
            say(&mut line, " × {2} kept at a knot", &[&Spread::point(knot.likely)], &[], view);
            super::figure::add_ids(&mut figure.sources, &[KNOT_STRENGTH]);
        }
        if strength.legs > 1.0 {
            say(&mut line, " × {0} legs", &[&Spread::point(strength.legs)], &[], view);
        }
        figure.workings.push(line);
        figure
    });
    LoadLine {
        id,
        kind,
        noun: sentence(&noun),
        load: figure("partLoad", "load", &load.load, "{N}", view, &[GEOMETRY]),
        peak: figure("partPeak", "peak", &load.peak, "{N}", view, &[GEOMETRY, JUDGED]),
        strength,
        ratio: load.ratio.as_ref().map(|ratio| ratio_figure(ratio, view)),
        against: load.minimum.map_or_else(String::new, |least| {
            let who = if least.source == ANSI_Z133 { "ANSI Z133" } else { "California Title 8" };
            said("{N} new, {}", &[&Spread::point(least.force.in_newtons())], &[who], view)
        }),
        standing: match load.standing {
            Standing::Short => "short",
            Standing::UnderMinimum => "under-minimum",
            Standing::NotKnown => "not-known",
            Standing::Over => "over",
        },
        text: match load.standing {
            Standing::Short => "May be loaded past what it bears.",
            Standing::UnderMinimum => "Bears its peak on paper, and less than is asked.",
            Standing::NotKnown => "Not known what it bears.",
            Standing::Over => "Bears its peak on paper, sound and loaded as meant.",
        }
        .to_owned(),
        single: load.single,
    }
}
