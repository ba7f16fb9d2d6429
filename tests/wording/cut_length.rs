//! What is told about a cord: headline, how it comes out, cautions, pieces, errors.

use super::{SI, US, variant, variants};
use boughline::link;
use boughline::quantity::View;
use boughline::question::cut_length::{Answer, Inputs, ask};
use boughline::words::{CordReport, cord_report, error_lines, message};
use std::collections::BTreeSet;

fn answer(plan: &str) -> Answer {
    let link = link::read(plan);
    assert_eq!(link.notices, [], "{plan}");
    ask(&Inputs::of(&link.draft).unwrap_or_else(|errors| panic!("{plan}: {:?}", error_lines(&errors, SI))))
}

fn told(plan: &str, view: View) -> CordReport {
    cord_report(&answer(plan), view)
}

const PRUSIK: &str = "cordUse=prusik&ropeDiameter=11mm&hitchCord=8mm";

#[rustfmt::skip]
const HEADLINES: &[(&str, &str, &str)] = &[
    (PRUSIK, "About 1.06 m of cord for 20 cm of free legs in all; 1.25 m if everything takes the most it may. Cut the longer.", "In 3 coils it is 30 cm inside off the rope. Tied on before its ends are joined, it begins with a working end of 33 cm."),
    ("cordUse=prusik&ropeDiameter=11mm&hitchCord=8mm&cordEnds=sewn", "Buy it 30 cm long inside; nothing is cut.", "In 3 coils it is 30 cm inside off the rope."),
    ("cordUse=own-hitch&ropeDiameter=11mm&hitchCord=8mm&hitchCoils=1", "About 1.07 m of cord for 30 cm of free legs in all; 1.28 m if everything takes the most it may. Cut the longer.", "In 1 coil it is 36 cm from eye to eye off the rope. Begin with a working end of 51 cm before the first coil."),
    ("cordUse=distel&ropeDiameter=11mm&hitchCord=8mm", "About 1.37 m of cord for 30 cm of free legs in all; 1.61 m if everything takes the most it may. Cut the longer.", "In 5 coils it is 66 cm from eye to eye off the rope. Begin with a working end of 54 cm before the first coil."),
    ("cordUse=distel&ropeDiameter=11mm&hitchCord=8mm&cordCut=1.5m", "1.5 m of cord leaves 43 cm of free legs in all.", "In 5 coils it is 79 cm from eye to eye off the rope. Begin with a working end of 60 cm before the first coil."),
    ("cordUse=openable&ropeDiameter=9.5mm&hitchCord=6mm", "About 1.81 m of cord for 90 cm of free legs in all; 2.01 m if everything takes the most it may. Cut the longer.", "In 4 coils it is 66 cm inside off the rope. Begin in its middle: the first coils leave 69 cm to either end."),
    ("cordUse=blakes&ropeDiameter=12mm&hitchCord=12mm&cordEnds=sewn", "Buy it 1.01 m long from its eye to its end.", "In 4 coils it is 69 cm from its eye to its stopper off the rope."),
    ("cordUse=foot-loop&slingCord=6mm&cordCut=4m", "4 m of cord comes out at 1.8 m inside.", "It may be from 1.73 m to 1.81 m, as its knots are tied."),
    ("cordUse=lanyard&slingCord=12mm", "About 3.31 m of cord; 3.54 m if everything takes the most it may. Cut the longer.", "Finished it is 2.5 m from its eye to its stopper."),
    ("cordUse=haul-cord&haulCord=7mm&rig=haul-cord-3", "About 4.32 m of cord; 5.5 m if everything takes the most it may. Cut the longer.", "Finished it is 3.83 m from its eye to its stopper: 3 strands of 1.11 m, and 50 cm for the hand."),
];

#[test]
fn every_headline_says_what_to_cut_and_how_to_begin() {
    for (plan, first, second) in HEADLINES {
        let told = told(plan, SI);
        assert_eq!((told.first.as_str(), told.second.as_str()), (*first, *second), "{plan}");
    }
    let us = told("cordUse=foot-loop&slingCord=6mm&cordCut=4m", US);
    assert_eq!(us.first, "13 ft 1 in of cord comes out at 5 ft 11 in inside.");
}

