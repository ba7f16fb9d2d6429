//! What a cord is for.

use crate::field::{Field, Kind, Row, choice};

choice! {
    /// What a cord is for.
    CordUse {
        /// Prusik loop.
        Prusik = "prusik", "prusik loop", "Grips both ways; a closed loop passed through itself.";
        /// Klemheist.
        Klemheist = "klemheist", "klemheist", "Grips one way; a loop wound on and passed through its own bight.";
        /// Autoblock.
        Autoblock = "autoblock", "autoblock", "A backup that lets go easily; a loop wound on, both bights in one connector.";
        /// Bachmann.
        Bachmann = "bachmann", "Bachmann", "A loop wound round the rope and the back of a carabiner, which is its handle.";
        /// Hedden.
        Hedden = "hedden", "Hedden (Kreuzklem)", "A klemheist turned over: the bight hangs below, and the load bears on the top coil.";
        /// Valdotain tresse.
        Valdotain = "valdotain", "Valdotain tresse", "Coils above and braids below; it can be tended, and let go under load.";
        /// Distel.
        Distel = "distel", "Distel", "One coil below and four above; tended by a pulley.";
        /// Schwabisch.
        Schwabisch = "schwabisch", "Schwabisch", "One coil below and four above, without a crossing between its legs.";
        /// Knut.
        Knut = "knut", "Knut", "Coils above, and the two ends crossed under them; made with eyes.";
        /// Michoacan.
        Michoacan = "michoacan", "Michoacan", "Coils of one end and a crossing of the other under the lowest.";
        /// Blake's hitch with a split tail.
        Blakes = "blakes", "Blake’s, split tail", "Four coils, the tail brought out under the lower two; a short cord with one eye.";
        /// Garda loop.
        Garda = "garda", "garda loop, two carabiners", "The rope runs through two carabiners that jam it one way; the cord is the loop they hang in.";
        /// An upper hitch that opens.
        Openable = "openable", "upper hitch that opens", "Wound on double and closed like a soft shackle: it comes off without its end.";
        /// One's own.
        Own = "own-hitch", "hitch of your own", "Say its coils, its crossings and its ends.";
        /// Foot loop.
        FootLoop = "foot-loop", "foot loop", "A long loop to stand in.";
        /// Hand loop.
        HandLoop = "hand-loop", "hand loop", "A short loop to pull by.";
        /// Bridge.
        Bridge = "bridge", "bridge of a harness", "From one ring of the harness to the other.";
        /// Lanyard.
        Lanyard = "lanyard", "lanyard", "From the harness round the stem and back; its adjuster is a hitch of its own.";
        /// Haul cord.
        HaulCord = "haul-cord", "haul cord", "From the upper hitch to your hand, back and forth as the rig has it.";
    }
}

/// What the cord is for.
pub static CORD_USE: Field<CordUse> = Field::new(Row {
    id: "cordUse",
    noun: "what the cord is for",
    hint: "",
    kind: Kind::Choice { options: CordUse::OPTIONS, likely: None },
    why: "There is no usual one: each takes another length.",
    private: false,
});
