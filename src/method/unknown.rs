//! What is not known.

use super::Chapter;

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "unknown",
        "What is not known",
        "Nobody could be found who published these. Where a figure is needed it is judged, shown with its range, and yours replaces it.",
        Vec::new(),
    )
    .note("not published: hands", "What a hand holds on bare rope of 9 to 13 mm, and how gloves change it there.", &[])
    .note("not published: hitches", "What a tended hitch drags, what it gives back, how much of the heat stays in its cord, and at what load which hitch on which rope and cord slips.", &[])
    .note("not published: strokes", "How far people pull in a stroke, sitting or leaning back; how fast; how they rest.", &[])
    .note("not published: legs", "What legs drive up a rope.", &[])
    .note("not published: rescues", "How long each stage of a rescue takes, by whom.", &[])
    .note("not seen: the tree", "Decay, cracks, dead wood, weak unions, what hangs above, power lines, wind. A sum that does not rule a limb out says nothing about these.", &[])
    .note("not seen: the gear", "Wear, age, edges, how a hitch was dressed, whether a gate is shut, whether this cord suits this rope.", &[])
    .note("not seen: the person", "Pain, breath, heat, cold, fear, medicine, skill, and who is beside them.", &[])
}
