//! Every template is told by some plan, and fits its slots: what does not fit shows a brace.

use super::{SI, US};
use boughline::link::{self, Notice};
use boughline::quantity::View;
use boughline::question::can_i_climb::{Answer, Decided, Inputs, Level, Missing, Verdict, ask, helps};
use boughline::question::{
    Effort, Question, advantage, all_fields, coming_down, cut_length, cut_plan, loads, rescue, rope_length,
};
use boughline::words::{
    Format, Subject, advantage_report, as_text, cord_report, cut_report, descent_report, helps_report, loads_report,
    map_report, notice, report, rescue_report, rope_report, row_line, source_line,
};
use std::path::{Path, PathBuf};
use std::sync::OnceLock;

const RIGS: &[&str] = &["hand-over-hand", "tail-3", "tail-5", "moving-rope", "ground-5", "own"];

/// What is said on top of a rig.
const MORE: &[&str] = &[
    "",
    "kitMass=30kg",
    "bodyMass=150kg",
    "stature=1.75m&measuredPull=520N",
    "stature=1.75m&measuredPull=520N&pullTaken=lowest-point&backup=tail-knot&knotSlack=3m",
    "stature=1.75m&measuredPull=520N&pullTaken=ten-repetitions&pullArms=one&climbArms=two&gripRight=400N",
    "stature=1.75m&measuredPull=520N&pullArms=two&climbArms=one&age=45&sex=female",
    "stature=1.75m&measuredPull=1200N&cadence=12&backup=tail-knot",
    "stature=1.75m&gripRight=400N&trunk=unsteady&upperTurn=carabiner",
    "trunk=cervical&gripRight=400N&backup=second-hitch",
    "stature=1.75m&age=45&sex=female&topTurn=ring",
    "age=45",
    "age=85&sex=male",
    "measuredPull=520N&pullHeld=bare-rope&gripRight=100N",
    "measuredPull=520N&trunk=cervical",
    "measuredPull=520N&trunk=cervical&pullHeld=hand-loop",
    "posture=leaning-back&stature=1.75m&measuredPull=520N",
    "handTravel=60cm&measuredPull=900N&setback=30cm",
    "handTravel=5cm&measuredPull=900N&setback=30cm",
    "stature=1.4m&measuredPull=900N&handTravel=1.5m&stackLength=60cm",
    "testMass=80kg&testPull=320N",
    "stature=1.75m&measuredPull=520N&ratedMass=80kg&wayDown=off-the-rope&armPower=90W",
    "measuredPull=520N&trialStrokes=10&trialTime=90s&trialHeight=1.5m&trialMore=5",
    "measuredPull=520N&trialStrokes=10",
    "stature=1.75m&measuredPull=900N&wayDown=lowered&legs=none&ratedMass=89kg&crotchHeight=12.3m",
    "legs=none&stature=1.75m&measuredPull=520N",
    "legs=some&climbArms=one&gripRight=400N",
    "bodyMass=150kg&legs=full&stairs=yes&age=45&sex=female",
    "legs=full&stairs=no&shoulderReach=limited&stature=1.75m",
    "crotchHeight=11m&platformHeight=14m&handTravel=60cm&measuredPull=520N",
    "crotchHeight=12.4m&platformHeight=11.4m&seatHeight=0.5m&anchor=base&handTravel=60cm",
    "platformHeight=11.4m",
    "topEfficiency=0.9&upperEfficiency=0.9&lowerEfficiency=0.9",
    "bodyMass=40kg&stature=1.75m&posture=leaning-back&measuredPull=1640N&armPower=400W",
    "bodyMass=40kg&stature=1.75m&posture=leaning-back&measuredPull=1904N&armPower=400W",
    "bodyMass=40kg&stature=1.75m&measuredPull=1262N&armPower=400W",
];

/// What is said on top of that for all rigs side by side.
const LISTS: &[&str] = &[
    "stature=1.75m&measuredPull=150N&helperPull=450N&topTurn=bearing-pulley",
    "stature=1.75m&measuredPull=150N&timeAllowed=4h",
    "measuredPull=150N",
    "stature=1.75m&measuredPull=900N&wayDown=descend&secondPerson=rescuer",
    "bodyMass=40kg&handTravel=1m&measuredPull=1400N&pullTaken=lowest-point",
];

