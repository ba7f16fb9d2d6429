//! What to see to before going, in words.

use super::record::records;
use super::template::worded;
use crate::question::rescue::Before;

records! {
    /// Something to see to before going.
    pub struct BeforeLine {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What to do about it.
        pub text: String,
    }
}

/// What to see to, as people read it.
pub(super) fn before_line(what: &Before) -> BeforeLine {
    let (id, text) = match what {
        Before::Single { noun } => {
            let text = worded(
                "Your {} is all that stands between you and the ground, by this model. Back it up, or look at it once more.",
                &[noun],
            );
            return BeforeLine { id: "single", text };
        }
        Before::NothingHolds => {
            ("nothing-holds", "Nothing holds you once hands let go. Do not leave the ground on it.")
        }
        Before::NobodyToRescue => (
            "nobody-to-rescue",
            "Nobody is there who can get you down. There have to be two people at all tree climbing, and one of them has to be able to.",
        ),
        Before::WhoIsThere => ("who-is-there", "Name who stays on the ground, and what they can do."),
        Before::NoWayDown => ("no-way-down", "Name your way down, and try it low down."),
        Before::CannotBeLetDown => {
            ("cannot-be-let-down", "You plan to be let down, and from this anchor nobody can let you down.")
        }
        Before::PlainTie => {
            ("plain-tie", "The tie at the foot does not pay out: make it one that does, while nobody hangs on it.")
        }
        Before::LockTheAnchor => {
            ("lock-the-anchor", "Lock the hitch at the crotch, and have somebody else see that it is locked.")
        }
        Before::KeepTheTailAway => {
            ("keep-the-tail-away", "Tie off the tail or cord that undoes the anchor, out of everybody’s reach.")
        }
        Before::Slack => ("slack", "Tie the knot in the tail again often: what runs before it catches, you fall."),
        Before::RopeEnd => ("rope-end", "A stopper in the rope’s end, and the end on the ground: see both."),
        Before::RatedMass => ("rated-mass", "Read the label of every part: you may weigh more than it is made for."),
        Before::HarnessClock => (
            "harness-clock",
            "Set a watch when you leave the seat. Thighs level, skin and straps looked at before and after.",
        ),
        Before::SecondRope => {
            ("second-rope", "Put a second rope into the tree before you climb, or make the foot pay out.")
        }
    };
    BeforeLine { id, text: text.to_owned() }
}