#[test]
fn the_defaults_are_named_and_only_they() {
    assert_eq!(
        told(PRUSIK, SI).assumed,
        "Reckoned with, unless you say otherwise: number of coils, 3; number of crossings, 1; ends of the cord, joined, double fisherman’s; free legs in all, 20 cm; fibre of the cords, nylon."
    );
    let all = format!("{PRUSIK}&hitchCoils=4&hitchCrossings=1&cordEnds=double-fisherman&freeLeg=20cm&cordFibre=nylon");
    assert_eq!(told(&all, SI).assumed, "");
    let sling = told("cordUse=hand-loop&slingCord=6mm&bodyMass=80kg", SI).assumed;
    assert_eq!(
        sling,
        "Reckoned with, unless you say otherwise: ends of the cord, joined, double fisherman’s; finished length, 30 cm; fibre of the cords, nylon; clothes and kit, 8 kg."
    );
}

#[rustfmt::skip]
const CAUTIONS: &[(&str, &str, bool, &str)] = &[
    ("", "arithmetic", true, "This is arithmetic, not training. A qualified climber checks the rig and the tree; makers' instructions and labels, local codes and licensed practice win over any number here."),
    ("", "set-dress-test", true, "Set it, dress it and load it low down, every time, before anybody hangs on it. A hitch that slides there will slide above. Never count on slip as a fuse, and never let one run: it melts."),
    ("hitchCord=9.5mm", "cord-too-thick", true, "The cord is 86 % of the rope’s thickness and may not grip: 60 to 80 % is usual, and at least 2 mm less than the rope. Take thinner cord or a thicker rope."),
    ("hitchCord=6mm", "cord-too-thin", false, "The cord is 55 % of the rope’s thickness, less than the usual 60 to 80 %: it grips hard and comes free badly."),
    ("hitchCord=7mm", "thin-life-cord", true, "Cord that somebody lives on in a tree is at least 8 mm, 10 recommended. The 5 to 7 mm of mountaineers, at most half the rope, is for backup loops: another rule for another use."),
    ("ropeDiameter=10mm", "thin-rope", true, "Working rope is 10 to 14 mm thick, and rules for tree workers ask for 1/2 in and 5,000 lbf: under 11 mm no hitch is sure to hold as here."),
    ("cordFibre=hmpe", "cord-melts", true, "High-modulus polyethylene melts near 147 °C (297 °F): no cord for a hitch that slides, which cuts itself through. Not for going down."),
    ("cordFibre=aramid", "cord-heat", false, "Aramid chars only near 500 °C (930 °F); a cover of other fibre melts long before."),
    ("cordFibre=polyester", "cord-heat", true, "Nylon melts near 220 °C (428 °F) and polyester near 250 (482), and a hitch that slides loaded gets there: go down slowly, in stops, with other friction beside it."),
    ("cordFibre=aramid", "stiff-cord", true, "Such cord is often stiff, and knots leave 40 % of it. Pinch a bight of it flat: where much more than a cord’s thickness stays open it grips badly. Test it."),
    ("hitchCord=4mm&bodyMass=200kg", "weak-cord", true, "Tied so, this cord may bear less than a jerky climb puts on it. Take stronger cord."),
    ("hitchCord=8.5mm", "no-standard", true, "The standard for accessory cord covers 4 to 8 mm: what this one bears at least, only its label says."),
    ("cordUse=foot-loop&slingCord=6mm", "no-life-line", true, "This is no life line: something else must hold you whenever you are off the ground."),
    ("", "coils-by-trial", false, "On thin, slick, wet or new rope a hitch takes more coils. Where it slides add one, where it jams take one away, and test again."),
    ("", "trim-later", false, "Cut the longer figure, tie and load it, and trim the tails last: to no less than ten diameters and 10 cm (4 in)."),
    ("workingEnd=30cm", "unlike-legs", false, "With this working end its legs are unlike. Where both go to one connector, begin with the length that makes them alike."),
    ("cordEnds=sewn", "sewn-eyes", false, "With sewn or spliced eyes nothing is cut. The maker says how long it is, and how; never splice or sew a life line without being taught."),
];

