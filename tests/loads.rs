//! What does each part carry? The loads by hand, the single parts by hand, and the laws.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "tests")]

use boughline::quantity::{STANDARD_GRAVITY, View};
use boughline::question::Effort;
use boughline::question::loads::{Answer, Carried, Caution, Doing, Inputs, Load, PieceKind, Standing, Why, ask};
use boughline::reeving::WhyNot;
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

/// What stops a weight after a drop on rope that hangs so far above it: W (1 + sqrt(1 + 2 f M / W)), written apart.
fn stopped(weight: f64, drop: f64, out: f64, modulus: f64) -> f64 {
    weight * (1.0 + (1.0 + 2.0 * drop / (out + drop) * modulus / weight).sqrt())
}

fn peak(carried: &Carried, kind: PieceKind) -> f64 {
    carried.loads.iter().find(|load| load.piece.kind == kind).unwrap().peak.likely
}

/// Wexler: a drop of nothing on a taut rope stops with twice the weight.
#[test]
fn a_drop_of_nothing_is_twice_the_weight() {
    let answer = answer(&plan("hand-over-hand").set("slack", "0 m").set("setback", "0 m"));
    let slipping = carried(&answer, Doing::Slipping);
    assert!((load(slipping, PieceKind::Rope) / WEIGHT - 1.0).abs() < 1e-9);
    assert!((peak(slipping, PieceKind::Rope) / WEIGHT - 2.0).abs() < 1e-9);
}

/// By hand, near the top with 2.5 m of rope above: on low-stretch rope of 80 kN likely, slack 0.5 m and 5 cm that the
/// hitch gives back.
#[test]
fn each_catch_comes_to_the_formula() {
    const M: f64 = 80e3;
    let draft = |rig: &str| plan(rig).set("slack", "0.5 m").set("setback", "5 cm").set("hitchHeight", "1.5 m");
    let close = |found: f64, wanted: f64| assert!((found / wanted - 1.0).abs() < 1e-9, "{found}, {wanted} wanted");
    for (rig, strands) in [("hand-over-hand", 1.0), ("tail-3", 1.0), ("moving-rope", 2.0)] {
        let answer = answer(&draft(rig));
        let slipping = stopped(WEIGHT, 0.55, 2.5, strands * M);
        close(peak(carried(&answer, Doing::Slipping), PieceKind::Harness), slipping);
        close(peak(carried(&answer, Doing::HandOff), PieceKind::Harness), stopped(WEIGHT, 0.05, 2.5, strands * M));
        // The chart ends where the state is.
        let slip = answer.slip.as_ref().unwrap();
        close(*slip.likely.last().unwrap(), slipping);
        close(slip.factor, 0.55 / 3.05);
        let report = words::loads_report(&answer, View::default());
        let told = report.figures.iter().find(|figure| figure.id == "arrestForce").unwrap();
        close(told.value.unwrap(), slipping);
    }
    // A knot that lets 2 m run drops the climber half of that, on a strand that carries the weight.
    let knot = answer(&draft("tail-3").set("backup", "tail-knot").set("knotSlack", "2 m"));
    let caught = carried(&knot, Doing::Caught);
    close(peak(caught, PieceKind::Harness), stopped(WEIGHT, 1.05, 2.5, M));
    assert!((caught.dropped.unwrap().likely - 1.05).abs() < 1e-12);
    // Both pulleys and the knot carry it: two strands below the upper hitch, each with half of it.
    close(peak(caught, PieceKind::Pulley), stopped(WEIGHT, 1.05, 2.5, M));
    close(peak(caught, PieceKind::Knot), 0.5 * stopped(WEIGHT, 1.05, 2.5, M));
    // A knot that jams pushes on the pulley what the rope pulls past it: the upper hitch holds both up by one strand.
    let connector = |noun: &str| {
        let here = |load: &&Load| load.piece.stop_in(&caught.rig).is_some_and(|stop| stop.noun == noun);
        let load = caught.loads.iter().filter(|load| load.piece.kind == PieceKind::Connector).find(here).unwrap();
        (load.load.likely / WEIGHT, load.single)
    };
    assert!((connector("upper turn").0 - 0.5).abs() < 1e-9 && (connector("upper hitch").0 - 0.5).abs() < 1e-9);
    // With the lower hitch gone, cord and all, the climber hangs on the lower turn alone.
    assert!(connector("lower turn").1 && connector("upper turn").1 && connector("upper hitch").1);
    // A second hitch takes all of it at once.
    let second = answer(&draft("tail-3").set("backup", "second-hitch"));
    let caught = carried(&second, Doing::Caught);
    let cords: Vec<f64> = caught
        .loads
        .iter()
        .filter(|load| load.piece.kind == PieceKind::HitchCord)
        .map(|load| load.load.likely)
        .collect();
    assert!((cords.iter().sum::<f64>() / WEIGHT - 1.0).abs() < 1e-9, "{cords:?}");
}

