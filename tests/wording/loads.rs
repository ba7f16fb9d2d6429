//! What "What does each part carry?" says, word for word.

use boughline::link::read;
use boughline::quantity::View;
use boughline::question::{Effort, loads};
use boughline::words::{LoadState, LoadsReport, error_lines, loads_report};

fn told(more: &str) -> LoadsReport {
    let link = read(&format!("bodyMass=80kg&kitMass=0kg&{more}"));
    let inputs = loads::Inputs::of(&link.draft).expect("in order");
    loads_report(&loads::ask(&inputs, Effort::FULL), View::default())
}

fn state<'a>(report: &'a LoadsReport, id: &str) -> &'a LoadState {
    report.states.iter().find(|state| state.id == id).expect(id)
}

#[test]
fn a_state_that_cannot_be_says_why_and_what_would_make_it_possible() {
    for (plan, id, text) in [
        (
            "rig=ground-1",
            "climbing",
            "Not on this rig: somebody on the ground pulls, and you only hang. See being hauled.",
        ),
        (
            "rig=ground-1",
            "resting",
            "Not on this rig: with every hand off nothing holds you. It takes a hitch that grips the rope by itself.",
        ),
        (
            "rig=tail-3&anchor=canopy",
            "lowered",
            "Not on this rope: nothing of it can be given or taken on the ground. An anchor at the foot of the tree that pays out rope would make it possible, or a second rope.",
        ),
        (
            "rig=tail-3&anchor=canopy",
            "slipping",
            "Not reckoned yet: enter the height of the crotch and the height to climb, so that it is known how much rope is out.",
        ),
        (
            "rig=tail-3&anchor=canopy",
            "caught",
            "Not on this rig: once the hitch that holds you is gone, cord and all, you fall to the ground. It takes a second hitch above it to catch you, or a knot in the tail where the tail runs through a turn; elsewhere a knot only stops a hitch that slips.",
        ),
        (
            "rig=own&ownRig=tied.tree--hitch.climber--hand.climber---tied.tree--hitch.climber&anchor=canopy",
            "resting",
            "Not reckoned: in this state two parts share the load or rope hangs slack, so that what each takes cannot be told. Of two hitches on one climber, call one the backup.",
        ),
        (
            "rig=own&ownRig=tied.tree--hand.climber--knot.climber.3m&anchor=canopy",
            "resting",
            "Not on this rig: with every hand off nothing grips until rope has run to a knot, whose catch is told apart. It takes a hitch that grips the rope by itself.",
        ),
    ] {
        let report = told(plan);
        let state = state(&report, id);
        assert_eq!((state.possible, state.text.as_str()), (false, text), "{plan}");
    }
}

#[test]
fn single_parts_are_told_as_what_this_model_sees() {
    let report = told("rig=tail-3&anchor=canopy");
    assert_eq!(
        state(&report, "resting").singles,
        "The single parts this model sees: climbing rope, anchor, cord of the lower hitch, connector at the lower hitch, harness attachment and crotch of the tree. It does not see a worn, misrigged or cross-loaded part."
    );
    let hauled = told("rig=ground-1");
    assert!(state(&hauled, "hauled").singles.ends_with(" Only hands hold you: whoever lets go drops you."));
}

#[test]
fn a_limb_is_never_called_safe() {
    let limb = |more: &str| told(&format!("rig=hand-over-hand&anchor=canopy&{more}")).limb;
    for (more, id, text) in [
        (
            "limbWood=dead",
            "dead-wood",
            "Dead or decayed wood is always refused, whatever a sum says. Choose another tie-in.",
        ),
        (
            "limbDiameter=5cm&species=white-oak",
            "too-thin",
            "It is too thin to tie in to, whatever a sum says. Choose a thicker one, or the stem itself.",
        ),
        (
            "limbDiameter=12cm&limbReach=2m&limbAngle=90deg&species=white-oak",
            "ruled-out",
            "Bending alone rules this limb out. Choose a thicker one, nearer to the stem, or the stem itself.",
        ),
        (
            "limbDiameter=30cm&species=white-oak",
            "not-known",
            "Standing loads do not rule it out, and a slip is not in them: enter the height of the crotch and the height to climb. A qualified arborist looks at it before anybody hangs on it.",
        ),
        (
            "limbDiameter=30cm&species=white-oak&crotchHeight=14m&climbHeight=10m",
            "not-ruled-out",
            "Bending in sound, clear wood does not rule it out; this sum cannot see decay, dead wood, cracks or a weak union. Have a qualified arborist look before anybody hangs on it.",
        ),
        (
            "limbDiameter=30cm",
            "not-known",
            "Not reckoned: that takes the thickness of the limb and the species. A qualified arborist looks at both.",
        ),
    ] {
        let limb = limb(more);
        assert_eq!((limb.id, limb.text.as_str()), (id, text), "{more}");
        let all = format!("{} {}", limb.text, limb.checks.join(" ")).to_lowercase();
        assert!(!all.contains("safe"), "{all}");
    }
}

#[test]
fn what_may_break_comes_first() {
    let report = told("rig=hand-over-hand&anchor=canopy&ropeStrength=1kN");
    assert!(report.first.contains("may be loaded past what it bears"), "{}", report.first);
    assert!(report.cautions.iter().any(|caution| caution.id == "short" && caution.grave));
}

#[test]
fn a_climb_past_the_crotch_is_refused() {
    let link = read("bodyMass=80kg&rig=hand-over-hand&anchor=canopy&crotchHeight=10m&climbHeight=9m");
    let errors = loads::Inputs::of(&link.draft).expect_err("the hitch would be at 10.5 m");
    let lines = error_lines(&errors, View::default());
    assert_eq!(lines[0].fields, ["climbHeight", "crotchHeight"]);
    assert_eq!(
        lines[0].message,
        "At the top of this climb the lower hitch would be as high as the crotch, or higher: climb less, or measure the crotch again."
    );
}
