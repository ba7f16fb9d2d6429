//! Tables are whole: ids that never change, fields that explain themselves, sources that are used.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, clippy::unwrap_used, reason = "what is missing fails the test")]

#[path = "tables/ids.rs"]
mod ids;
#[path = "tables/spelling.rs"]
mod spelling;
#[path = "every_question/told.rs"]
mod told;

use boughline::Draft;
use boughline::field::{Kind, Row};
use boughline::gear::CLAMP_LOAD;
use boughline::link::read;
use boughline::quantity::{System, View};
use boughline::question::can_i_climb::{Inputs, ask, helps};
use boughline::question::{
    Effort, Question, advantage, all_fields, coming_down, cut_length, loads, rescue, rope_length,
};
use boughline::source::SOURCES;
use boughline::tree::Species;
use boughline::words::{
    AdvantageReport, CautionLine, CordReport, DescentReport, FeasibilityMap, Figure, LegLine, LoadsReport, Report,
    RescueReport, RopeReport, SourceLine, advantage_report, cord_report, descent_report, helps_report, loads_report,
    map_report, report, rescue_report, rope_report, row_line,
};
use std::collections::BTreeSet;
use told::errors;

/// Plans that between them bring out every figure and every caution.
const PLANS: &[&str] = &[
    "bodyMass=80kg&climbHeight=11m&rig=tail-3",
    "bodyMass=80kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=400N&gripRight=300N&backup=tail-knot&upperTurn=ring&lowerTurn=bush-pulley",
    "bodyMass=100kg&climbHeight=11m&rig=tail-3&stature=1.75m&measuredPull=400N&testMass=94.3kg&testPull=400N&upperTurn=carabiner",
    "bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=520N",
    "bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=520N&gripRight=400N&trialStrokes=10&trialTime=90s&trialHeight=1.5m",
    "bodyMass=150kg&climbHeight=11m&rig=hand-over-hand&handTravel=60cm&measuredPull=900N",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&measuredPull=900N&backup=second-hitch",
    "bodyMass=60kg&climbHeight=11m&rig=moving-rope&measuredPull=900N&gripRight=300N&age=50&sex=female&stature=170cm&cadence=6",
    "bodyMass=60kg&climbHeight=11m&rig=haul-cord-2&age=50&sex=female",
    "bodyMass=60kg&climbHeight=11m&rig=ground-5&legs=some",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&stature=170cm&trunk=unsteady&climbArms=one",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&legs=full&stairs=yes",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&legs=full&stairs=no",
    "bodyMass=60kg&climbHeight=11m&rig=ground-5",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&handTravel=60cm&crotchHeight=11m&platformHeight=11m",
    "bodyMass=60kg&climbHeight=11m&rig=tail-3&crotchHeight=12.4m&platformHeight=11.4m&seatHeight=0.5m",
    "bodyMass=80kg&climbHeight=3m&rig=haul-cord-2&measuredPull=850N&stature=1.75m",
    "bodyMass=80kg&climbHeight=25m&rig=tail-5&measuredPull=600N&stature=1.75m",
    "bodyMass=60kg&climbHeight=11m&rig=own&ownRig=tied.tree--turn.climber.ring--turn.tree--hand.climber--helper.ground.150N",
];

/// Plans that between them bring out every piece of a rope and every caution about one that a plan can bring.
const ROPES: &[&str] = &[
    "crotchHeight=11m&anchor=canopy&ropeOwned=30m",
    "crotchHeight=11m&anchor=base&rig=tail-3&ropeTail=10cm&ropeOwned=20m",
    "crotchHeight=11m&anchor=base-lowerable&rig=haul-cord-2&footOffset=3m&redirectRope=2m&ropeOwned=30m",
    "crotchHeight=11m&anchor=canopy-link&stemGirth=60cm",
    "anchor=canopy-hitch&ropeOwned=30m",
];

fn rope_reports() -> Vec<RopeReport> {
    let report = |plan: &&str| {
        let inputs = rope_length::Inputs::of(&read(plan).draft).expect(plan);
        rope_report(&rope_length::ask(&inputs), View::default())
    };
    ROPES.iter().map(report).collect()
}

