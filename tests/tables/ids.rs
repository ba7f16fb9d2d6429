//! Published ids, which never change: they stand in links and in other people's programs.

use super::{advantages, cord_reports, descent_reports, load_reports, reports, rescue_reports, rope_reports};
use boughline::Draft;
use boughline::field::Kind;
use boughline::link::{read, write};
use boughline::quantity::{Decimal, View};
use boughline::question::can_i_climb::{Decided, Inputs, Level, Verdict, ask};
use boughline::question::{Effort, Question, all_fields, cut_plan, field, rope_length};
use boughline::source::SOURCES;
use boughline::words::{cut_report, report, rope_report};
use std::collections::BTreeSet;

/// Every id that can be met today, with what it is the id of.
fn present() -> BTreeSet<String> {
    let mut ids: BTreeSet<String> =
        Question::ALL.iter().map(|question| format!("question {}", question.id())).collect();
    for row in all_fields() {
        ids.insert(format!("field {}", row.id));
        if let Kind::Choice { options, .. } = row.kind {
            ids.extend(options.iter().map(|option| match row.id {
                "rig" => format!("rig {}", option.id),
                id => format!("choice {id} {}", option.id),
            }));
        }
    }
    ids.extend(link_keys());
    ids.extend(SOURCES.iter().map(|source| format!("source {}", source.id)));
    for report in reports() {
        ids.insert(format!("verdict {}", report.verdict.id));
        ids.extend(report.legs.iter().map(|legs| format!("legs {}", legs.id)));
        ids.extend(report.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        ids.extend(report.drawing.levels.iter().map(|level| format!("level {}", level.kind)));
        ids.extend(report.drawing.ropes.iter().flat_map(|rope| &rope.stops).map(|stop| format!("stop {}", stop.kind)));
    }
    for (list, _) in advantages() {
        ids.extend(list.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(list.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        for rig in &list.rigs {
            ids.insert(format!("standing {}", rig.standing));
            ids.extend(rig.figures.iter().map(|figure| format!("figure {}", figure.id)));
        }
    }
    for report in rope_reports() {
        ids.extend(report.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        for state in &report.states {
            ids.insert(format!("state {}", state.id));
            ids.insert(format!("figure {}", state.total.id));
            ids.extend(state.items.iter().map(|item| format!("piece {}", item.id)));
        }
    }
    for plan in ["cords=2~6mm~1.8m", "cords=1~6mm~60m", "cords=2~6mm~1.8m&hanks=any~5m~9"] {
        let inputs = cut_plan::Inputs::of(&read(plan).draft).expect("in order");
        let report = cut_report(&cut_plan::ask(&inputs, Effort::QUICK), View::default());
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        for kind in &report.kinds {
            ids.insert(format!("standing {}", kind.standing));
            ids.extend(kind.figures.iter().map(|figure| format!("figure {}", figure.id)));
        }
    }
    ids.insert("standing not-proved".to_owned());
    for report in cord_reports() {
        ids.extend(report.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        ids.extend(report.pieces.iter().map(|piece| format!("cord-piece {}", piece.kind)));
        ids.extend(report.pieces.iter().map(|piece| format!("piece {}", piece.length.id)));
    }
    for report in load_reports() {
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        for state in &report.states {
            ids.insert(format!("state {}", state.id));
            ids.extend(state.parts.iter().map(|part| format!("standing {}", part.standing)));
        }
    }
    for report in descent_reports() {
        ids.extend(report.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        ids.extend(report.steps.iter().map(|step| format!("step {}", step.id)));
    }
    for report in rescue_reports() {
        ids.extend(report.figures.iter().map(|figure| format!("figure {}", figure.id)));
        ids.extend(report.cautions.iter().map(|caution| format!("caution {}", caution.id)));
        ids.extend(report.before.iter().map(|line| format!("before {}", line.id)));
        for way in &report.ways {
            ids.insert(format!("way {}", way.id));
            ids.extend(way.stages.iter().map(|stage| format!("stage {}", stage.id)));
        }
    }
    ids.extend(of_other_rigs());
    // None of the plans here comes to this.
    ids.insert(format!("verdict {}", within_reach()));
    ids
}

/// What stands in a link before any field.
fn link_keys() -> Vec<String> {
    let view = View { decimal: Decimal::Comma, ..View::default() };
    let link = write(Question::CutLength, &Draft::new(), view).expect("nothing is said that cannot be");
    let keys = link.split('&').filter_map(|part| part.split('=').next()).filter(|key| field(key).is_none());
    keys.map(|key| format!("link {key}")).collect()
}

/// Cautions of rigs that may be in the catalogue or not.
fn of_other_rigs() -> Vec<String> {
    let inputs = rope_length::Inputs::of(&read("crotchHeight=11m&anchor=base").draft).expect("in order");
    let mut answer = rope_length::ask(&inputs);
    answer.cautions = vec![rope_length::Caution::CordApart, rope_length::Caution::NoAnchor];
    let cautions = rope_report(&answer, View::default()).cautions;
    cautions.iter().map(|caution| format!("caution {}", caution.id)).collect()
}

fn within_reach() -> &'static str {
    let draft = read("bodyMass=80kg&climbHeight=11m&rig=tail-3&measuredPull=900N").draft;
    let mut answer = ask(&Inputs::of(&draft).expect("in order"), Effort::QUICK);
    answer.verdict = Some(Verdict {
        level: Level::WithinReach,
        decided: Decided::Arms,
        chance: 0.9,
        reaches: Some(0.9),
        stuck: 0.0,
        stronger: None,
    });
    report(&answer, View::default()).verdict.id
}

#[test]
fn no_published_id_is_lost_and_every_new_one_is_written_down() {
    let published: BTreeSet<String> = include_str!("../data/ids.txt").lines().map(str::to_owned).collect();
    let present = present();
    let lost: Vec<&String> = published.difference(&present).collect();
    assert!(lost.is_empty(), "lost: {lost:#?}");
    let new: Vec<&String> = present.difference(&published).collect();
    assert!(new.is_empty(), "add to tests/data/ids.txt: {new:#?}");
}
