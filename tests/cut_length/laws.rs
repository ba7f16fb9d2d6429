//! What must hold of every cord, whatever the figures.

use super::answer;
use super::cord_plans::cord_plans;
use super::plans::{Plan, draft, with, without};
use boughline::cord::Piece;
use boughline::field::{Said, Spread};
use boughline::gear::Ends;
use boughline::link;
use boughline::quantity::{Decimal, System, View};
use boughline::question::Question;
use boughline::question::cut_length::{Answer, Inputs};
use boughline::words::cord_report;
use proptest::prelude::*;
use proptest::test_runner::Config;

const VIEWS: [View; 3] = [
    View { system: System::Si, decimal: Decimal::Point },
    View { system: System::Us, decimal: Decimal::Point },
    View { system: System::Us, decimal: Decimal::Comma },
];

fn at_most(one: Spread, other: Spread) -> bool {
    let below = |one: f64, other: f64| one <= other + 1e-12;
    below(one.low, other.low) && below(one.likely, other.likely) && below(one.high, other.high)
}

fn is_ordered(spread: Spread) -> bool {
    0.0 <= spread.low && spread.low <= spread.likely && spread.likely <= spread.high && spread.high.is_finite()
}

/// The plan with a number, if it is still in order.
fn try_number(plan: &Plan, id: &'static str, si: f64) -> Option<Answer> {
    let plan = with(plan, id, Said::Number(si));
    Inputs::of(&draft(&plan)).ok().map(|inputs| boughline::question::cut_length::ask(&inputs))
}

/// What a length text comes to, in steps of a hundredth of an inch or a tenth of a millimetre.
fn read(text: &str) -> i64 {
    let metres = boughline::quantity::read(text, boughline::quantity::Dimension::Length, None).expect(text);
    let step = if text.contains("ft") || text.contains("in") { 0.000_254 } else { 0.0001 };
    (metres / step).round() as i64
}