fn answer(rig: &str, more: &str) -> Option<Answer> {
    let mass = if more.contains("bodyMass") { "" } else { "bodyMass=80kg&" };
    let own = "ownRig=tied.tree--turn.climber.ring--turn.tree--hand.climber--helper.ground.150N";
    let link = link::read(&format!("{mass}climbHeight=11m&rig={rig}&{own}&{more}"));
    Inputs::of(&link.draft).ok().map(|inputs| ask(&inputs, Effort::samples(200)))
}

const DECIDED: [Decided; 13] = [
    Decided::NothingHolds,
    Decided::TopOut,
    Decided::Arms,
    Decided::Hands,
    Decided::ArmsAndHands,
    Decided::Stroke,
    Decided::LastingArms,
    Decided::LastingHands,
    Decided::Power,
    Decided::Time,
    Decided::HarnessClock,
    Decided::RatedMass,
    Decided::Missing,
];

/// The answer with every verdict there could be.
fn judged(answer: &Answer) -> Vec<Answer> {
    let mut answers = vec![answer.clone()];
    for decided in DECIDED {
        for level in [Level::WithinReach, Level::AtLimit, Level::OutOfReach] {
            for (stuck, stronger) in [(0.3, None), (0.6, Some(1.02)), (1.0, Some(1.3)), (0.0, Some(2.5))] {
                let mut judged = answer.clone();
                judged.verdict = Some(Verdict {
                    level,
                    decided,
                    chance: stuck,
                    reaches: Some(stuck).filter(|_| stuck != 0.3),
                    stuck,
                    stronger,
                });
                judged.missing.extend([Missing::Strength, Missing::Stroke]);
                answers.push(judged);
            }
        }
    }
    answers
}

fn collect(value: &serde_json::Value, told: &mut Vec<String>) {
    match value {
        serde_json::Value::String(text) => told.push(text.clone()),
        serde_json::Value::Array(list) => list.iter().for_each(|value| collect(value, told)),
        serde_json::Value::Object(map) => map.values().for_each(|value| collect(value, told)),
        _ => {}
    }
}

/// Plans that tell what only "What does each part carry?" tells.
const LOADS: &[&str] = &[
    "rig=tail-3&anchor=canopy",
    "rig=tail-3&anchor=base&crotchHeight=14m&ropeStrength=2kN&hitchCord=6mm&redirectAngle=120deg&backup=tail-knot&lowerTurn=ring",
    "rig=tail-3&anchor=base&crotchHeight=14m&ropeKind=tree-line&hitchCord=10mm&hitchCordStrength=20kN&pulleyStrength=36kN&connectorStrength=24kN&harnessStrength=23kN&slack=0.2m&limbDiameter=30cm&species=white-oak&limbWood=living&forearmGirth=28cm",
    "rig=hand-over-hand&anchor=canopy&crotchHeight=13m&slack=3m&limbDiameter=6cm&species=white-oak&forearmGirth=28cm",
    "rig=haul-cord-2&anchor=canopy&haulCord=6mm&haulCordStrength=5kN&limbWood=dead",
    "rig=ground-1",
    "rig=moving-rope&topTurn=ring",
    "rig=moving-rope&topTurn=bearing-pulley",
    "rig=tail-3&anchor=canopy&crotchHeight=60m&slack=10m&ropeKind=dynamic",
    "rig=own&ownRig=tied.tree--hand.climber&anchor=canopy&ropeKind=dynamic",
    "rig=own&ownRig=tied.tree--hitch.climber--hand.climber---tied.tree--hitch.climber&anchor=canopy",
    "rig=own&ownRig=tied.tree--hand.climber--knot.climber.3m&anchor=canopy&ropeKind=dynamic",
    "rig=own&ownRig=tied.tree--hand.climber&anchor=canopy",
];

