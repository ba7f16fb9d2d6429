//! Every choice of every field, in every question that reads it.

use super::drawn::plan_with;
use super::plain::check;
use boughline::field::{Kind, Said};
use boughline::question::{Effort, Question};
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::TestRunner;

/// With it said, what stands against it gives way; then it is answered, but for a choice that the question cannot use.
#[test]
fn every_choice_is_answered_in_every_question_that_reads_it() {
    let mut runner = TestRunner::deterministic();
    let (mut met, mut unanswered) = (0, Vec::<String>::new());
    for question in Question::ALL {
        for row in question.fields() {
            let Kind::Choice { options, .. } = row.kind else { continue };
            for option in options {
                let chosen = Said::Text(option.id.to_owned());
                // Some choices go with few others: so many draws come upon them.
                let is_answered = (0..400).any(|_| {
                    let plan = plan_with(*question, row.id, &chosen).new_tree(&mut runner).expect("a plan").current();
                    assert!(plan.contains(&(row.id, chosen.clone())), "{} of {}", option.id, row.id);
                    check(*question, &plan, Effort::samples(50)).expect("plain")
                });
                met += 1;
                if !is_answered {
                    unanswered.push(format!("{} {}={}", question.id(), row.id, option.id));
                }
            }
        }
    }
    println!("{met} choices, each answered");
    assert!(met > 400, "{met}");
    assert!(unanswered.is_empty(), "{unanswered:?}");
}