/// Cords that between them bring out every piece of one, every figure and every caution.
const CORDS: &[&str] = &[
    "cordUse=prusik&ropeDiameter=11mm&hitchCord=4mm&bodyMass=200kg&cordCut=1m&cameOut=40cm",
    "cordUse=distel&ropeDiameter=9.5mm&hitchCord=8mm&cordCut=7ft&workingEnd=16in&cordFibre=aramid",
    "cordUse=schwabisch&ropeDiameter=13mm&hitchCord=10mm&cordFibre=hmpe",
    "cordUse=openable&ropeDiameter=9.5mm&hitchCord=6mm",
    "cordUse=blakes&ropeDiameter=12mm&hitchCord=12mm&cordEnds=sewn",
    "cordUse=foot-loop&slingCord=6mm",
    "cordUse=haul-cord&haulCord=7mm&rig=haul-cord-3",
];

fn cord_reports() -> Vec<CordReport> {
    let report = |plan: &&str| {
        let inputs = cut_length::Inputs::of(&read(plan).draft).expect(plan);
        cord_report(&cut_length::ask(&inputs), View::default())
    };
    CORDS.iter().map(report).collect()
}

/// Ways down and ways to be stuck that between them bring out every figure, caution and source.
const DOWN: &[&str] = &[
    "rig=tail-3&gripRight=390N&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&descentSpeed=1m/s&gloves=slick",
    "rig=tail-3&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&heatShare=0.20&descentSpeed=0.3m/s",
    "rig=tail-3&crotchHeight=12m&anchor=base&ropeOwned=20m",
    "rig=tail-3&brake=none",
    "rig=tail-3&cordUse=prusik&hitchCord=6mm&ropeDiameter=11mm&cordFibre=hmpe&climbHeight=12m&crotchHeight=12m",
    "rig=tail-3&cordUse=prusik&hitchCord=8mm&ropeDiameter=11mm&climbHeight=60m",
    "rig=tail-3&brake=turns&backup=second-hitch&gripRight=250N",
    "rig=ground-3",
];
const STUCK: &[&str] = &[
    "rig=tail-3&anchor=canopy&legs=none",
    "rig=tail-3&anchor=canopy-hitch&secondPerson=nobody&wayDown=lowered&bodyMass=150kg&backup=tail-knot",
    "rig=own&ownRig=tied.tree--hand.climber&anchor=canopy",
    "rig=tail-3&anchor=base&secondPerson=rescuer&topTurn=bearing-pulley",
    "rig=tail-3&anchor=base-lowerable&secondPerson=rescuer&crotchHeight=14m",
];

fn on_the_way_down(plan: &str) -> Draft {
    let mass = if plan.contains("bodyMass") { "" } else { "bodyMass=80kg&" };
    let height = if plan.contains("climbHeight") { "" } else { "climbHeight=11m&" };
    read(&format!("{mass}{height}{plan}")).draft
}

fn descent_reports() -> Vec<DescentReport> {
    let report = |plan: &&str| {
        let inputs = coming_down::Inputs::of(&on_the_way_down(plan)).expect(plan);
        descent_report(&coming_down::ask(&inputs, Effort::samples(200)), View::default())
    };
    DOWN.iter().map(report).collect()
}

fn rescue_reports() -> Vec<RescueReport> {
    let report = |plan: &&str| {
        let inputs = rescue::Inputs::of(&on_the_way_down(plan)).expect(plan);
        rescue_report(&rescue::ask(&inputs), View::default())
    };
    STUCK.iter().map(report).collect()
}

/// The figures of every state.
fn pieces(report: &RopeReport) -> impl Iterator<Item = &Figure> {
    report.states.iter().flat_map(|state| state.items.iter().chain([&state.total]))
}

/// What "Which advantage?" says of plans, and its map.
fn advantages() -> Vec<(AdvantageReport, FeasibilityMap)> {
    let report = |plan: &&str| {
        let inputs = advantage::Inputs::of(&read(plan).draft).expect(plan);
        let list = advantage_report(&advantage::ask(&inputs, Effort::QUICK), View::default());
        (list, map_report(&advantage::map(&inputs, 5, 5), View::default()))
    };
    PLANS.iter().map(report).collect()
}

fn reports() -> Vec<Report> {
    let report = |plan: &&str| {
        let inputs = Inputs::of(&read(plan).draft).expect(plan);
        report(&ask(&inputs, Effort::QUICK), View::default())
    };
    PLANS.iter().map(report).collect()
}

/// A letter, then letters and digits: `bodyMass`.
fn is_camel_case(id: &str) -> bool {
    id.starts_with(|first: char| first.is_ascii_lowercase()) && id.chars().all(|letter| letter.is_ascii_alphanumeric())
}