/// Plans that tell what only "How much rope?" tells.
const ROPES: &[&str] = &[
    "crotchHeight=11m&anchor=canopy&overCrotch=30cm&anchorKnot=1m&ropeTail=40cm&ropeSpare=1m&rig=tail-3&hitchHeight=1m",
    "crotchHeight=11m&anchor=canopy&rig=haul-cord-2&ropeOwned=37m",
    "crotchHeight=11m&anchor=canopy-cord&footOffset=3m&redirectRope=2m&ropeTail=30cm&ropeStock=20m",
    "crotchHeight=11m&anchor=canopy-link&ropeOwned=25m&ropeStock=25m",
    "crotchHeight=11m&anchor=canopy-hitch&ropeOwned=10m&ropeStock=10m--400m",
    "crotchHeight=11m&anchor=base&rig=tail-3&ropeOwned=25m",
    "crotchHeight=11m&anchor=base&ropeOwned=27m",
    "crotchHeight=12m&anchor=base-lowerable&ropeOwned=40m&ropeStock=45m--39m",
    "crotchHeight=11m&anchor=base&ropeOwned=2m",
    "crotchHeight=11m&anchor=base&ropeOwned=6m",
    "crotchHeight=11m&anchor=base&ropeOwned=40m",
    "crotchHeight=11m&rig=moving-rope&anchor=base",
    "crotchHeight=11m&rig=ground-3",
    "ropeOwned=30m&anchor=base",
];

/// Cords and hanks of which everything about a cutting plan is told.
const CUTS: &[&str] = &[
    "cords=2~6mm~1.8m&rig=tail-3",
    "rig=haul-cord-3&haulCord=7mm&crotchHeight=12m&anchor=canopy-cord&ropeOwned=60m",
    "rig=haul-cord-3&haulCord=7mm&crotchHeight=12m&anchor=canopy",
    "cordUse=prusik&ropeDiameter=11mm&hitchCord=6mm&rig=haul-cord-3&crotchHeight=90m&anchor=canopy",
    "cords=5~6mm~1.8m&hanks=any~4m~12.5&kerf=0mm",
    "cords=3~6mm~1.8m&hanks=6mm~4m~0~x1,6mm~5m~9",
    "cords=2~6mm~1.8m&hanks=6mm~4m~0",
    "cords=1~6mm~60m,1~7mm~2m",
    "cords=2~6mm~4m&hanks=6mm~5m~x1",
];

/// Cords of every kind, with every caution.
const CORDS: &[&str] = &[
    "cordUse=prusik&ropeDiameter=11mm&hitchCord=4mm&bodyMass=200kg&cordCut=1m&cameOut=40cm",
    "cordUse=prusik&ropeDiameter=11mm&hitchCord=9.5mm",
    "cordUse=bachmann&ropeDiameter=11mm&hitchCord=8mm&cordCut=2m",
    "cordUse=distel&ropeDiameter=9.5mm&hitchCord=8mm&cordCut=7ft&workingEnd=16in&cordFibre=aramid",
    "cordUse=own-hitch&ropeDiameter=13mm&hitchCord=10mm&cordFibre=hmpe&hitchCoils=1",
    "cordUse=own-hitch&ropeDiameter=13mm&hitchCord=8mm&hitchCoils=5&cordEnds=sewn",
    "cordUse=openable&ropeDiameter=9.5mm&hitchCord=6mm",
    "cordUse=blakes&ropeDiameter=12mm&hitchCord=12mm",
    "cordUse=blakes&ropeDiameter=12mm&hitchCord=12mm&cordEnds=sewn",
    "cordUse=foot-loop&slingCord=6mm",
    "cordUse=foot-loop&slingCord=6mm&cordCut=4m",
    "cordUse=lanyard&slingCord=12mm",
    "cordUse=haul-cord&haulCord=7mm&rig=haul-cord-3",
];

