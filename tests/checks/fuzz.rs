//! Anything at all, in any field.

use super::{fields, with};
use boughline::Draft;
use boughline::field::Said;
use boughline::link;
use boughline::quantity::{Decimal, System, View};
use boughline::question::can_i_climb::{Inputs, ask};
use boughline::question::{Effort, Question};
use boughline::words::{error_lines, report};
use proptest::prelude::*;
use proptest::test_runner::Config;

/// Text that comes near to being a quantity or a choice, and text that does not.
fn near_text() -> impl Strategy<Value = String> {
    let word = prop::sample::select(vec![
        "80",
        "1,200",
        "11.5",
        "½",
        "3/8",
        " ",
        "\u{a0}",
        "kg",
        "lb",
        "st",
        "m",
        "ft",
        "'",
        "\"",
        "in",
        "N",
        "kgf",
        "lbf",
        "%",
        "-",
        "−",
        "e",
        "inf",
        "nan",
        "tail-3",
        "two",
        "bare-rope",
        "&",
        "=",
        "#",
        "9999999999999999999",
        "0",
        ".",
        ",",
        "é",
        "🪢",
    ]);
    prop_oneof![prop::collection::vec(word, 0..6).prop_map(|words| words.concat()), any::<String>()]
}

fn anything() -> impl Strategy<Value = Said> {
    prop_oneof![
        4 => near_text().prop_map(Said::Text),
        1 => any::<f64>().prop_map(Said::Number),
        1 => (-10.0..1000.0_f64).prop_map(Said::Number),
        1 => Just(Said::Other("a list")),
    ]
}

const VIEWS: [View; 2] =
    [View { system: System::Si, decimal: Decimal::Point }, View { system: System::Us, decimal: Decimal::Comma }];

proptest! {
    #![proptest_config(Config { cases: 2_000, failure_persistence: None, ..Config::default() })]

    #[test]
    fn anything_in_any_field_is_an_answer_or_errors(at in 0..25_usize, said in anything()) {
        let row = fields().get(at % fields().len()).expect("within");
        if let Said::Text(text) = &said {
            for system in [System::Si, System::Us] {
                let tidied = row.tidied(text, system);
                prop_assert_eq!(row.tidied(&tidied, system), tidied.clone(), "leaving the field twice");
                prop_assert_eq!(row.reading(&Said::Text(tidied)).is_ok() || row.reading(&said).is_err(), true);
            }
        }
        let linked = row.linked(&said);
        let reading = row.reading(&said);
        if reading.is_ok() {
            let linked = linked.expect("what can be read can be linked");
            prop_assert_eq!(row.reading(&Said::Text(linked)), reading);
        }
        let draft = with(row.id, said);
        for view in VIEWS {
            match Inputs::of(&draft) {
                Ok(inputs) => prop_assert!(!report(&ask(&inputs, Effort::samples(50)), view).figures.is_empty()),
                Err(errors) => prop_assert!(!error_lines(&errors, view).is_empty()),
            }
            let _ = link::write(Question::CanIClimb, &draft, view);
        }
    }

    #[test]
    fn anything_in_every_field_is_an_answer_or_errors(said in prop::collection::vec(anything(), 25), id in any::<String>()) {
        let mut draft = Draft::new();
        for (row, said) in fields().iter().zip(said) {
            draft.put(row.id, said);
        }
        draft.put(&id, Said::Number(1.0));
        for view in VIEWS {
            match Inputs::of(&draft) {
                Ok(inputs) => prop_assert!(!report(&ask(&inputs, Effort::samples(50)), view).figures.is_empty()),
                Err(errors) => {
                    prop_assert!(!errors.is_empty());
                    prop_assert_eq!(error_lines(&errors, view).len(), errors.len());
                }
            }
            let _ = link::write(Question::CanIClimb, &draft, view);
        }
    }
}
