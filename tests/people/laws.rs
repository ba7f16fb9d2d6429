//! What must hold of everybody.

use boughline::climber::Arms;
use boughline::climber::{Gloves, Grip, Hold, LEAST_GRIP, Norm, Sex, Training, Trunk, held_by, predicted_pull};
use boughline::quantity::{Count, Length, Mass};
use proptest::prelude::*;
use proptest::test_runner::Config;

fn anybody() -> impl Strategy<Value = Norm> {
    let stature = prop::option::of(0.9..2.3_f64);
    (any::<bool>(), 18.0..=100.0_f64, stature, 20.0..250.0_f64).prop_map(|(female, age, stature, mass)| Norm {
        sex: if female { Sex::Female } else { Sex::Male },
        age: Count::new(age),
        stature: stature.map(Length::metres),
        body_mass: Mass::kilograms(mass),
    })
}

fn any_of<T: Copy + std::fmt::Debug + 'static>(all: &'static [T]) -> impl Strategy<Value = T> {
    (0..all.len()).prop_map(|at| all[at])
}

proptest! {
    #![proptest_config(Config { cases: 2000, failure_persistence: None, ..Config::default() })]

    #[test]
    fn more_deviations_never_grip_less(norm in anybody(), from in -8.0..8.0_f64, more in 0.0..4.0_f64) {
        prop_assert!(norm.combined_grip(from + more) >= norm.combined_grip(from));
        prop_assert!(norm.combined_grip(from) >= Mass::kilograms(LEAST_GRIP).weight().in_newtons());
    }

    #[test]
    fn planning_is_below_the_middle(norm in anybody()) {
        let (planned, middle) = (norm.planning_grip(), norm.combined_grip(0.0));
        prop_assert!(planned < middle || middle <= Mass::kilograms(LEAST_GRIP).weight().in_newtons());
    }

    /// A heavier body changes nothing where the stature is not known, and where it is, never to less.
    #[test]
    fn a_heavier_body_grips_no_less_and_by_the_table_the_same(
        norm in anybody(), more in 0.0..100.0_f64, deviations in -3.0..3.0_f64,
    ) {
        let heavier = Norm { body_mass: norm.body_mass + Mass::kilograms(more), ..norm };
        let (before, after) = (norm.combined_grip(deviations), heavier.combined_grip(deviations));
        prop_assert!(after >= before);
        if norm.stature.is_none() || norm.age.number() < 20.0 {
            prop_assert_eq!(after.to_bits(), before.to_bits());
        }
    }

    #[test]
    fn a_stronger_grip_never_pulls_or_holds_less(
        sum in 50.0..2000.0_f64, more in 0.0..500.0_f64, deviations in -3.0..3.0_f64,
        training in any_of(Training::ALL), hold in any_of(Hold::ALL), gloves in any_of(Gloves::ALL),
        arms in any_of(Arms::ALL),
    ) {
        for over in [training.pull_over_grip().low, training.pull_over_grip().high] {
            let pull = |grip| predicted_pull(grip, over, deviations);
            prop_assert!(pull(sum + more) >= pull(sum) && pull(sum) > 0.0);
        }
        let over = hold.over_grip(gloves);
        for over in [over.low, over.likely, over.high] {
            let held = |sum| held_by(arms, over, Some(Grip::combined(sum)), None, 1.0);
            prop_assert!(held(sum + more) >= held(sum) && held(sum) > Some(0.0));
        }
    }
}

#[test]
fn training_never_foretells_less_and_a_trunk_never_more() {
    let (untrained, trained) = (Training::Untrained.pull_over_grip(), Training::TrainedPulling.pull_over_grip());
    assert!(trained.low > untrained.low && trained.likely > untrained.likely && trained.high > untrained.high);
    let shares: Vec<_> = Trunk::ALL.iter().map(|trunk| trunk.share_of_prediction()).collect();
    assert_eq!(shares.iter().filter(|share| share.is_none()).count(), 1, "only an injury at the neck");
    for share in shares.into_iter().flatten() {
        assert!(share.low <= share.likely && share.likely <= share.high && share.high <= 1.0);
    }
}

#[test]
fn women_of_the_survey_grip_less_than_men_of_their_age() {
    for age in [18.0, 25.0, 45.0, 85.0] {
        let norm = |sex| Norm { sex, age: Count::new(age), stature: None, body_mass: Mass::kilograms(80.0) };
        for deviations in [-2.0, 0.0, 2.0] {
            assert!(norm(Sex::Female).combined_grip(deviations) < norm(Sex::Male).combined_grip(deviations));
        }
    }
}
