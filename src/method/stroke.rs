//! Stroke, strokes and what the rope gives.

use super::Chapter;
use super::formula::formula;
use super::plan::climb;
use super::unit::{COUNT, J, M, N, RATIO, one, usual};
use crate::ascent::GAP_ALONE;
use crate::climber::{
    EXTRA_PAIR, Hold, Posture, SEAT_BELOW, SEAT_HEIGHT, STACK_LENGTH, ShoulderReach, TO_CHEST, TO_LAP, reach,
    share_used,
};
use crate::gear::{RopeKind, stretch};
use crate::hitch::SETBACK;
use crate::quantity::{Force, Length};
use crate::source::{ANSUR, ATTAWAY, CALIFORNIA, COMMON_PRACTICE, EN_1891, GEOMETRY, JUDGED};

pub(super) fn chapter() -> Chapter {
    let used = share_used(Posture::Upright, Hold::BareRope);
    Chapter::new(
        "stroke",
        "Stroke, strokes and stretch",
        "The hands start no higher than the upper turn and end at the chest; the upper hitch is pushed up before every stroke. The judged figures here were chosen to agree with the progress that climbers report, and no published measurement of a stroke was found.",
        vec![
            formula("reach-to-chest", "Reach from overhead to the chest, sitting")
                .words("A line in stature through a survey of soldiers.")
                .symbols(M, "c = a × h + b + s × z")
                .term("c", "from the overhead grip down to the chest", M)
                .term("h", "stature", M)
                .figure("a", "for each metre of stature", one(TO_CHEST.0), RATIO, &[ANSUR])
                .figure("b", "and on top", one(TO_CHEST.1), M, &[ANSUR])
                .figure("s", "one standard deviation", one(TO_CHEST.2), M, &[ANSUR])
                .term("z", "standard deviations off the mean", RATIO)
                .figure("", "share kept by arms that do not go all the way up", ShoulderReach::Limited.kept(), RATIO, &[JUDGED])
                .from(&[ANSUR])
                .used("Length of a stroke.")
                .example(&[("h", 1.75), ("z", 0.0)], |x| reach(x.of("h"), x.of("z")).to_chest),
            formula("reach-to-lap", "Reach from overhead to the lap, sitting")
                .words("The same to the lap: so far above the harness can the upper hitch be pushed.")
                .symbols(M, "l = a × h + b + s × z")
                .term("l", "from the overhead grip down to the lap", M)
                .term("h", "stature", M)
                .figure("a", "for each metre of stature", one(TO_LAP.0), RATIO, &[ANSUR])
                .figure("b", "and on top", one(TO_LAP.1), M, &[ANSUR])
                .figure("s", "one standard deviation", one(TO_LAP.2), M, &[ANSUR])
                .term("z", "standard deviations off the mean", RATIO)
                .from(&[ANSUR])
                .used("Room between the hitches; the section of a rig, for haul cords and lengths of rope.")
                .example(&[("h", 1.75), ("z", 0.0)], |x| reach(x.of("h"), x.of("z")).to_lap),
            formula("gain", "Height gained in a stroke")
                .words("The rope that the hands take, over rope per rise, or the room between the hitches where that ends the stroke first; less what the lower hitch gives back.")
                .symbols(M, "g = min(c × u / r, l − k − d × (n − 1)) − b")
                .term("g", "height gained", M)
                .term("c", "reach to the chest", M)
                .term("l", "reach to the lap", M)
                .term("r", "rope per rise", RATIO)
                .term("n", "turns at the upper hitch", COUNT)
                .figure("u", "share of the reach that is used, sitting upright", used, RATIO, &[JUDGED, COMMON_PRACTICE])
                .figure("", "leaning back, or with a loop round the hand", share_used(Posture::LeaningBack, Hold::BareRope), RATIO, &[JUDGED, COMMON_PRACTICE])
                .figure("k", "stack: hitches, turns and connectors pushed together", usual(&STACK_LENGTH.row), M, &[JUDGED])
                .figure("d", "longer by so much for each further pair of turns", one(EXTRA_PAIR), M, &[JUDGED])
                .figure("b", "setback: what the lower hitch gives back", usual(&SETBACK.row), M, &[JUDGED, COMMON_PRACTICE])
                .from(&[GEOMETRY])
                .used("Strokes and time; a stroke that gains nothing ends a climb. Your own measured pull of rope, or a trial, replaces it.")
                .answered(climb().and_then(|climb| {
                    let reach = reach(1.75, 0.0);
                    let given = [("c", reach.to_chest), ("l", reach.to_lap), ("r", climb.ideal), ("n", 1.0)];
                    Some((given, climb.gain?.likely))
                })),
            formula("strokes", "Strokes to the height")
                .words("Height over what one gains, and before it those that only stretch the rope.")
                .symbols(COUNT, "q = H / g")
                .term("q", "strokes that gain height", COUNT)
                .term("H", "height to climb", M)
                .term("g", "height gained in a stroke", M)
                .from(&[GEOMETRY])
                .used("How long the climb takes and whether strength lasts.")
                .answered(climb().and_then(|climb| {
                    Some(([("H", climb.height), ("g", climb.gain?.likely)], climb.strokes?.likely))
                })),
            formula("work", "Work of a climb at the hand")
                .words("The pull that is needed times all rope that the hands take while they rise.")
                .symbols(J, "E = P × L")
                .term("E", "work", J)
                .term("P", "pull that is needed", N)
                .term("L", "rope that is pulled", M)
                .from(&[GEOMETRY])
                .used("Power.")
                .answered(climb().and_then(|climb| {
                    let work = climb.stroke_work?.likely * climb.strokes?.likely;
                    Some(([("P", climb.need.likely), ("L", climb.rope_handled?.likely)], work))
                })),
            formula("stretch", "What a rope gives under somebody who hangs still")
                .words("In proportion to load and length. The first rope that is pulled takes this up and raises nobody. From a crotch down to a tie at the foot the rope is as long again.")
                .symbols(M, "x = W × L / M")
                .term("x", "how far it gives", M)
                .term("W", "weight on it", N)
                .term("L", "rope above the climber", M)
                .figure("M", "force at a strain of one, low-stretch rope", RopeKind::LowStretchB.modulus(), N, &[ATTAWAY, EN_1891, JUDGED])
                .figure("", "the same of a tree climber’s line", RopeKind::TreeLine.modulus(), N, &[ATTAWAY, CALIFORNIA, JUDGED])
                .from(&[GEOMETRY])
                .used("Strokes before anybody rises.")
                .example(&[("W", 863.0), ("L", 11.0)], |x| {
                    let modulus = RopeKind::LowStretchB.modulus().likely;
                    stretch(Force::newtons(x.of("W")), Length::metres(x.of("L")), modulus).in_metres()
                }),
            formula("top-out", "Height of the seat at the top")
                .words("The crotch, less the hitches and turns pushed together under it, less how far the seat hangs below the harness’s attachment.")
                .symbols(M, "s = c − k − b")
                .term("s", "height of the seat at the top", M)
                .term("c", "height of the crotch", M)
                .figure("k", "stack with an upper hitch", usual(&STACK_LENGTH.row), M, &[JUDGED])
                .figure("", "without an upper hitch", GAP_ALONE, M, &[JUDGED])
                .figure("b", "seat below the attachment", SEAT_BELOW, M, &[JUDGED])
                .figure("", "seat at the start, where nothing is said", usual(&SEAT_HEIGHT.row), M, &[JUDGED])
                .from(&[GEOMETRY])
                .used("Whether the crotch is high enough, and whether the seat comes above an edge.")
                .answered(climb().and_then(|climb| Some(([("c", climb.top.crotch?)], climb.top.seat?.likely)))),
        ],
    )
}
