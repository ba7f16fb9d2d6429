//! Sentences that must be true of what they speak of, whatever their wording.

use super::{SI, US, answer, told};
use boughline::Draft;
use boughline::field::Said;
use boughline::quantity::{Decimal, Dimension, View, read};
use boughline::question::can_i_climb::Inputs;
use boughline::words::{error_lines, report};

/// The sentences that one more thing said brings.
fn complaint(id: &str, text: &str) -> String {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3").set(id, text);
    let errors = Inputs::of(&draft).expect_err(text);
    error_lines(&errors, SI).into_iter().map(|line| line.message).collect::<Vec<_>>().join(" ")
}

#[test]
fn what_to_write_for_the_reading_of_a_scale_can_be_read() {
    for text in
        ["40 kg", "40 kilograms", "40 KG", "40 Kilogram", "90 lb", "90 lbs", "90 pounds", "90 LBS", "6 st", "6 st 4 lb"]
    {
        let told = complaint("measuredPull", text);
        let (_, write) = told.rsplit_once("write ").expect(&told);
        let write = write.trim_end_matches('.');
        assert!(read(write, Dimension::Force, None).is_ok(), "{text}: {told}");
    }
}

#[test]
fn a_unit_that_is_asked_for_makes_it_readable() {
    for (id, text) in [("climbHeight", "36"), ("climbHeight", "36'6"), ("stature", "6'3"), ("bodyMass", "15 st 4")] {
        let told = complaint(id, text);
        let dimension = if id == "bodyMass" { Dimension::Mass } else { Dimension::Length };
        let Some((_, write)) = told.rsplit_once("write the unit too: ") else { continue };
        for write in write.trim_end_matches('.').split(" or ") {
            assert!(read(write, dimension, None).is_ok(), "{text}: {told}");
        }
    }
}

#[test]
fn what_is_out_of_range_is_not_written_as_if_within() {
    for (id, text, limit) in [
        ("bodyMass", "250.4 kg", "250 kg"),
        ("bodyMass", "19.96 kg", "20 kg"),
        ("stature", "89.9 cm", "90 cm"),
        ("upperEfficiency", "1.0001", "1.00"),
        ("hitchDrag", "0.2999", "0.30"),
    ] {
        let told = complaint(id, text);
        assert!(!told.contains(&format!(": {limit} is outside")) && told.contains(&format!(": {text} is")), "{told}");
    }
}

#[test]
fn another_unit_is_offered_only_far_out_of_range() {
    for (id, text) in [("bodyMass", "250.4 kg"), ("climbHeight", "121 m"), ("stature", "89.9 cm")] {
        let told = complaint(id, text);
        assert!(!told.contains("Did you mean"), "{told}");
    }
    assert!(complaint("stature", "175 m").ends_with("Did you mean 175 cm?"));
}

#[test]
fn a_test_that_cannot_be_shows_a_figure_that_cannot_be() {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3");
    let errors =
        Inputs::of(&draft.set("testMass", "94.3 kg").set("testPull", "308.1 N")).expect_err("3.0015 is above 3");
    let told = error_lines(&errors, SI).into_iter().map(|line| line.message).collect::<String>();
    assert!(!told.contains(" of 3.00,"), "{told}");
}

#[test]
fn an_unknown_id_is_written_as_it_was_said() {
    let told = complaint("bodyWeight", "80 kg");
    assert!(told.contains("“bodyWeight”"), "{told}");
}

#[test]
fn nobody_is_asked_for_more_of_something_than_there_is() {
    let told = told("measuredPull=450N&pullTaken=lowest-point&pullHeld=hand-loop&gripRight=205N", SI);
    assert_eq!(told.verdict.id, "out-of-reach");
    assert!(!told.first.contains("328 N of the 292 N"), "{}", told.first);
}

#[test]
fn a_change_that_is_named_is_a_change() {
    for newtons in (455..470).chain(495..510).chain(525..550).chain(590..610) {
        let told = told(&format!("measuredPull={newtons}N"), SI);
        assert!(!told.second.contains(" 0 %"), "{newtons} N: {}", told.second);
    }
}