/// By hand: 0.55 m and the stretch of all rope down to its tie, on the softest rope of type B, 19.6 kN.
#[test]
fn the_lowest_catch_clears_the_ground_by_drop_and_stretch() {
    for (anchor, beyond) in [("canopy", 0.0), ("base", 14.0)] {
        let draft = plan("hand-over-hand").set("anchor", anchor).set("slack", "0.5 m").set("setback", "5 cm");
        let lowest = answer(&draft.set("hitchHeight", "1.5 m")).slip.unwrap().lowest_catch.unwrap();
        let out = 14.0 - lowest + beyond;
        let given = (out + 0.55) * stopped(WEIGHT, 0.55, out, 19.6e3) / 19.6e3;
        assert!((lowest - 1.5 - 0.55 - given).abs() < 1e-6, "{anchor}: {lowest}, {given}");
    }
}

/// On a rig that is made fast at the foot the hitch still holds the climber while they are lowered, and is as single.
#[test]
fn whoever_is_lowered_hangs_on_their_hitch() {
    for doing in [Doing::Lowered, Doing::Hauled] {
        let nouns = singles(&plan("tail-3").set("anchor", "base"), doing);
        for noun in ["climbing rope", "cord of the lower hitch", "connector at the lower hitch", "crotch of the tree"] {
            assert!(nouns.iter().any(|one| one == noun), "{doing:?}: {nouns:?}");
        }
    }
    let foot = answer(&plan("tail-3").set("anchor", "base"));
    // A rope that is stopped dead; and the crotch carries at least twice that.
    assert!((peak(carried(&foot, Doing::Lowered), PieceKind::HitchCord) / WEIGHT - 2.0).abs() < 1e-9);
    assert!(peak(carried(&foot, Doing::Lowered), PieceKind::Crotch) >= 4.0 * WEIGHT - 1e-6);
    assert!((peak(carried(&foot, Doing::Hauled), PieceKind::HitchCord) / WEIGHT - 1.5).abs() < 1e-9);
}

/// The limb is held against the hardest catch on the crotch, and without heights nothing says that it bears.
#[test]
fn a_limb_is_held_against_a_slip() {
    let limb = |draft: &Draft| {
        let answer = answer(&draft.clone().set("limbDiameter", "30 cm").set("species", "white-oak"));
        let most = Doing::ALL.iter().filter(|doing| doing.is_drop()).filter_map(|doing| {
            let state = answer.states.iter().find(|state| state.doing == *doing)?;
            let loads = &state.carried.as_ref().ok()?.loads;
            loads.iter().find(|load| load.piece.kind == PieceKind::Crotch).map(|load| load.peak.high)
        });
        (answer.limb.unwrap(), most.fold(0.0, f64::max))
    };
    let (with, hardest) = limb(&plan("hand-over-hand"));
    assert!((with.pull / hardest - 1.0).abs() < 1e-12 && hardest > 6.0 * WEIGHT, "{} {hardest}", with.pull);
    assert!(with.with_slips);
    let (without, none) =
        limb(&Draft::new().set("bodyMass", "80 kg").set("rig", "hand-over-hand").set("anchor", "canopy"));
    assert!(!without.with_slips && none <= 0.0);
}

/// A rope that goes over the tree from a tie on the ground is a base anchor, whoever wrote it so.
#[test]
fn a_rope_tied_on_the_ground_is_a_base_anchor() {
    let own = "tied ground, turn tree ring, hitch climber, hand climber";
    let answer = answer(&plan("own").set("ownRig", own));
    assert!(answer.at_the_foot);
    assert!(load(carried(&answer, Doing::Resting), PieceKind::Crotch) >= 2.0 * WEIGHT - 1e-6);
}

/// A cord that somebody hangs on is asked for what a part that holds somebody is.
#[test]
fn a_cord_that_one_hangs_on_is_no_mere_haul_cord() {
    let own = "tied tree, hitch upper\ntied upper, hitch climber, hand climber";
    let answer = answer(&plan("own").set("ownRig", own).set("haulCord", "7 mm"));
    let resting = carried(&answer, Doing::Resting);
    let cord = resting.loads.iter().find(|load| load.piece.kind == PieceKind::HaulCord).unwrap();
    assert!(cord.minimum.is_some() && cord.standing == Standing::UnderMinimum && cord.single, "{cord:?}");
    let haul = ask(&Inputs::of(&plan("haul-cord-3")).unwrap(), Effort::QUICK);
    let resting = carried(&haul, Doing::Resting);
    assert!(resting.loads.iter().any(|load| load.piece.kind == PieceKind::HaulCord && load.minimum.is_none()));
}