/// Words of letters and digits with one hyphen between them: `tail-3`.
fn is_kebab_case(id: &str) -> bool {
    id.split('-').all(|word| {
        !word.is_empty() && word.chars().all(|letter| letter.is_ascii_lowercase() || letter.is_ascii_digit())
    })
}

fn is_sentence(text: &str) -> bool {
    text.starts_with(|first: char| first.is_uppercase() || first.is_ascii_digit()) && text.ends_with(['.', '?'])
}

fn differ<'a>(ids: impl IntoIterator<Item = &'a str>) {
    let mut met = BTreeSet::new();
    for id in ids {
        assert!(met.insert(id), "{id} twice");
    }
}

#[test]
fn ids_differ_and_have_their_form() {
    let fields = all_fields();
    differ(fields.iter().map(|row| row.id));
    assert!(fields.iter().all(|row| is_camel_case(row.id)));
    for row in fields {
        if let Kind::Choice { options, .. } = row.kind {
            assert!(options.len() > 1, "{}: one is no choice", row.id);
            differ(options.iter().map(|option| option.id));
            differ(options.iter().map(|option| option.noun));
            assert!(options.iter().all(|option| is_kebab_case(option.id)), "{}", row.id);
        }
    }
    differ(SOURCES.iter().map(|source| source.id));
    differ(SOURCES.iter().map(|source| source.title));
    for report in reports() {
        differ(report.figures.iter().map(|figure| figure.id));
        differ(report.cautions.iter().map(|caution| caution.id));
        differ(report.parts.iter().map(|part| part.id.as_str()));
        assert!(report.figures.iter().all(|figure| is_camel_case(figure.id)));
        assert!(report.cautions.iter().all(|caution| is_kebab_case(caution.id)));
    }
    for report in rope_reports() {
        differ(report.figures.iter().map(|figure| figure.id));
        differ(report.cautions.iter().map(|caution| caution.id));
        differ(report.states.iter().map(|state| state.id));
        for state in &report.states {
            differ(state.items.iter().chain([&state.total]).map(|figure| figure.id));
        }
        assert!(report.figures.iter().chain(pieces(&report)).all(|figure| is_camel_case(figure.id)));
        assert!(report.cautions.iter().all(|caution| is_kebab_case(caution.id)));
        assert!(report.states.iter().all(|state| is_kebab_case(state.id)));
    }
    for report in cord_reports() {
        let lengths = report.pieces.iter().map(|piece| piece.length.id);
        differ(report.figures.iter().map(|figure| figure.id).chain(lengths.clone()));
        differ(report.cautions.iter().map(|caution| caution.id));
        assert!(lengths.chain(report.figures.iter().map(|figure| figure.id)).all(is_camel_case));
        assert!(report.cautions.iter().all(|caution| is_kebab_case(caution.id)));
        assert!(report.pieces.iter().all(|piece| is_kebab_case(piece.kind)));
    }
}

#[test]
fn every_field_explains_itself() {
    let nouns: Vec<&str> = all_fields().iter().map(|row| row.noun).collect();
    differ(nouns);
    for row in all_fields() {
        let Row { id, noun, hint, why, .. } = row;
        assert!(noun.len() > 2 && !noun.ends_with('.') && !is_sentence(noun), "{id}: {noun}");
        assert!(is_sentence(why) && why.len() > 15, "{id}: {why}");
        assert!(hint.is_empty() || is_sentence(hint), "{id}: {hint}");
        match row.kind {
            Kind::Choice { options, .. } => {
                let all_hints = options.iter().all(|option| is_sentence(option.hint));
                assert!(
                    !hint.is_empty() || all_hints,
                    "{id} says neither in one place nor at each option what it means"
                );
            }
            _ => assert!(!hint.is_empty(), "{id} does not say how to find the value"),
        }
    }
}

/// Plans that between them ask for every field: some are read only with a certain rig or cord.
const ASKING: &[&str] = &[
    "rig=own",
    "cordUse=own-hitch",
    "cordUse=foot-loop",
    "cordUse=haul-cord&rig=haul-cord-3",
    "cordUse=own-hitch&ropeDiameter=11mm&hitchCord=6mm&rig=tail-3&crotchHeight=12m&anchor=canopy-cord",
];

/// A box that a question offers and does not read would take anything and change nothing; one that it reads and does
/// not offer could not be filled in.
#[test]
fn a_question_reads_its_fields_and_no_others() {
    for row in all_fields() {
        let line = row_line(row, View::default());
        let reads = |question: &&Question| {
            ASKING.iter().any(|plan| {
                let draft = read(plan).draft.set(row.id, "?");
                errors(**question, &draft).iter().flat_map(|error| &error.fields).any(|id| *id == row.id)
            })
        };
        let reading: Vec<&str> = Question::ALL.iter().filter(reads).map(|question| question.id()).collect();
        assert_eq!(line.questions, reading, "{}: who says to ask for it, and whose inputs read it", row.id);
    }
}