/// Plans that tell what only coming down and being stuck tell.
const DOWN: &[&str] = &[
    "rig=tail-3",
    "rig=tail-3&crotchHeight=12m&anchor=base&ropeOwned=20m",
    "rig=tail-3&brake=none&descentSpeed=1.5m/s",
    "rig=tail-3&gripRight=390N&brake=redirect&gloves=slick&backup=second-hitch",
    "rig=tail-3&gripRight=700N&brake=turns&brakeTurns=2&descentStops=2m",
    "rig=tail-3&gripRight=250N&brakeMeasured=4",
    "rig=tail-3&gripRight=265N",
    "rig=tail-3&cordUse=prusik&hitchCord=6mm&ropeDiameter=11mm&cordFibre=hmpe&climbHeight=12m&crotchHeight=12m",
    "rig=tail-3&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&climbHeight=60m",
    "rig=tail-3&cordUse=prusik&hitchCord=10mm&ropeDiameter=13mm&heatShare=1%",
    "rig=tail-3&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm",
    "rig=tail-3&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&heatShare=0.20&descentSpeed=0.3m/s",
    "rig=tail-3&cordUse=distel&hitchCord=4mm&ropeDiameter=11mm&heatShare=1&climbHeight=90m&bodyMass=180kg",
    "rig=moving-rope&topTurn=ring",
    "rig=ground-3",
    "rig=own&ownRig=tied.tree--hand.climber",
];

const STUCK: &[&str] = &[
    "rig=tail-3&anchor=canopy",
    "rig=tail-3&anchor=canopy&secondPerson=rescuer&wayDown=lowered&legs=none&bodyMass=150kg",
    "rig=tail-3&anchor=canopy-hitch&secondPerson=caller&legs=full",
    "rig=tail-3&anchor=base&secondPerson=rescuer&backup=tail-knot&topTurn=bearing-pulley",
    "rig=tail-3&anchor=base&secondPerson=nobody",
    "rig=tail-3&anchor=base&secondPerson=rescuer&bodyMass=170kg&crotchHeight=11m",
    "rig=tail-3&anchor=canopy&secondPerson=rescuer&secondRope=in-the-tree&climbHeight=30m",
    "rig=tail-3&anchor=base-lowerable&secondPerson=rescuer&crotchHeight=14m&secondRope=in-the-tree&footBrake=stem&wayDown=descend",
    "rig=tail-3&anchor=base-lowerable&climbHeight=2m&secondPerson=rescuer",
    "rig=tail-3&anchor=base-lowerable",
    "rig=tail-3&anchor=base-lowerable&secondPerson=rescuer&crotchHeight=14m&ropeOwned=40m",
    "rig=ground-3",
    "rig=own&ownRig=tied.tree--hand.climber&anchor=canopy",
];

/// Plans of which everything that stands on paper is told.
const SHEETS: &[&str] = &[
    "",
    "bodyMass=12&cords=2~6mm~1.8m",
    "bodyMass=80kg&climbHeight=11m&rig=tail-3&crotchHeight=13m&anchor=base-lowerable&secondPerson=rescuer&wayDown=descend&stature=1.75m&measuredPull=620N&gripRight=420N&hitchCord=8mm&ropeDiameter=11mm&cordUse=distel&limbDiameter=20cm&species=white-oak&legs=full&stairs=yes",
    "rig=haul-cord-3&haulCord=7mm&crotchHeight=12m&anchor=canopy&cords=2~6mm~1.8m~foot%20loop",
    "bodyMass=80kg&climbHeight=11m&rig=tail-3&anchor=canopy",
    // Strong enough, and nothing said of anchor, parts or rescue.
    "bodyMass=80kg&climbHeight=9m&rig=tail-3&stature=1.75m&timeAllowed=1h&measuredPull=800N&gripRight=500N&gripLeft=500N&wayDown=descend&secondPerson=rescuer",
];

