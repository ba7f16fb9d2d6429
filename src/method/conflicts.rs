//! Sources that disagree.

use super::Chapter;
use crate::source::{
    AFAG401, ATTAWAY, CAPSTAN, DELANEY, EN_1891, HSIAO, JOHNSON, JUDGED, KNOT_STRENGTH, LA_DELFA, LAVERS,
    MOUNTAIN_PAGES, MUNTER, NHANES, OSHA, PRATTLEY, RAKSHIT, RAUCH, SEAT_REVIEW, SETNICKA, TIRING, TURNER,
    WOOD_HANDBOOK,
};

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "conflicts",
        "Where sources disagree",
        "The more cautious of two sources is the default, and where they cannot be weighed against each other the range spans both.",
        Vec::new(),
    )
    .note(
        "what a turn keeps",
        "A carabiner 0.53, 0.59 or 0.66; pulleys 0.75 to 0.93, by source. Taken: 0.55 for a carabiner and 0.90 for a pulley with bearings, with ranges that hold all of them.",
        &[DELANEY, PRATTLEY, SETNICKA],
    )
    .note(
        "pull over grip",
        "Pull-down maxima over surveyed grip give 0.60 for women and 0.78 for men; a published field of isometric strength 0.36 to 0.55 by the height of the hand; trained pullers reach 0.8 to 1.35. Taken: 0.65 (0.50 to 0.85), so that a guess can be kinder than a measurement; the answer shows both.",
        &[JOHNSON, NHANES, LA_DELFA, JUDGED],
    )
    .note(
        "how fast muscles tire",
        "Published sets of figures for the same model differ: for the elbow 0.009 to 0.013 tiring and 0.001 to 0.002 recovering a second. All were fitted to muscles held still. Taken: the pooled ones for elbow and hand, and a multiplier of 1.6 to 3.8 that two measurements of moving pulls bracket. The map of rigs uses the kinder figures of the shoulder, and says so.",
        &[RAKSHIT, TIRING, JOHNSON],
    )
    .note(
        "friction of rope on bark",
        "No measurement could be read; memory says 0.2 to 0.6. Sawn timber was 0.36 and 0.37, the mean of raising alone (0.20) and lowering alone (0.51). Taken: 0.36 with the whole range.",
        &[CAPSTAN, JUDGED],
    )
    .note(
        "how thin a cord may be",
        "Tree work asks for at least 8 mm in a hitch that one lives on; mountaineers back up with 5 to 7 mm and at most half the rope. Two rules for two uses: the caution names the first for whatever somebody hangs on.",
        &[AFAG401, MOUNTAIN_PAGES],
    )
    .note(
        "what knots leave",
        "0.92 in nylon and 0.40 in aramid for the same knot; 0.45 to 0.75 in other tables. Taken: 0.50, and 0.40 in stiff fibres.",
        &[KNOT_STRENGTH],
    )
    .note(
        "what a Munter holds",
        "10 to 12.5 times the hand by one reading, whose hand is not stated; 12 to 15 from memory; less with the hand below the load, as here. Taken: 5 to plan on, 14 for what lets it run hardest. Test yours.",
        &[MUNTER],
    )
    .note(
        "strength of green wood",
        "The same species in two tables, for one oak 57 and 72 MPa. Taken: the lower, mean less two standard deviations.",
        &[WOOD_HANDBOOK, LAVERS],
    )
    .note(
        "how stiff a rope is",
        "Static rope 71 to 89 kN at a strain of one, and no less than 19.6 kN by the standard’s own limit of stretch. Taken: the cautious end of what is usual, with the whole range.",
        &[ATTAWAY, EN_1891],
    )
    .note(
        "how long somebody may hang",
        "Medians of 29 to 31 min and a shortest of 4; 9 min that would keep 95 % unaffected; near-fainting from 13.4 min in a sit harness. Taken: on the ground within 7 min, start at once, and no time is called safe.",
        &[TURNER, HSIAO, RAUCH],
    )
    .note(
        "what a body stands",
        "8 kN in a full-body harness, well below that in a seat harness. Taken: 4 kN for a seat harness.",
        &[OSHA, SEAT_REVIEW],
    )
}
