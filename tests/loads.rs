//! What does each part carry? The loads by hand, the single parts by hand, and the laws.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "tests")]

use boughline::quantity::{STANDARD_GRAVITY, View};
use boughline::question::Effort;
use boughline::question::loads::{Answer, Carried, Doing, Inputs, PieceKind, Why, ask};
use boughline::{Draft, words};

fn plan(rig: &str) -> Draft {
    Draft::new()
        .set("bodyMass", "80 kg")
        .set("kitMass", "0 kg")
        .set("rig", rig)
        .set("anchor", "canopy")
        .set("crotchHeight", "14 m")
        .set("climbHeight", "10 m")
}

fn answer(draft: &Draft) -> Answer {
    ask(&Inputs::of(draft).unwrap(), Effort::QUICK)
}

fn carried(answer: &Answer, doing: Doing) -> &Carried {
    answer.states.iter().find(|state| state.doing == doing).unwrap().carried.as_ref().unwrap()
}

fn load(carried: &Carried, kind: PieceKind) -> f64 {
    carried.loads.iter().find(|load| load.piece.kind == kind).unwrap().load.likely
}

/// The nouns of the single parts in a state, each once.
fn singles(draft: &Draft, doing: Doing) -> Vec<String> {
    let report = words::loads_report(&answer(draft), View::default());
    let at = Doing::ALL.iter().position(|other| *other == doing).unwrap();
    report.states[at].parts.iter().filter(|part| part.single).map(|part| part.noun.to_ascii_lowercase()).collect()
}

const WEIGHT: f64 = 80.0 * STANDARD_GRAVITY;

/// Geometry: a climber at rest on one strand pulls their weight on every part of it.
#[test]
fn at_rest_on_one_strand_each_part_carries_the_weight() {
    let answer = answer(&plan("hand-over-hand"));
    let resting = carried(&answer, Doing::Resting);
    for kind in [PieceKind::Rope, PieceKind::HitchCord, PieceKind::Connector, PieceKind::Anchor, PieceKind::Crotch] {
        assert!((load(resting, kind) / WEIGHT - 1.0).abs() < 1e-9, "{kind:?}");
    }
}

/// Arboriculture Australia, Tree rescue manual (2022), p. 84: 160 kg for 80 kg on a base anchor without friction; friction
/// is not to be counted on.
#[test]
fn a_base_anchor_loads_the_crotch_with_twice_the_weight() {
    let answer = answer(&plan("hand-over-hand").set("anchor", "base"));
    let resting = carried(&answer, Doing::Resting);
    let crotch = load(resting, PieceKind::Crotch);
    // A tie that was drawn tight can leave more: 1 + 1/e of bark.
    assert!((2.0 * WEIGHT..(1.0 + 1.0 / 0.15) * WEIGHT).contains(&crotch), "{crotch}");
}

/// Geometry: 2 T cos(angle / 2). At 120 degrees a redirect carries what the rope does.
#[test]
fn a_redirect_at_120_degrees_carries_the_tension() {
    let answer = answer(&plan("hand-over-hand").set("redirectAngle", "120°"));
    let resting = carried(&answer, Doing::Resting);
    assert!((load(resting, PieceKind::Redirect) / WEIGHT - 1.0).abs() < 1e-9);
}

/// By hand: base anchor: foot tie, rope, crotch, hitch, its connector; moving rope: tie, hitch, rope, crotch; tail 3:1 at
/// rest: the lower hitch until it is backed up, never the upper one.
#[test]
fn single_parts_are_those_worked_out_by_hand() {
    let always = ["harness attachment", "crotch of the tree"].map(str::to_owned);
    let with =
        |list: &[&str]| -> Vec<String> { list.iter().map(|one| (*one).to_owned()).chain(always.clone()).collect() };
    let lower = ["cord of the lower hitch", "connector at the lower hitch"];
    let foot = plan("hand-over-hand").set("anchor", "base");
    assert_eq!(singles(&foot, Doing::Resting), with(&["climbing rope", "foot tie", lower[0], lower[1]]));
    let moving = singles(&plan("moving-rope"), Doing::Resting);
    assert_eq!(moving, with(&["climbing rope", "connector at the harness tie", lower[0], lower[1]]));
    let tail = singles(&plan("tail-3"), Doing::Resting);
    assert_eq!(tail, with(&["climbing rope", "anchor", lower[0], lower[1]]));
    for backup in ["second-hitch", "tail-knot"] {
        let backed = singles(&plan("tail-3").set("backup", backup), Doing::Resting);
        assert!(!backed.iter().any(|noun| noun.contains("hitch")), "{backup}: {backed:?}");
    }
}

/// Wexler: a drop of nothing on a taut rope stops with twice the weight.
#[test]
fn a_drop_of_nothing_is_twice_the_weight() {
    let answer = answer(&plan("hand-over-hand").set("slack", "0 m"));
    assert!((load(carried(&answer, Doing::Slipping), PieceKind::Rope) / WEIGHT - 1.0).abs() < 1e-9);
    let slipping = carried(&answer, Doing::Slipping);
    let rope = slipping.loads.iter().find(|load| load.piece.kind == PieceKind::Rope).unwrap();
    assert!((rope.peak.likely / WEIGHT - 2.0).abs() < 1e-9);
}