/// A body's figures can be left out of a link, and only those.
#[test]
fn fields_about_the_body_are_private() {
    let private: Vec<&str> = all_fields().iter().filter(|row| row.private).map(|row| row.id).collect();
    let body = [
        "bodyMass",
        "trialStrokes",
        "trialTime",
        "trialHeight",
        "trialMore",
        "measuredPull",
        "pullArms",
        "climbArms",
        "gripRight",
        "gripLeft",
        "age",
        "sex",
        "training",
        "trunk",
        "legs",
        "stairs",
        "stature",
        "shoulderReach",
        "handTravel",
        "armPower",
        "testMass",
        "testPull",
        "seatHeight",
        "forearmGirth",
    ];
    assert_eq!(private, body, "a field is private if, and only if, it is about the body: then it is in this list");
}

#[test]
fn every_field_is_shown_whole_in_either_system() {
    for system in [System::Si, System::Us] {
        for row in all_fields() {
            let line = row_line(row, View { system, ..View::default() });
            assert_eq!((line.id, line.noun, line.why), (row.id, row.noun, row.why));
            match row.kind {
                Kind::Choice { options, likely } => {
                    assert_eq!(line.options.as_ref().map(Vec::len), Some(options.len()));
                    assert_eq!(line.likely.as_deref(), likely);
                }
                Kind::Text(form) => {
                    let example = line.example.expect(row.id);
                    assert_eq!((row.tidied(&example, system).as_str(), line.kind), (form.example, "text"));
                    assert!(row.reading(&boughline::field::Said::Text(example)).is_ok(), "{}", row.id);
                }
                _ => {
                    let example = line.example.expect(row.id);
                    let said = boughline::field::Said::Text(example.clone());
                    assert!(row.reading(&said).is_ok(), "{}: the example “{example}” is not taken", row.id);
                    assert_eq!(row.tidied(&example, system), example, "{}", row.id);
                    assert!(line.range.is_some(), "{}", row.id);
                    let likely = line.likely.unwrap_or_default();
                    let ends = likely.split_once(", from ").and_then(|(_, ends)| ends.split_once(" to "));
                    assert!(ends.is_none_or(|(low, high)| low != high), "{}: “{likely}” is no range", row.id);
                }
            }
        }
    }
}

/// What is shown rests on the sources that are shown, and they on nothing else.
fn rests_on(figures: &[&Figure], cautions: &[CautionLine], legs: Option<&LegLine>, sources: &[SourceLine]) {
    let shown: Vec<&str> = sources.iter().map(|source| source.id).collect();
    for figure in figures {
        assert!(!figure.workings.is_empty() && !figure.sources.is_empty(), "{}", figure.id);
        assert!(figure.sources.iter().all(|id| shown.contains(id)), "{} rests on what is not shown", figure.id);
    }
    for caution in cautions {
        assert!(caution.sources.iter().all(|id| shown.contains(id)), "{} rests on what is not shown", caution.id);
    }
    for source in legs.iter().flat_map(|legs| &legs.sources) {
        assert!(shown.contains(source), "the legs rest on what is not shown");
    }
    let figures = figures.iter().map(|figure| &figure.sources).chain(legs.map(|legs| &legs.sources));
    let used: Vec<&str> = figures.chain(cautions.iter().map(|caution| &caution.sources)).flatten().copied().collect();
    assert!(shown.iter().all(|id| used.contains(id)));
}

