//! Cautions about a cord as sentences, each with the sources it rests on.

use super::CautionLine;
use super::caution::caution_line;
use super::figure::add_ids;
use super::known_caution::Known;
use super::template::said;
use crate::field::Spread;
use crate::gear::Fibre;
use crate::quantity::View;
use crate::question::can_i_climb;
use crate::question::cut_length::Caution;
use crate::source::{
    AFAG401, CALIFORNIA, COMMON_PRACTICE, CORD_MEMORY, EN_564, HITCH_SLIP, JUDGED, KNOT_PAGES, KNOT_STRENGTH,
    MOUNTAIN_PAGES, MOYER,
};

/// The caution as people read it.
pub(super) fn cord_caution(caution: Caution, view: View) -> CautionLine {
    // The same on every page.
    let Some(known) = known(caution) else { return caution_line(can_i_climb::Caution::Arithmetic, view) };
    let mut sources = Vec::new();
    add_ids(&mut sources, known.sources);
    let text = match caution {
        Caution::TooThick(ratio) | Caution::TooThin(ratio) => said(known.template, &[&Spread::point(ratio)], &[], view),
        _ => said(known.template, &[], &[], view),
    };
    CautionLine { id: known.id, grave: known.grave, text, sources }
}

const fn known(caution: Caution) -> Option<&'static Known> {
    Some(match caution {
        Caution::Arithmetic => return None,
        Caution::SetDressTest => &Known {
            id: "set-dress-test",
            grave: true,
            sources: &[JUDGED, HITCH_SLIP],
            template: "Set it, dress it and load it low down, every time, before anybody hangs on it. A hitch that slides there will slide above. Never count on slip as a fuse, and never let one run: it melts.",
        },
        Caution::TooThick(_) => &Known {
            id: "cord-too-thick",
            grave: true,
            sources: &[CORD_MEMORY, MOUNTAIN_PAGES],
            template: "The cord is {%} of the rope’s thickness and may not grip: 60 to 80 % is usual, and at least 2 mm less than the rope. Take thinner cord or a thicker rope.",
        },
        Caution::TooThin(_) => &Known {
            id: "cord-too-thin",
            grave: false,
            sources: &[CORD_MEMORY],
            template: "The cord is {%} of the rope’s thickness, less than the usual 60 to 80 %: it grips hard and comes free badly.",
        },
        Caution::ThinLifeCord => &Known {
            id: "thin-life-cord",
            grave: true,
            sources: &[AFAG401, MOUNTAIN_PAGES],
            template: "Cord that somebody lives on in a tree is at least 8 mm, 10 recommended. The 5 to 7 mm of mountaineers, at most half the rope, is for backup loops: another rule for another use.",
        },
        Caution::ThinRope => &Known {
            id: "thin-rope",
            grave: true,
            sources: &[AFAG401, CALIFORNIA],
            template: "Working rope is 10 to 14 mm thick, and rules for tree workers ask for 1/2 in and 5,000 lbf: under 11 mm no hitch is sure to hold as here.",
        },
        Caution::Melts(Fibre::Hmpe) => &Known {
            id: "cord-melts",
            grave: true,
            sources: &[CORD_MEMORY],
            template: "High-modulus polyethylene melts near 147 °C (297 °F): no cord for a hitch that slides, which cuts itself through. Not for going down.",
        },
        Caution::Melts(Fibre::Aramid) => &Known {
            id: "cord-heat",
            grave: false,
            sources: &[CORD_MEMORY],
            template: "Aramid chars only near 500 °C (930 °F); a cover of other fibre melts long before.",
        },
        Caution::Melts(_) => &Known {
            id: "cord-heat",
            grave: true,
            sources: &[CORD_MEMORY],
            template: "Nylon melts near 220 °C (428 °F) and polyester near 250 (482), and a hitch that slides loaded gets there: go down slowly, in stops, with other friction beside it.",
        },
        Caution::Stiff => &Known {
            id: "stiff-cord",
            grave: true,
            sources: &[KNOT_STRENGTH, MOYER, COMMON_PRACTICE],
            template: "Such cord is often stiff, and knots leave 40 % of it. Pinch a bight of it flat: where much more than a cord’s thickness stays open it grips badly. Test it.",
        },
        Caution::Weak => &Known {
            id: "weak-cord",
            grave: true,
            sources: &[KNOT_STRENGTH, JUDGED],
            template: "Tied so, this cord may bear less than a jerky climb puts on it. Take stronger cord.",
        },
        Caution::NoStandard => &Known {
            id: "no-standard",
            grave: true,
            sources: &[EN_564],
            template: "The standard for accessory cord covers 4 to 8 mm: what this one bears at least, only its label says.",
        },
        Caution::NoLifeLine => &Known {
            id: "no-life-line",
            grave: true,
            sources: &[JUDGED],
            template: "This is no life line: something else must hold you whenever you are off the ground.",
        },
        Caution::Coils => &Known {
            id: "coils-by-trial",
            grave: false,
            sources: &[COMMON_PRACTICE],
            template: "On thin, slick, wet or new rope a hitch takes more coils. Where it slides add one, where it jams take one away, and test again.",
        },
        Caution::TrimLater => &Known {
            id: "trim-later",
            grave: false,
            sources: &[JUDGED, KNOT_PAGES],
            template: "Cut the longer figure, tie and load it, and trim the tails last: to no less than ten diameters and 10 cm (4 in).",
        },
        Caution::UnlikeLegs => &Known {
            id: "unlike-legs",
            grave: false,
            sources: &[JUDGED],
            template: "With this working end its legs are unlike. Where both go to one connector, begin with the length that makes them alike.",
        },
        Caution::SewnEyes => &Known {
            id: "sewn-eyes",
            grave: false,
            sources: &[JUDGED],
            template: "With sewn or spliced eyes nothing is cut. The maker says how long it is, and how; never splice or sew a life line without being taught.",
        },
    })
}
