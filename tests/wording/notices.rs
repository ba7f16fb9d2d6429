//! What a link could not say, as sentences.

use super::{variant, variants};
use boughline::link::read;
use boughline::words::notice;
use std::collections::BTreeSet;

#[rustfmt::skip]
const ROWS: &[(&str, &str)] = &[
    ("v=9", "This link (v=9) was made by a newer page, so some of it may be missing here. Open it in the newest page."),
    ("f=0", "This link was made with version 0 of the figures; the answer here may differ from the one that was shared."),
    ("q=how-far", "This link asks “how-far”, which this page cannot answer."),
    ("boots=11", "The part “boots=11” of this link was not understood and is left out."),
    ("bodyMass=80kg&bodyMass=90kg", "This link says body mass twice; the first is used."),
    ("u=us&u=si", "This link says its units twice; the first is used."),
    ("v=1&u=si&v=1&u=us", "This link holds two plans; the first is shown here."),
    ("bodyMass=", "The part “bodyMass=” of this link has no value and is left out."),
    ("bodyMass", "The part “bodyMass” of this link has no value and is left out."),
];

#[test]
fn every_notice_has_its_sentence() {
    let mut met = BTreeSet::new();
    for (link, sentence) in ROWS {
        let notices = read(link).notices;
        assert_eq!(notices.iter().map(notice).collect::<Vec<_>>(), [*sentence], "{link}");
        met.extend(notices.iter().map(variant));
    }
    assert_eq!(met, variants(include_str!("../../src/link.rs"), "Notice"));
}