/// Nothing but a knot holds: at rest that is no state to be in, and its catch is told.
#[test]
fn a_knot_alone_catches_and_is_not_rest() {
    let answer = answer(&plan("own").set("ownRig", "tied tree, hand climber, knot climber 3 m"));
    let resting = answer.states.iter().find(|state| state.doing == Doing::Resting).unwrap();
    assert_eq!(resting.carried.as_ref().err(), Some(&Why::Cannot(WhyNot::OnlyAKnot)));
    let caught = carried(&answer, Doing::Caught);
    assert!(caught.dropped.unwrap().likely >= 3.0);
    assert!(load(caught, PieceKind::Knot) >= WEIGHT - 1e-6);
}

/// Where nothing holds, that is the first thing said.
#[test]
fn a_rig_that_nothing_holds_says_so_first() {
    let report = words::loads_report(&answer(&plan("own").set("ownRig", "tied tree, hand climber")), View::default());
    assert!(report.first.starts_with("Nothing in this rig holds you"), "{}", report.first);
    assert_eq!(report.glance, "Nothing holds you once hands let go");
    assert!(report.cautions.iter().any(|caution| caution.id == "nothing-grips"));
}

/// Knowing less never looks better: without heights there is no number to go by.
#[test]
fn without_heights_no_multiple_stands_in_the_first_sentence() {
    let draft = Draft::new().set("bodyMass", "80 kg").set("rig", "tail-3").set("anchor", "canopy");
    let report = words::loads_report(&answer(&draft), View::default());
    assert!(
        report.first.starts_with("A slip is not reckoned yet") && !report.first.contains("times"),
        "{}",
        report.first
    );
    assert_eq!(report.glance, "A slip is not reckoned yet");
}

/// A backup alone holds like any hitch.
#[test]
fn a_backup_that_is_the_only_hitch_holds() {
    let answer = answer(&plan("own").set("ownRig", "tied tree, backup climber, hand climber"));
    assert!((load(carried(&answer, Doing::Resting), PieceKind::HitchCord) / WEIGHT - 1.0).abs() < 1e-9);
}

/// On a rope of its own, a backup takes the whole weight once the hitch is gone.
#[test]
fn a_backup_on_a_second_rope_takes_the_weight() {
    let own = "tied tree, hitch climber, hand climber\ntied tree, backup climber";
    let answer = answer(&plan("own").set("ownRig", own));
    let caught = carried(&answer, Doing::Caught);
    let ropes: Vec<f64> =
        caught.loads.iter().filter(|load| load.piece.kind == PieceKind::Rope).map(|load| load.load.likely).collect();
    assert!(ropes.len() == 2 && ropes[0] <= 0.0 && (ropes[1] / WEIGHT - 1.0).abs() < 1e-9, "{ropes:?}");
}

/// A catch past what a harness may pull is told, by the same figures that the states show.
#[test]
fn hard_catches_are_told() {
    let cautions = |draft: &Draft| answer(draft).cautions;
    let soft = plan("hand-over-hand").set("ropeKind", "dynamic").set("slack", "0 m").set("setback", "0 m");
    assert!(cautions(&soft).iter().all(|caution| !matches!(caution, Caution::HardCatch | Caution::PastHarness)));
    assert!(cautions(&plan("hand-over-hand")).contains(&Caution::HardCatch));
    assert!(cautions(&plan("hand-over-hand").set("slack", "3 m")).contains(&Caution::PastHarness));
}

/// Whatever somebody writes down, either there is an answer or something says what is wrong.
#[test]
fn nothing_is_refused_without_a_word() {
    for own in [
        "hitch tree, hitch climber, hand climber",
        "tied climber, turn tree, hitch tree, hand climber",
        "tied ground, turn tree, hitch climber, hand climber",
    ] {
        for anchor in ["canopy", "base", ""] {
            let mut draft = plan("own").set("ownRig", own).set("anchor", anchor);
            if anchor.is_empty() {
                draft = Draft::new().set("bodyMass", "80 kg").set("rig", "own").set("ownRig", own);
            }
            if let Err(errors) = Inputs::of(&draft) {
                assert!(!errors.is_empty(), "{own} {anchor}");
            }
        }
    }
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