#[test]
fn every_figure_has_workings_and_sources_that_are_known() {
    for report in reports() {
        rests_on(&report.figures.iter().collect::<Vec<_>>(), &report.cautions, report.legs.as_ref(), &report.sources);
    }
    for report in rope_reports() {
        let figures: Vec<&Figure> = report.figures.iter().chain(pieces(&report)).collect();
        rests_on(&figures, &report.cautions, None, &report.sources);
    }
    for report in cord_reports() {
        let lengths = report.pieces.iter().map(|piece| &piece.length);
        let figures: Vec<&Figure> = report.figures.iter().chain(lengths).collect();
        rests_on(&figures, &report.cautions, None, &report.sources);
    }
    let down = descent_reports().into_iter().map(|report| (report.figures, report.cautions, report.sources));
    let stuck = rescue_reports().into_iter().map(|report| (report.figures, report.cautions, report.sources));
    for (figures, cautions, sources) in down.chain(stuck) {
        let shown: Vec<&str> = sources.iter().map(|source| source.id).collect();
        differ(figures.iter().map(|figure| figure.id));
        differ(cautions.iter().map(|caution| caution.id));
        for figure in &figures {
            assert!(is_camel_case(figure.id) && !figure.workings.is_empty() && !figure.sources.is_empty());
            assert!(figure.sources.iter().all(|id| shown.contains(id)), "{} rests on what is not shown", figure.id);
        }
        for caution in &cautions {
            assert!(is_kebab_case(caution.id));
            assert!(caution.sources.iter().all(|id| shown.contains(id)), "{} rests on what is not shown", caution.id);
        }
    }
    for (list, _) in advantages() {
        let figures: Vec<&Figure> = list.rigs.iter().flat_map(|rig| &rig.figures).chain(&list.figures).collect();
        rests_on(&figures, &list.cautions, None, &list.sources);
    }
}

/// Answers that show what loads rest on.
fn load_reports() -> Vec<LoadsReport> {
    let plans = [
        "rig=tail-3&anchor=base&crotchHeight=14m&ropeKind=low-stretch-a&hitchCord=6mm&limbDiameter=30cm&species=white-oak&forearmGirth=28cm",
        "rig=hand-over-hand&anchor=canopy&crotchHeight=13m&ropeKind=tree-line&slack=3m&limbWood=dead",
        "rig=tail-3&anchor=base-lowerable&crotchHeight=14m&redirectAngle=60deg&hitchCord=10mm&backup=tail-knot",
        "rig=ground-3",
    ];
    plans
        .iter()
        .map(|plan| {
            let link = read(&format!("bodyMass=80kg&climbHeight=11m&{plan}"));
            let inputs = loads::Inputs::of(&link.draft).expect("in order");
            loads_report(&loads::ask(&inputs, Effort::QUICK), View::default())
        })
        .collect()
}

#[test]
fn every_figure_of_loads_has_sources_that_are_shown() {
    for report in load_reports() {
        let shown: Vec<&str> = report.sources.iter().map(|source| source.id).collect();
        let parts = report.states.iter().flat_map(|state| &state.parts);
        let of_parts = parts.flat_map(|part| [Some(&part.load), Some(&part.peak), part.strength.as_ref()]).flatten();
        for figure in report.figures.iter().chain(&report.limb.figures) {
            assert!(!figure.workings.is_empty() && !figure.sources.is_empty(), "{}", figure.id);
        }
        for figure in report.figures.iter().chain(&report.limb.figures).chain(of_parts) {
            assert!(figure.sources.iter().all(|id| shown.contains(id)), "{} rests on what is not shown", figure.id);
        }
    }
}

#[test]
fn every_source_is_shown_with_something() {
    let (reports, ropes, advantages) = (reports(), rope_reports(), advantages());
    let shown =
        reports.iter().flat_map(|report| &report.sources).chain(ropes.iter().flat_map(|report| &report.sources));
    let shown = shown.chain(advantages.iter().flat_map(|(list, map)| list.sources.iter().chain(&map.sources)));
    let mut shown: BTreeSet<&str> = shown.map(|source| source.id).collect();
    let cords = cord_reports();
    shown.extend(cords.iter().flat_map(|report| &report.sources).map(|source| source.id));
    let (down, stuck) = (descent_reports(), rescue_reports());
    shown.extend(down.iter().flat_map(|report| &report.sources).map(|source| source.id));
    shown.extend(stuck.iter().flat_map(|report| &report.sources).map(|source| source.id));
    let loads = load_reports();
    shown.extend(loads.iter().flat_map(|report| &report.sources).map(|source| source.id));
    let strong = read("bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=520N").draft;
    let helps = helps(&Inputs::of(&strong).expect("in order"), Effort::samples(50));
    shown.extend(helps_report(helps.as_ref(), View::default()).sources.iter().map(|source| source.id));
    // A clamp is no part of a rig here; what it bears is told beside the facts.
    shown.insert(CLAMP_LOAD.source.id);
    // Every species names its own.
    shown.extend(Species::ALL.iter().flat_map(|species| species.published()).map(|green| green.source.id));
    let unshown: Vec<&str> = SOURCES.iter().map(|source| source.id).filter(|id| !shown.contains(id)).collect();
    assert!(unshown.is_empty(), "no answer of the plans above shows {unshown:?}");
}
