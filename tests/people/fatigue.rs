//! How muscles tire, against the table of published parameters.

use boughline::climber::Tiring;

/// `fatigue_3cc_r_parameters.csv`: Rakshit and others 2021 for hand and elbow, pooled (quoted); Frey-Law and others 2012
/// with Looft and Frey-Law 2020 for the shoulder (read in abstracts).
#[test]
fn each_group_of_muscles_has_its_row() {
    let table = include_str!("../data/people/fatigue_3cc_r_parameters.csv");
    let mut met = 0;
    for (group, tiring) in
        [("Hand and grip (pooled)", Tiring::HAND), ("Elbow (pooled)", Tiring::ELBOW), ("Shoulder", Tiring::SHOULDER)]
    {
        let row = table.lines().find(|line| line.starts_with(&format!("{group},"))).expect("the group is there");
        let numbers: Vec<f64> = row.split(',').skip(1).take(3).map(|cell| cell.parse().expect("a number")).collect();
        assert_eq!(numbers, [tiring.fatigue, tiring.recovery, tiring.rest], "{group}");
        met += 1;
    }
    assert_eq!(met, 3);
}
