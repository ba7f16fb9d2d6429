//! How the ends of a cord are made.

use crate::field::{Field, Kind, Row, choice};

choice! {
    /// How the ends of a cord are made.
    Ends {
        /// Joined into a loop.
        Loop = "double-fisherman", "joined, double fisherman’s", "The two ends tied to each other: one closed loop.";
        /// An eye at each end, three laps.
        Scaffold = "scaffold", "eyes, scaffold knot", "A noose round the connector at each end, of three laps.";
        /// An eye at each end, two laps.
        DoubleOverhand = "double-overhand", "eyes, double overhand", "A noose round the connector at each end, of two laps.";
        /// Bought with eyes.
        Sewn = "sewn", "sewn or spliced eyes", "Bought by its finished length, from eye to eye.";
        /// A stopper of both ends behind a bight.
        Button = "button", "button and bight", "Both ends tied into one knot, which the bight in the middle closes round, like a soft shackle.";
    }
}

/// How the ends of a cord are made. What is usual depends on what the cord is for.
pub static CORD_ENDS: Field<Ends> = Field::new(Row {
    id: "cordEnds",
    noun: "ends of the cord",
    hint: "",
    kind: Kind::Choice { options: Ends::OPTIONS, likely: None },
    why: "Each hitch and sling has its usual ends (common practice, no source).",
    private: false,
});
