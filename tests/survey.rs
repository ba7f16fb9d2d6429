//! Whom a rig would take up, of a whole national survey.
#![cfg(not(target_arch = "wasm32"))]
#![allow(dead_code, clippy::panic, unreachable_pub, reason = "the example is a program of its own")]

#[path = "../examples/survey.rs"]
mod survey;

/// The table of `data/people/climbers.txt` is what the example prints, and from 50 on every share falls with age.
#[test]
fn fewer_climb_with_age_beyond_fifty() {
    let printed = survey::lines(include_str!("data/people/nhanes_grip_micro_18plus.csv"));
    let stored: Vec<&str> = include_str!("data/people/climbers.txt").lines().collect();
    assert_eq!(
        printed, stored,
        "print it again: cargo run --release --example survey > tests/data/people/climbers.txt"
    );
    let rows: Vec<Vec<u32>> = stored.iter().skip(2).map(|line| shares(line)).collect();
    assert_eq!(rows.len(), 7);
    for (young, old) in rows.iter().zip(rows.iter().skip(1)).skip(2) {
        assert!(young.iter().zip(old).all(|(young, old)| old < young), "{young:?} then {old:?}");
    }
    // More can pull once than last, and no more women than men of an age, as their grip is less.
    for row in &rows {
        let &[women, women_last, men, men_last] = row.as_slice() else { panic!("four shares: {row:?}") };
        assert!(women_last <= women && men_last <= men && women < men && women_last < men_last, "{row:?}");
    }
}

/// The numbers before a sign of per cent.
fn shares(line: &str) -> Vec<u32> {
    let words: Vec<&str> = line.split_whitespace().collect();
    let before = |pair: &[&str]| (pair.last() == Some(&"%")).then(|| pair.first()?.parse().ok()).flatten();
    words.windows(2).filter_map(before).collect()
}