proptest! {
    #![proptest_config(Config { cases: 512, failure_persistence: None, ..Config::default() })]

    #[test]
    fn every_length_is_a_number_between_its_ends(plan in cord_plans()) {
        let answer = answer(&plan);
        for spread in [answer.cut.total, answer.cut.legs, answer.cut.run, answer.cut.working_end, answer.finished] {
            prop_assert!(is_ordered(spread), "{spread:?}");
        }
        prop_assert!(answer.cut.pieces.iter().all(|(.., length)| is_ordered(*length) && length.high > 0.0));
        for spread in [answer.strength, answer.weight, answer.peak].into_iter().flatten() {
            prop_assert!(is_ordered(spread), "{spread:?}");
        }
    }

    /// Both as numbers and as they are written, in either system.
    #[test]
    fn pieces_add_up_to_the_whole(plan in cord_plans(), cut in prop::option::of(1.0..60.0_f64), view in prop::sample::select(VIEWS.to_vec())) {
        let mut plan = plan;
        if let Some(cut) = cut {
            plan = without(&with(&plan, "cordCut", Said::Number(cut)), &["freeLeg", "finishedLength"]);
        }
        let Ok(inputs) = Inputs::of(&draft(&plan)) else { return Ok(()) };
        let report = cord_report(&boughline::question::cut_length::ask(&inputs), view);
        let sum: f64 = report.pieces.iter().map(|piece| piece.length.value.expect("finite")).sum();
        prop_assert!((sum - report.total.value.expect("finite")).abs() < 1e-9);
        let shown: i64 = report.pieces.iter().map(|piece| read(&piece.length.text.replace(',', "."))).sum();
        prop_assert_eq!(shown, read(&report.total.text.replace(',', ".")), "{:?}", report.total.workings);
        prop_assert!(report.first.contains(&report.total.text) || report.first.starts_with("Buy"), "{}", report.first);
        for piece in &report.pieces {
            // Never further from its place than a step: a centimetre, from 10 m on ten; an inch.
            let step = if view.system == System::Us { 0.0254 } else if sum < 9.99 { 0.01 } else { 0.1 };
            let told = read(&piece.length.text.replace(',', ".")) as f64 * if view.system == System::Us { 0.000_254 } else { 0.0001 };
            prop_assert!((told - piece.length.value.expect("finite")).abs() <= step + 1e-6, "{:?}", piece);
        }
    }

    #[test]
    fn more_of_anything_never_shortens_the_cut(
        plan in cord_plans(),
        id in prop::sample::select(vec!["ropeDiameter", "hitchCord", "slingCord", "haulCord", "hitchCoils", "hitchCrossings", "freeLeg", "finishedLength"]),
        one in 0.0..1.0_f64,
        other in 0.0..1.0_f64,
    ) {
        let (least, most) = match id {
            "ropeDiameter" => (0.006, 0.016),
            "hitchCoils" => (1.0, 9.0),
            "hitchCrossings" => (0.0, 9.0),
            "freeLeg" | "finishedLength" => (0.0, 5.0),
            _ => (0.003, 0.014),
        };
        // One length at a time is said.
        let plan = if least == 0.0 && most == 5.0 { without(&plan, &["freeLeg", "finishedLength"]) } else { plan };
        let say = |share: f64| try_number(&plan, id, least + share * (most - least));
        if let (Some(less), Some(more)) = (say(one.min(other)), say(one.max(other))) {
            prop_assert!(at_most(less.cut.total, more.cut.total), "{:?} {:?}", less.cut, more.cut);
        }
    }

    #[test]
    fn a_longer_lap_of_knot_never_shortens_the_cut(plan in cord_plans()) {
        let choose = |ends: &str| {
            let plan = with(&plan, "cordEnds", Said::Text(ends.to_owned()));
            Inputs::of(&draft(&plan)).ok().map(|inputs| boughline::question::cut_length::ask(&inputs))
        };
        if let (Some(two), Some(three)) = (choose("double-overhand"), choose("scaffold")) {
            prop_assert!(two.cut.total.likely < three.cut.total.likely);
        }
    }

    /// Ten diameters and 10 cm at least, at every end that is tied.
    #[test]
    fn tails_are_never_short(plan in cord_plans()) {
        let answer = answer(&plan);
        let tails: Vec<Spread> = answer.cut.pieces.iter().filter(|(piece, ..)| *piece == Piece::Tail).map(|(.., length)| *length).collect();
        let knots = answer.cut.pieces.iter().filter(|(piece, ..)| *piece == Piece::Knot).count();
        prop_assert_eq!(tails.len(), knots);
        prop_assert!(tails.iter().all(|tail| tail.low >= 0.10 && tail.low >= 10.0 * answer.make.cord - 1e-12));
        prop_assert_eq!(knots == 2, answer.make.ends != Ends::Sewn);
    }

    /// What a cut leaves, asked for, takes that cut.
    #[test]
    fn a_cut_and_what_it_leaves_are_one_another_s_reverse(plan in cord_plans(), cut in 1.0..20.0_f64) {
        let bare = without(&plan, &["freeLeg", "finishedLength", "rig"]);
        let Some(left) = try_number(&bare, "cordCut", cut) else { return Ok(()) };
        let asked = if left.cord_use.is_hitch() { ("freeLeg", left.cut.legs.likely) } else { ("finishedLength", left.finished.likely) };
        let Some(again) = try_number(&bare, asked.0, asked.1) else { return Ok(()) };
        prop_assert!((again.cut.total.likely - cut).abs() < 1e-9, "{} {cut}", again.cut.total.likely);
        prop_assert!((again.cut.legs.likely - left.cut.legs.likely).abs() < 1e-9);
    }

    #[test]
    fn a_fit_to_what_is_reckoned_anyway_changes_nothing(plan in cord_plans()) {
        let plan = without(&plan, &["rig"]);
        let Ok(inputs) = Inputs::of(&draft(&plan)) else { return Ok(()) };
        let before = boughline::question::cut_length::ask(&inputs);
        if before.make.ends == Ends::Sewn {
            return Ok(());
        }
        let out = if before.cord_use.is_hitch() { before.cut.legs.likely } else { before.finished.likely };
        let fitted = with(&with(&plan, "cordCut", Said::Number(before.cut.total.likely)), "cameOut", Said::Number(out));
        let after = answer(&fitted);
        prop_assert!((after.make.fit.expect("fitted") - 1.0).abs() < 1e-9);
        prop_assert!((after.cut.total.likely - before.cut.total.likely).abs() < 1e-9);
        prop_assert!(after.cut.total.high - after.cut.total.low <= before.cut.total.high - before.cut.total.low + 1e-9, "surer than before");
    }

    /// Whatever it came out at: asked for again, it takes what was cut.
    #[test]
    fn what_came_out_takes_what_was_cut(plan in cord_plans(), share in 0.55..1.9_f64) {
        let plan = without(&plan, &["freeLeg", "finishedLength", "rig"]);
        let Some(one) = try_number(&plan, "cordCut", 4.0) else { return Ok(()) };
        let tails: f64 = one.cut.pieces.iter().filter(|(piece, ..)| *piece == Piece::Tail).map(|(.., length)| length.likely).sum();
        // What is not legs or tails, at so much of its usual length.
        let taken = (4.0 - tails - one.cut.legs.likely) * share;
        let legs = 4.0 - tails - taken;
        if legs < 0.1 {
            return Ok(());
        }
        let (id, out) = if one.cord_use.is_hitch() {
            ("freeLeg", legs)
        } else if one.make.is_loop() {
            ("finishedLength", legs / 2.0)
        } else {
            ("finishedLength", legs)
        };
        let fitted = with(&with(&with(&plan, "cordCut", Said::Number(4.0)), "cameOut", Said::Number(out)), id, Said::Number(out));
        let after = answer(&fitted);
        prop_assert!((after.make.fit.expect("fitted") - share).abs() < 1e-9, "{share}");
        prop_assert!((after.cut.total.likely - 4.0).abs() < 1e-9, "{}", after.cut.total.likely);
    }

    #[test]
    fn a_working_end_moves_the_hitch_along_the_cord_and_no_more(plan in cord_plans(), share in 0.05..0.95_f64) {
        let before = answer(&plan);
        if !before.cord_use.is_hitch() || before.make.pattern.legs == 1 {
            return Ok(());
        }
        let legs = before.cut.legs.likely;
        let end = before.cut.working_end.likely + (share - 0.5) * legs;
        let after = answer(&with(&plan, "workingEnd", Said::Number(end)));
        prop_assert!((after.cut.total.likely - before.cut.total.likely).abs() < 1e-9);
        prop_assert!((after.cut.working_end.likely - end).abs() < 1e-12);
        let first = after.cut.pieces.iter().find(|(piece, ..)| *piece == Piece::Leg).map_or(0.0, |(.., length)| length.likely);
        prop_assert!(legs == 0.0 || (first - share * legs).abs() < 1e-9);
    }

    #[test]
    fn nothing_that_is_written_is_no_number(plan in cord_plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let report = cord_report(&answer(&plan), view);
        let mut texts = vec![report.first, report.second];
        let shown = report.pieces.into_iter().map(|piece| piece.length).chain([report.total]).chain(report.figures);
        texts.extend(shown.flat_map(|figure| figure.workings.into_iter().chain(figure.range).chain([figure.text])));
        texts.extend(report.cautions.into_iter().map(|caution| caution.text));
        for text in texts {
            let odd = text.split([' ', '(', ')', ',']).find(|word| ["NaN", "inf", "-inf", "—", "−0", "-0"].contains(word));
            prop_assert!(odd.is_none() && !text.contains("  ") && !text.is_empty() && !text.contains(['{', '}']), "{}", text);
            prop_assert!(!text.contains('−'), "no cord is shorter than none: {}", text);
        }
    }

    #[test]
    fn a_plan_comes_back_from_a_link_to_the_same_answer(plan in cord_plans(), view in prop::sample::select(VIEWS.to_vec())) {
        let sent = draft(&plan);
        let fragment = link::write(Question::CutLength, &sent, view).expect("it can be read");
        let link = link::read(&fragment);
        prop_assert_eq!(&link.notices, &[]);
        prop_assert_eq!((link.question, link.view), (Some(Question::CutLength), view));
        prop_assert_eq!(Inputs::of(&link.draft), Inputs::of(&sent));
        prop_assert_eq!(link::write(Question::CutLength, &link.draft, view), Some(fragment), "written again");
    }
}