#[test]
fn a_better_hold_is_not_promised_to_be_enough_for_arms_that_are_not() {
    let told = told("measuredPull=200N&gripRight=50N", SI);
    assert_eq!(told.verdict.id, "out-of-reach");
    let promised = told.second.starts_with("A hold") && !told.second.to_lowercase().contains("arms");
    assert!(!promised, "arms give 140 N of 328 N: {}", told.second);
}

#[test]
fn nobody_is_advised_what_they_have() {
    let plan =
        "bodyMass=80kg&climbHeight=11m&rig=hand-over-hand&measuredPull=1200N&pullTaken=ten-repetitions&gripRight=300N";
    let told = report(&answer(&format!("{plan}&pullHeld=hand-loop&hold=hand-loop")), SI);
    assert!(told.first.starts_with("Your hands would slip"), "{}", told.first);
    assert!(!told.second.contains("a hand loop"), "{}", told.second);
}

#[test]
fn where_setback_decides_it_is_named() {
    let told = told("handTravel=15.5cm&measuredPull=900N", SI);
    assert_eq!(told.verdict.id, "out-of-reach");
    let both = format!("{} {}", told.first, told.second);
    assert!(both.contains("setback") || both.contains("gives back"), "{both}");
}

#[test]
fn nobody_who_would_not_rise_is_at_their_limit() {
    let told = told("handTravel=15cm&measuredPull=900N", SI);
    assert!(!(told.verdict.id == "at-limit" && told.first.starts_with("You would not rise")), "{}", told.first);
}

#[test]
fn ten_pulls_are_not_promised_to_arms_that_cannot_do_one() {
    let told = told("measuredPull=200N", SI);
    let hard = told.cautions.iter().find(|line| line.id == "hard-pull");
    assert!(hard.is_none_or(|line| !line.text.contains("can do that about ten times")), "{hard:?}");
}

#[test]
fn the_sum_in_the_workings_of_the_gain_comes_to_the_gain() {
    let told = report(&answer("bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.5m&stackLength=100cm"), SI);
    let gain = told.figures.iter().find(|figure| figure.id == "gain").unwrap();
    assert!(!gain.workings.iter().any(|line| line.contains("51 cm ÷ 3 − 5 cm = −5 cm")), "{:?}", gain.workings);
}

#[test]
fn workings_are_in_the_units_of_the_view() {
    let us = told("measuredPull=520N", US);
    for figure in us.figures {
        for line in figure.workings {
            let words: Vec<&str> = line.split([' ', '(', ')', ',', '.']).collect();
            let metric = words.iter().find(|word| ["cm", "mm", "m", "kg", "N", "m/s²"].contains(word));
            assert_eq!(metric, None, "{}: {line}", figure.id);
        }
    }
}

#[test]
fn workings_have_the_decimal_mark_of_the_view() {
    let comma = told("measuredPull=520N", View { decimal: Decimal::Comma, ..SI });
    for figure in comma.figures {
        for line in figure.workings {
            let pointed = line.as_bytes().windows(3).find(
                |three| matches!(three, [before, b'.', after] if before.is_ascii_digit() && after.is_ascii_digit()),
            );
            assert_eq!(pointed, None, "{}: {line}", figure.id);
        }
    }
}

#[test]
fn the_sum_in_the_workings_of_the_strokes_comes_to_the_strokes() {
    let told = told("measuredPull=520N", SI);
    let strokes = told.figures.iter().find(|figure| figure.id == "strokes").unwrap();
    assert!(
        !strokes.workings.iter().any(|line| line.ends_with("11 m ÷ 15 cm")),
        "{}: {:?}",
        strokes.text,
        strokes.workings
    );
}

#[test]
fn a_length_is_never_never() {
    let told = told("handTravel=15cm&measuredPull=900N&setback=30cm", SI);
    let rope = told.figures.iter().find(|figure| figure.id == "ropeHandled").unwrap();
    assert_ne!(rope.text, "never");
}

#[test]
fn a_grip_that_was_entered_is_strength_that_was_entered() {
    let told = told("gripRight=400N", SI);
    assert!(!told.first.contains("How strong you are has not been entered"), "{}", told.first);
}

#[test]
fn a_half_of_a_test_that_cannot_be_read_is_not_also_missing() {
    let draft = Draft::new().set("bodyMass", "80 kg").set("climbHeight", "11 m").set("rig", "tail-3");
    let mut draft = draft.set("testMass", "94.3 kg");
    draft.put("testPull", Said::Text("4oo N".to_owned()));
    let errors = Inputs::of(&draft).expect_err("4oo is no number");
    assert_eq!(errors.len(), 1, "{:?}", error_lines(&errors, SI));
}