#[test]
fn every_caution_about_a_cord_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (more, id, grave, wanted) in CAUTIONS {
        let said = |id: &str| more.split('&').any(|part| part.starts_with(&format!("{id}=")));
        let rest = PRUSIK.split('&').filter(|part| !said(part.split('=').next().unwrap()));
        let plan = rest.chain([*more]).collect::<Vec<_>>().join("&");
        let lines = told(&plan, SI).cautions;
        let found = lines.iter().find(|line| line.id == *id).unwrap_or_else(|| panic!("{id} is wanted: {lines:?}"));
        assert_eq!((found.text.as_str(), found.grave), (*wanted, *grave));
        met.extend(answer(&plan).cautions.iter().map(variant));
    }
    assert_eq!(met, variants(include_str!("../../src/question/cut_length/answer.rs"), "Caution"));
}

#[test]
fn every_piece_says_how_it_comes_about() {
    let pieces = |plan: &str| -> Vec<(String, String)> {
        let told = told(plan, SI).pieces;
        told.iter().map(|piece| (piece.length.noun.to_owned(), piece.length.workings.concat())).collect()
    };
    let pairs = |wanted: &[(&str, &str)]| -> Vec<(String, String)> {
        wanted.iter().map(|(noun, working)| ((*noun).to_owned(), (*working).to_owned())).collect()
    };
    const TAIL: &str = "Ten diameters, and at least 10 cm (4 in).";
    const LEG: &str = "Between hitch and connector.";
    const LAPS: &str = "Laps of the cord round itself and back under them: 24.1 diameters.";
    const EYE: &str = "Once round a connector 12 mm thick.";
    assert_eq!(
        pieces("cordUse=distel&ropeDiameter=11mm&hitchCord=8mm"),
        pairs(&[
            ("tail", TAIL),
            ("knot", LAPS),
            ("eye", EYE),
            ("leg", LEG),
            ("coils round the rope", "5 times round 11.0 mm rope with 8.0 mm cord, along the helix: 6.0 cm each."),
            ("crossings over the rope", "Half way round the rope for every strand that crosses."),
            ("other leg", LEG),
            ("eye of the other end", EYE),
            ("knot of the other end", LAPS),
            ("tail of the other end", TAIL),
        ])
    );
    let bachmann = pieces("cordUse=bachmann&ropeDiameter=11mm&hitchCord=8mm&cordEnds=sewn");
    let wanted = "8 times round 11.0 mm rope and a carabiner’s back with 8.0 mm cord, along the helix: 8.6 cm each.";
    assert_eq!(bachmann.get(1).unwrap().1, wanted);
    let haul = pieces("cordUse=haul-cord&haulCord=7mm&rig=haul-cord-3");
    assert_eq!(haul.get(2).unwrap().1, "Judged: from a hand’s width to an arm’s length.");
    assert_eq!(haul.get(3).unwrap().1, "3 strands, the upper hitch as far off as it comes: 1.11 m each.");
    assert_eq!(pieces("cordUse=lanyard&slingCord=12mm").get(2).unwrap().1, "Its finished length.");
    assert_eq!(pieces("cordUse=hand-loop&slingCord=8mm").get(2).unwrap().1, "Twice its inside length.");
}

