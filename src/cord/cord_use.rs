//! What a cord is for.

use super::slings::{BRIDGE, FOOT_LOOP, HAND_LOOP, HAUL_CORD, LANYARD};
use crate::field::{Field, Kind, Row, choice};
use crate::hitch::{
    AUTOBLOCK, BACHMANN, BLAKES, DISTEL, GARDA, HEDDEN, KLEMHEIST, KNUT, MICHOACAN, OPENABLE, OWN, PRUSIK, Pattern,
    SCHWABISCH, VALDOTAIN,
};

choice! {
    /// What a cord is for.
    CordUse {
        /// Prusik loop.
        Prusik = "prusik", "prusik loop", "Meant to grip both ways; a closed loop passed through itself.";
        /// Klemheist.
        Klemheist = "klemheist", "klemheist", "Meant to grip one way; a loop wound on and passed through its own bight.";
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

impl CordUse {
    /// How the cord is laid.
    #[must_use]
    pub const fn pattern(self) -> &'static Pattern {
        match self {
            Self::Prusik => &PRUSIK,
            Self::Klemheist => &KLEMHEIST,
            Self::Autoblock => &AUTOBLOCK,
            Self::Bachmann => &BACHMANN,
            Self::Hedden => &HEDDEN,
            Self::Valdotain => &VALDOTAIN,
            Self::Distel => &DISTEL,
            Self::Schwabisch => &SCHWABISCH,
            Self::Knut => &KNUT,
            Self::Michoacan => &MICHOACAN,
            Self::Blakes => &BLAKES,
            Self::Garda => &GARDA,
            Self::Openable => &OPENABLE,
            Self::Own => &OWN,
            Self::FootLoop => &FOOT_LOOP,
            Self::HandLoop => &HAND_LOOP,
            Self::Bridge => &BRIDGE,
            Self::Lanyard => &LANYARD,
            Self::HaulCord => &HAUL_CORD,
        }
    }

    /// Whether its coils grip a rope.
    #[must_use]
    pub fn is_hitch(self) -> bool {
        self.pattern().coils != Some(0)
    }

    /// Whether somebody's life hangs on it: on every hitch, whatever it is meant for.
    #[must_use]
    pub const fn is_for_life(self) -> bool {
        !matches!(self, Self::FootLoop | Self::HandLoop | Self::HaulCord)
    }
}
