//! How the climb goes, as a chart and in a table.

use super::chart::{Chart, ChartLine, Mark, Point, axis};
use super::record::records;
use super::template::{said, say};
use crate::field::Spread;
use crate::quantity::{MINUTE, PERCENT, View, percent};
use crate::question::can_i_climb::{Going, Moment};

records! {
    /// How the climb goes after a stroke.
    pub struct GoingRow {
        /// How many strokes are done.
        pub strokes: u32,
        /// Since the first pull.
        pub time: String,
        /// The height gained.
        pub height: String,
        /// What is left of the arms.
        pub arms: String,
        /// What is left of the hands.
        pub hands: String,
        /// What comes next.
        pub next: String,
    }

    /// How the climb goes at the likely value of everything.
    pub struct GoingReport {
        /// The height, and what is left of arms and hands, against time.
        pub chart: Chart,
        /// Some of its strokes, in order, and the last.
        pub rows: Vec<GoingRow>,
    }
}

/// At most so many rows come out of the strokes at equal steps: what is read at a glance.
const ROWS: u32 = 16;
/// At most so many strokes are drawn: what a chart shows.
const DRAWN: u32 = 100;
/// With more strokes than this only what each pull leaves is drawn: what comes back in each rest would fill the chart.
const WITH_RESTS: u32 = 30;

/// How the climb goes in words.
pub(super) fn going_report(going: &Going, view: View) -> GoingReport {
    let mut rows = Vec::new();
    let step = going.end.strokes.div_ceil(ROWS);
    for moment in going.moments() {
        let strokes = moment.strokes;
        let told = strokes.is_multiple_of(step) || strokes == going.end.strokes || turns_back(going, strokes);
        if moment.pulled && told {
            rows.push(row(going, moment, view));
        }
    }
    GoingReport { chart: chart(going, view), rows }
}

fn turns_back(going: &Going, strokes: u32) -> bool {
    going.turn_back.is_some_and(|back| back.at.strokes == strokes)
}

fn row(going: &Going, moment: Moment, view: View) -> GoingRow {
    let [arms, hands] = moment.left;
    let strokes = moment.strokes;
    let rest = Spread::point(going.rest_after(strokes));
    let minutes = MINUTE.count(moment.time);
    let time = if minutes < 1.0 {
        said("{S}", &[&Spread::point(moment.time)], &[], view)
    } else {
        said("{1} min", &[&Spread::point(minutes)], &[], view)
    };
    let next = if strokes == going.pulls.count {
        "the top".to_owned()
    } else if turns_back(going, strokes) {
        "time to go down".to_owned()
    } else if strokes == going.end.strokes {
        "the next pull fails".to_owned()
    } else {
        said("rest {S}", &[&rest], &[], view)
    };
    GoingRow {
        strokes,
        time,
        height: said("{M}", &[&Spread::point(moment.height)], &[], view),
        arms: percent(arms, view),
        hands: percent(hands, view),
        next,
    }
}

fn chart(going: &Going, view: View) -> Chart {
    let step = going.end.strokes.div_ceil(DRAWN);
    let mut lines = Vec::new();
    for (id, noun) in [
        ("height", "height, of all that is to climb"),
        ("arms", "left of your arms’ strength"),
        ("hands", "left of your hands’ strength"),
    ] {
        lines.push(ChartLine { id, noun, points: Vec::new() });
    }
    let mut draw = |moment: &Moment| {
        let [arms, hands] = moment.left;
        let shares = [moment.height / going.height, arms, hands];
        let all = moment.pulled || moment.strokes == 0 || going.end.strokes <= WITH_RESTS;
        for (line, share) in lines.iter_mut().zip(shares).take(if all { 3 } else { 1 }) {
            line.points.push(Point { x: MINUTE.count(moment.time), y: PERCENT.count(share) });
        }
    };
    draw(&going.start());
    for moment in going.moments() {
        let ends = moment.strokes == going.end.strokes;
        if ends && moment.pulled || !ends && moment.strokes.is_multiple_of(step) {
            draw(&moment);
        }
    }
    let [(_, by_arms), (_, by_hands)] = going.pulls.muscles;
    let mark = |noun, share: f64| Mark { noun, y: PERCENT.count(share) };
    Chart {
        noun: "How the climb goes",
        text: text(going, view),
        x: axis("time since the first pull", MINUTE, (0.0, going.end.time)),
        y: axis("of the height, and of your strength", PERCENT, (0.0, 1.0)),
        lines,
        bands: Vec::new(),
        marks: vec![mark("a pull takes of your arms", by_arms), mark("a pull takes of your hands", by_hands)],
        you: None,
    }
}

/// What the chart shows.
fn text(going: &Going, view: View) -> String {
    let mut text = String::from("Everything at its likely value: ");
    let end = &going.end;
    let [time, height, to_top] = [end.time, end.height, going.height - end.height].map(Spread::point);
    match going.pace.map(|pace| (pace, pace.longer)) {
        Some((pace, Some(longer))) => say(
            &mut text,
            "with a rest of {S} after each pull, and of {S} after every {0}, ",
            &[&Spread::point(pace.rest), &Spread::point(longer.seconds), &Spread::point(f64::from(longer.every))],
            &[],
            view,
        ),
        Some((pace, None)) if pace.rest > 0.0 => {
            say(&mut text, "with a rest of {S} after each pull ", &[&Spread::point(pace.rest)], &[], view);
        }
        Some(_) => text.push_str("pulling without a rest "),
        None => text.push_str("no rest is long enough to leave some strength to spare, and with the shortest "),
    }
    let strokes = Spread::point(f64::from(end.strokes));
    if going.is_at_top() {
        say(&mut text, "you are up in {S}, after {0} strokes.", &[&time, &strokes], &[], view);
    } else {
        say(
            &mut text,
            "you come {M} up in {S}; then a pull fails, {M} below where you want to be, and it is {M} down.",
            &[&height, &time, &to_top, &height],
            &[],
            view,
        );
    }
    if going.in_time.strokes < end.strokes {
        let numbers = [going.allowed, going.in_time.height].map(Spread::point);
        say(&mut text, " When the {S} allowed are over, you are at {M}.", &numbers.each_ref(), &[], view);
    }
    if let Some(back) = &going.turn_back {
        let numbers = [f64::from(back.at.strokes), back.at.time, back.at.height].map(Spread::point);
        say(&mut text, " Go down after stroke {0}, at {S}, from {M}.", &numbers.each_ref(), &[], view);
    }
    text
}