fn told_in(view: View) -> Vec<String> {
    let mut told = Vec::new();
    for rig in RIGS {
        for more in MORE {
            for answer in answer(rig, more).iter().flat_map(judged) {
                collect(&serde_json::to_value(report(&answer, view)).expect("a report is plain"), &mut told);
            }
        }
    }
    // Nobody chose a rig.
    for answer in judged(&super::answer("bodyMass=80kg&climbHeight=11m&age=45&sex=female")) {
        collect(&serde_json::to_value(report(&answer, view)).expect("a report is plain"), &mut told);
    }
    for more in MORE.iter().chain(LISTS) {
        let link = link::read(&format!(
            "{more}&climbHeight=11m&rig=tail-3&{}",
            if more.contains("bodyMass") { "" } else { "bodyMass=80kg" }
        ));
        let Ok(inputs) = advantage::Inputs::of(&link.draft) else { continue };
        let list = advantage_report(&advantage::ask(&inputs, Effort::samples(200)), view);
        collect(&serde_json::to_value(list).expect("a report is plain"), &mut told);
        let one = link::read(&format!(
            "{more}&climbHeight=11m&rig=tail-3&{}",
            if more.contains("bodyMass") { "" } else { "bodyMass=80kg&upperTurn=carabiner" }
        ));
        if let Ok(inputs) = Inputs::of(&one.draft) {
            let helps = helps(&inputs, Effort::samples(50));
            collect(&serde_json::to_value(helps_report(helps.as_ref(), view)).expect("it is plain"), &mut told);
        }
        let map = map_report(&advantage::map(&inputs, 9, 9), view);
        collect(&serde_json::to_value(map).expect("a map is plain"), &mut told);
    }
    for more in LOADS {
        let link = link::read(&format!("bodyMass=80kg&climbHeight=11m&{more}"));
        let inputs = loads::Inputs::of(&link.draft).expect(more);
        let report = loads_report(&loads::ask(&inputs, Effort::samples(200)), view);
        collect(&serde_json::to_value(report).expect("a report is plain"), &mut told);
    }
    for more in ROPES {
        let inputs = rope_length::Inputs::of(&link::read(more).draft).expect(more);
        let report = rope_report(&rope_length::ask(&inputs), view);
        collect(&serde_json::to_value(report).expect("a report is plain"), &mut told);
    }
    for plan in CUTS {
        let inputs = cut_plan::Inputs::of(&link::read(plan).draft).expect(plan);
        let mut answer = cut_plan::ask(&inputs, Effort::FULL);
        for part in 0..4 {
            collect(&serde_json::to_value(cut_report(&answer, view)).expect("a report is plain"), &mut told);
            let cut_plan::Outcome::Plan(best) = &mut answer.kinds[0].outcome else { continue };
            match part {
                0 => (best.remainder_proved, answer.kinds[0].more) = (false, true),
                1 => (best.proved, best.least_hanks) = (false, 0),
                _ => best.least_cost = 0,
            }
        }
        for outcome in [cut_plan::Outcome::RunsOut { proved: false }, cut_plan::Outcome::TooMuch] {
            answer.kinds[0].outcome = outcome;
            collect(&serde_json::to_value(cut_report(&answer, view)).expect("a report is plain"), &mut told);
        }
    }
    for plan in CORDS {
        let inputs = cut_length::Inputs::of(&link::read(plan).draft).expect(plan);
        let report = cord_report(&cut_length::ask(&inputs), view);
        collect(&serde_json::to_value(report).expect("a report is plain"), &mut told);
    }
    for (list, stuck) in [(DOWN, false), (STUCK, true)] {
        for more in list {
            let mass = if more.contains("bodyMass") { "" } else { "&bodyMass=80kg" };
            let height = if more.contains("climbHeight") { "" } else { "&climbHeight=11m" };
            let draft = link::read(&format!("{more}{mass}{height}")).draft;
            let told_of = if stuck {
                let inputs = rescue::Inputs::of(&draft).expect(more);
                serde_json::to_value(rescue_report(&rescue::ask(&inputs), view))
            } else {
                let inputs = coming_down::Inputs::of(&draft).expect(more);
                serde_json::to_value(descent_report(&coming_down::ask(&inputs, Effort::samples(200)), view))
            };
            collect(&told_of.expect("a report is plain"), &mut told);
        }
    }
    for row in all_fields() {
        collect(&serde_json::to_value(row_line(row, view)).expect("a row is plain"), &mut told);
    }
    for plan in SHEETS {
        let draft = link::read(plan).draft;
        let answers = Question::ALL.iter().map(|question| Subject::Answer(*question));
        for subject in answers.chain([Subject::TripSheet]) {
            for format in [Format::Text, Format::Markdown] {
                told.push(as_text(subject, &draft, view, Effort::samples(50), format, "https://example.org/"));
            }
        }
    }
    for part in ["v=9", "f=0", "q=how-far", "boots=11", "v=1&v=1"] {
        told.extend(link::read(part).notices.iter().map(notice));
    }
    for key in ["q", "f", "u", "d", "bodyMass"] {
        told.push(notice(&Notice::Twice(key.to_owned())));
    }
    told.extend(link::read("bodyMass=").notices.iter().map(notice));
    told.extend(boughline::source::SOURCES.iter().map(|source| source_line(source).text));
    told.sort();
    told.dedup();
    told
}