#[test]
fn the_sums_are_shown() {
    let told = told("cordUse=prusik&ropeDiameter=11mm&hitchCord=6mm&bodyMass=80kg&cordCut=1m&cameOut=20cm", SI);
    assert_eq!(told.total.workings, ["10 cm + 11 cm + 10 cm + 35 cm + 3 cm + 10 cm + 11 cm + 10 cm"]);
    let found: Vec<_> = told.figures.iter().map(|figure| (figure.id, figure.noun, figure.workings.concat())).collect();
    let wanted = [
        ("cutLength", "cord to cut", "10 cm + 11 cm + 10 cm + 35 cm + 3 cm + 10 cm + 11 cm + 10 cm"),
        ("finishedLength", "finished length", "Half of what goes round in it: legs, coils and crossings."),
        ("freeLegs", "free legs in all", "2 strands of 10 cm hang from the hitch, were they alike."),
        ("workingEnd", "working end to begin with", "All before the first coil: tail, knot, eye and leg."),
        (
            "cordFit",
            "your coils and knots, over the usual",
            "From what you cut and what it came out at, with the shortest tails.",
        ),
        ("cordStrength", "what it bears as tied", "2 × 7.2 kN straight × what its knots keep"),
        (
            "cordLoad",
            "your weight on it, all of it",
            "Body, clothes and kit, hanging still: no part of any rig need carry more.",
        ),
        ("cordPeak", "the same with the jerks of a climb", "× 1.5, from 1.2 to 2.0; a fall asks for far more."),
    ];
    assert_eq!(found, wanted.map(|(id, noun, working)| (id, noun, working.to_owned())));
}

/// The reasons that only a cord meets, with their sentences.
#[rustfmt::skip]
pub(super) const ERRORS: &[(&str, &str, &str)] = &[
    ("cordEnds=scaffold", "EndsOfAnother", "Such ends do not go with this: prusik loop. Choose joined, double fisherman’s, or sewn or spliced eyes."),
    ("freeLeg=20cm&finishedLength=30cm", "TwoLengths", "Free legs in all and finished length follow from each other: say one of them."),
    ("freeLeg=20cm&cordCut=1m", "CutAndWanted", "Free legs in all and cord that you cut cannot both be given: say what you want, or what you cut. With what it came out at, all three go together."),
    ("cameOut=20cm", "CameOutAlone", "Cord that you cut and what it came out at tell something only together: fill in both, or leave both empty."),
    ("cordCut=1m&cordEnds=sewn", "SewnIsBought", "Sewn or spliced eyes are bought by their finished length, and nothing is cut: leave this empty, or choose tied ends."),
    ("cordCut=3m&cameOut=20cm", "OddFit", "With these your coils and knots would take 395 % of what they usually do, and between half and twice is believed. Measure both again."),
    ("cordCut=50cm", "TooShort", "Cord that you cut must be over 86 cm: so much goes before anything hangs."),
    ("finishedLength=10cm", "TooShort", "Finished length must be over 20 cm: so much goes before anything hangs."),
    ("workingEnd=10cm", "WorkingEnd", "Working end to begin with must be between 24 cm and 43 cm here: its knot and tail are in it, and the other end needs the rest."),
    ("cordCut=86.5cm&workingEnd=10cm", "WorkingEnd", "Working end to begin with follows from the rest here: hardly any cord is left to hang. Leave it empty."),
];

#[test]
fn what_is_wrong_with_a_cord_has_its_sentence() {
    for (more, reason, wanted) in ERRORS {
        let plan = format!("{PRUSIK}&{more}");
        let errors = Inputs::of(&link::read(&plan).draft).expect_err("something is wrong with it");
        let found: Vec<_> = errors.iter().map(|error| (variant(&error.reason), message(error, SI))).collect();
        assert_eq!(found, [((*reason).to_owned(), (*wanted).to_owned())], "{more}");
    }
    for (plan, wanted) in [
        (
            "cordUse=haul-cord&haulCord=7mm&rig=tail-3",
            "Choose a rig that has a haul cord, or say how long the finished cord is to be.",
        ),
        ("cordUse=own-hitch&ropeDiameter=11mm&hitchCord=8mm", "Number of coils is needed. Write it like “3”."),
    ] {
        let errors = Inputs::of(&link::read(plan).draft).expect_err("something is wrong with it");
        assert_eq!(errors.iter().map(|error| message(error, SI)).collect::<Vec<_>>(), [wanted]);
    }
}
