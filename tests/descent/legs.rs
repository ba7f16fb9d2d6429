//! Being stuck with legs that do not move, or that nobody said of a trunk that does not hold.

use super::stuck;
use boughline::field::Said;
use boughline::question::rescue::{Before, Unload};

#[test]
fn legs_that_may_hang_still_have_the_harness_clock_and_no_foot_loop() {
    for (more, hang_still) in [
        (&[][..], false),
        (&[("trunk", "steady")], false),
        (&[("trunk", "unsteady")], true),
        (&[("trunk", "cervical")], true),
        (&[("trunk", "unsteady"), ("legs", "some")], true),
        (&[("trunk", "unsteady"), ("legs", "full")], false),
        (&[("legs", "some")], false),
        (&[("legs", "none")], true),
        (&[("trunk", "steady"), ("legs", "none")], true),
    ] {
        let mut plan = vec![("bodyMass", "80 kg"), ("rig", "tail-3"), ("climbHeight", "11 m"), ("anchor", "base")];
        plan.extend_from_slice(more);
        let answer = stuck(&plan.into_iter().map(|(id, text)| (id, Said::Text(text.to_owned()))).collect());
        assert_eq!(answer.harness_clock.is_some(), hang_still, "{more:?}");
        assert_eq!(answer.before.contains(&Before::HarnessClock), hang_still, "{more:?}");
        assert_eq!(answer.unload.contains(&Unload::FootLoop), !hang_still, "{more:?}");
    }
}
