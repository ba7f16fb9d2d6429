//! How the climber comes down again, and who is there.

use crate::field::{Field, Kind, Row, choice};

choice! {
    /// How the climber comes down.
    WayDown {
        /// On their own hitch, with friction added.
        Descend = "descend", "on my own hitch, with more friction added", "Changed over at the top, and tried low down before.";
        /// Let down by somebody on the ground.
        Lowered = "lowered", "lowered from the ground", "Only where the rope is tied at the foot of the tree so that it can be let out.";
        /// Otherwise, without the rope.
        Off = "off-the-rope", "off the rope, by stairs or a ladder", "From a platform or a stand.";
    }
}

choice! {
    /// Who is there.
    SecondPerson {
        /// Nobody.
        Nobody = "nobody", "nobody", "";
        /// Somebody who can only call for help.
        Caller = "caller", "somebody who can call for help", "";
        /// Somebody who can get the climber down at once.
        Rescuer = "rescuer", "somebody trained and equipped to get me down at once", "";
    }
}

/// How the climber comes down.
pub static WAY_DOWN: Field<WayDown> = Field::new(Row {
    id: "wayDown",
    noun: "your way down",
    hint: "The way down decides whether anybody should go up. Try it low down first.",
    kind: Kind::Choice { options: WayDown::OPTIONS, likely: None },
    why: "Without a way down it is not a plan.",
    private: false,
});

/// Who is there.
pub static SECOND_PERSON: Field<SecondPerson> = Field::new(Row {
    id: "secondPerson",
    noun: "who stays on the ground",
    hint: "Somebody who stays until you are down again.",
    kind: Kind::Choice { options: SecondPerson::OPTIONS, likely: None },
    why: "Two people at all tree climbing, one of them able and equipped to rescue.",
    private: false,
});