/// The texts in a source that people read: those with a space, or a slot; without its comments and tests.
fn literals(source: &str) -> Vec<String> {
    let code = source.split("#[cfg(test)]").next().unwrap_or_default();
    let code: String = code.lines().filter(|line| !line.trim_start().starts_with("//")).collect();
    let texts = code.split('"').skip(1).step_by(2);
    texts.filter(|text| text.contains([' ', '{'])).map(str::to_owned).collect()
}

/// What stands between the slots of a template.
fn pieces(template: &str) -> Vec<&str> {
    template.split('{').flat_map(|part| part.rsplit('}').take(1)).filter(|piece| !piece.trim().is_empty()).collect()
}

/// Files whose texts have tests of their own: what is wrong is told of no plan, a limb and a rig of one's own by rows.
const ASKED_ELSEWHERE: &[&str] =
    &["error.rs", "misread.rs", "refusal.rs", "limb.rs", "own_rig.rs", "slip.rs", "cut_list.rs"];

/// Every text that people read in the files that word it.
pub(crate) fn every_literal() -> Vec<String> {
    let read = |path: PathBuf| literals(&std::fs::read_to_string(path).expect("a file of the library"));
    all_files_of_words().into_iter().flat_map(read).collect()
}

/// The files of the library that word what people read, but those asked elsewhere.
fn files_of_words() -> Vec<PathBuf> {
    let elsewhere = |path: &PathBuf| ASKED_ELSEWHERE.iter().any(|name| path.ends_with(name));
    all_files_of_words().into_iter().filter(|path| !elsewhere(path)).collect()
}

fn all_files_of_words() -> Vec<PathBuf> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/words");
    let mut files = Vec::new();
    for folder in [root.clone(), root.join("figures"), root.join("sheet")] {
        for entry in std::fs::read_dir(folder).expect("a folder of the library") {
            let path = entry.expect("a file of the library").path();
            if path.extension().is_some_and(|extension| extension == "rs") {
                files.push(path);
            }
        }
    }
    assert!(files.len() > 50, "they are found at all: {}", files.len());
    files
}

/// Everything that the plans here tell, in both views.
pub(crate) fn all_told() -> &'static [String] {
    static TOLD: OnceLock<Vec<String>> = OnceLock::new();
    TOLD.get_or_init(|| [SI, US].map(told_in).concat())
}

#[test]
fn every_template_is_told_and_fits_its_slots() {
    let told = all_told();
    for text in told {
        assert!(!text.contains(['{', '}']), "{text}");
    }
    let all = told.join("\n");
    let mut untold = Vec::new();
    for path in files_of_words() {
        let source = &std::fs::read_to_string(&path).expect("a file of the library");
        let literals = literals(source);
        untold.extend(
            literals.iter().flat_map(|text| pieces(text)).filter(|piece| !all.contains(piece)).map(str::to_owned),
        );
    }
    assert_eq!(untold, Vec::<String>::new());
}

#[test]
fn templates_are_read_from_the_source() {
    let source = "// \"no text\"\nfn f() { say(\"One {P}, {} of\", \"word\", \"{r2}\") }\n#[cfg(test)]\n\"a test\"";
    assert_eq!(literals(source), ["One {P}, {} of", "{r2}"]);
    assert_eq!(pieces("One {P}, {} of {%}"), ["One ", ", ", " of "]);
}