/// The published formula again, written apart: W (1 + sqrt(1 + 2 f M / W)), M 80 kN, 0.5 m over 2.5 m of rope.
#[test]
fn a_slip_comes_to_the_formula() {
    let answer = answer(&plan("hand-over-hand").set("slack", "0.5 m").set("hitchHeight", "1.5 m"));
    let slip = answer.slip.as_ref().unwrap();
    let by_hand = WEIGHT + (WEIGHT * WEIGHT + 2.0 * (0.5 / 2.5) * 80e3 * WEIGHT).sqrt();
    assert!((slip.likely.last().unwrap() / by_hand - 1.0).abs() < 1e-9);
    assert!((slip.factor - 0.2).abs() < 1e-12);
}

#[test]
fn a_slip_is_hardest_at_the_top_and_more_slack_never_softer() {
    let mut before = 0.0;
    for slack in ["0 m", "0.2 m", "0.5 m", "1 m", "3 m"] {
        let slip = answer(&plan("tail-3").set("slack", slack)).slip.unwrap();
        for forces in [&slip.likely, &slip.stiff] {
            assert!(forces.windows(2).all(|two| two[0] <= two[1]), "{slack}");
        }
        assert!(*slip.stiff.last().unwrap() > before, "{slack}");
        before = *slip.stiff.last().unwrap();
    }
}

#[test]
fn a_heavier_climber_never_loads_a_part_less() {
    for rig in boughline::reeving::RigName::CATALOGUE {
        for anchor in ["canopy", "base"] {
            let at = |mass: &str| answer(&plan(rig.named().id).set("anchor", anchor).set("bodyMass", mass));
            let (light, heavy) = (at("60 kg"), at("95 kg"));
            for (light, heavy) in light.states.iter().zip(&heavy.states) {
                let (Ok(light), Ok(heavy)) = (&light.carried, &heavy.carried) else {
                    assert_eq!(light.carried.is_ok(), heavy.carried.is_ok());
                    continue;
                };
                for (light, heavy) in light.loads.iter().zip(&heavy.loads) {
                    assert!(light.peak.likely <= heavy.peak.likely && light.peak.high <= heavy.peak.high, "{rig:?}");
                }
            }
        }
    }
}

#[test]
fn every_catalogue_rig_is_reckoned_or_says_why_not() {
    for rig in boughline::reeving::RigName::CATALOGUE {
        for anchor in ["canopy", "base"] {
            for backup in ["none", "second-hitch", "tail-knot"] {
                let answer = answer(&plan(rig.named().id).set("anchor", anchor).set("backup", backup));
                for state in &answer.states {
                    assert_ne!(
                        state.carried.as_ref().err(),
                        Some(&Why::Unsolved),
                        "{rig:?} {anchor} {:?}",
                        state.doing
                    );
                }
                let report = words::loads_report(&answer, View::default());
                let text = format!("{report:?}");
                assert!(!text.contains("{?}") && !text.contains("{+}"), "{text}");
            }
        }
    }
}

#[test]
fn without_heights_a_slip_is_not_reckoned_and_says_so() {
    let draft = Draft::new().set("bodyMass", "80 kg").set("rig", "tail-3").set("anchor", "canopy");
    let answer = answer(&draft);
    assert!(answer.slip.is_none());
    let slipping = answer.states.iter().find(|state| state.doing == Doing::Slipping).unwrap();
    assert_eq!(slipping.carried.as_ref().err(), Some(&Why::NoHeights));
}

/// The drawing of a state has crotch and climber at their heights, and none where they were not said.
#[test]
fn a_drawing_has_the_heights_that_were_said() {
    let heights = |draft: &Draft, state: usize| -> Vec<(Option<f64>, Option<String>)> {
        let report = words::loads_report(&answer(draft), View::default());
        let drawing = report.states[state].drawing.clone().unwrap();
        drawing.levels.into_iter().map(|level| (level.height, level.at)).collect()
    };
    let at = |height: f64, text: &str| (Some(height), Some(text.to_owned()));
    // The crotch, the upper hitch, and the climber 10 m above the 1.5 m that is taken for granted.
    assert_eq!(heights(&plan("tail-3"), 0), [at(14.0, "14 m"), (None, None), at(11.5, "11.5 m")]);
    let hauled = Doing::ALL.iter().position(|doing| *doing == Doing::Hauled).unwrap();
    assert_eq!(heights(&plan("ground-1"), hauled), [at(14.0, "14 m"), at(1.5, "1.5 m"), at(0.0, "0 m")]);
    let without = Draft::new().set("bodyMass", "80 kg").set("rig", "tail-3").set("anchor", "canopy");
    assert!(heights(&without, 0).iter().all(|level| *level == (None, None)));
}