/// A hopeless stroke is named first: no strength would move it.
#[test]
fn where_no_strength_would_help_none_is_asked_for() {
    let told = told("handTravel=15cm&measuredPull=700N&setback=30cm", SI);
    assert!(told.first.starts_with("You would not rise"), "{}", told.first);
    assert!(told.second.starts_with("Less setback"), "{}", told.second);
}

/// With weak arms a better stroke alone would not do either, so nothing is promised.
#[test]
fn where_neither_strength_nor_stroke_would_do_alone_both_are_named() {
    let told = told("handTravel=15cm&measuredPull=100N&setback=30cm", SI);
    let end = " Nor do your arms or hands give the 328 N (33 kgf) that one pull takes.";
    assert!(told.first.starts_with("You would not rise") && told.first.ends_with(end), "{}", told.first);
    assert_eq!(told.second, "No one change would move it: it takes more strength and a stroke that gains height.");
}

/// Where the stack leaves no room above the lap, a longer pull changes nothing.
#[test]
fn where_the_stack_leaves_no_room_a_shorter_one_is_advised() {
    let plan = "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.5m&stackLength=100cm&measuredPull=900N";
    let told = report(&answer(plan), SI);
    assert!(told.second.contains("stack shorter") && !told.second.contains("longer pull"), "{}", told.second);
}

#[test]
fn rope_that_the_stack_leaves_no_room_for_is_not_handled() {
    let answer = answer("bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&stackLength=100cm&setback=2cm");
    let (Some(rope), Some(strokes), Some(room)) = (answer.rope_handled, answer.strokes, answer.room) else {
        panic!("all are known: {answer:?}");
    };
    assert!(answer.room_decides());
    // A metre of height is three of rope; what the hitch gives back is hauled again.
    assert!((rope.likely - strokes.likely * room.likely * 3.0).abs() < 1e-9, "{rope:?}");
}

#[test]
fn a_turn_of_ones_own_figure_is_not_said_to_eat_half() {
    for plan in ["upperEfficiency=0.8", "testMass=94.3kg&testPull=400N"] {
        let told = told(&format!("upperTurn=carabiner&lowerTurn=bush-pulley&{plan}"), SI);
        assert!(told.cautions.iter().all(|caution| caution.id != "sliding-turn"), "{plan}");
    }
}

#[test]
fn an_own_test_is_said_to_stand_in_place_of_other_figures() {
    let told = told("upperEfficiency=0.8&testMass=94.3kg&testPull=400N", SI);
    let advantage = told.figures.iter().find(|figure| figure.id == "realAdvantage").unwrap();
    assert!(advantage.workings.iter().any(|line| line.contains("your own test")), "{:?}", advantage.workings);
    assert_eq!(advantage.sources, ["geometry"]);
}

/// Slack that was not measured is a range, and so is the drop.
#[test]
fn a_drop_has_the_range_of_the_slack() {
    let told = told("backup=tail-knot", SI);
    let drop = told.cautions.iter().find(|caution| caution.id == "drop-to-knot").unwrap();
    assert!(drop.text.contains("drop about 1 m, and up to 2 m, before the knot catches"), "{}", drop.text);
}

/// Common practice, no source: a practised adult of about 94 kg all-up sustained pulls of 400 N on a rope-only 3:1 with
/// a hand loop. Whoever is put out of reach of that is put out of reach of what people do; somebody untrained should
/// come out nearer to the limit.
#[test]
fn a_practised_adult_is_not_put_out_of_reach_of_what_one_did() {
    let chance = |more: &str| {
        let rig = "bodyMass=86.3kg&kitMass=8kg&climbHeight=11m&rig=tail-3&testMass=94.3kg&testPull=400N";
        answer(&format!("{rig}&age=45&sex=male&{more}")).verdict.expect("strength is known").chance
    };
    let (practised, untrained) = (chance("training=trained-pulling&hold=hand-loop"), chance("hold=bare-rope"));
    assert!(practised > 0.9 && untrained > 0.5 && untrained < practised, "{practised} {untrained}");
}
