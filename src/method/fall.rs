//! Falls and catches.

use super::Chapter;
use super::formula::formula;
use super::unit::{KN, M, N, RATIO, usual};
use crate::ascent::CLIMBING_PEAK;
use crate::field::Spread;
use crate::gear::{FULL_BODY_LIMIT, RopeKind, SEAT_HARNESS_LIMIT, SLACK, arrest_force, fall_factor};
use crate::quantity::{Force, Length};
use crate::source::{ATTAWAY, EN_1891, GEOMETRY, JUDGED, OSHA, SEAT_REVIEW};

pub(super) fn chapter() -> Chapter {
    let limit = |force: Force| Spread::point(force.in_newtons());
    Chapter::new(
        "fall",
        "Falls and catches",
        "What stops a slip is reckoned for a rope that gives evenly. Stems that give, hitches that slip and bodies that bend would lessen it; none can be counted on.",
        vec![
            formula("fall-factor", "Fall factor of a slip")
                .words("How far one drops, over the rope that stops it: what hangs above the climber, and the drop itself.")
                .symbols(RATIO, "f = d / (L + d)")
                .term("f", "fall factor", RATIO)
                .term("d", "drop before the rope is taut and the hitch holds", M)
                .term("L", "rope above the climber", M)
                .figure("", "slack, where nothing is said", usual(&SLACK.row), M, &[JUDGED])
                .from(&[GEOMETRY])
                .used("A slip, a hitch that is let go, a knot that catches.")
                .example(&[("d", 0.55), ("L", 2.0)], |x| {
                    fall_factor(Length::metres(x.of("d")), Length::metres(x.of("L") + x.of("d")))
                }),
            formula("arrest", "What a rope pulls at most when it stops a fall")
                .words("Energy of the fall against energy in the stretched rope. A fall of nothing on a taut rope already doubles the weight.")
                .symbols(N, "F = W × (1 + √(1 + 2 × f × M / W))")
                .term("F", "greatest force", N)
                .term("W", "weight", N)
                .term("f", "fall factor", RATIO)
                .figure("M", "force at a strain of one, low-stretch rope", RopeKind::LowStretchB.modulus(), N, &[ATTAWAY, EN_1891, JUDGED])
                .from(&[ATTAWAY, GEOMETRY])
                .used("Every catch. Where strands share the weight they are stiffer together in proportion.")
                .example(&[("W", 863.0), ("f", 0.2)], |x| {
                    let modulus = RopeKind::LowStretchB.modulus().likely;
                    arrest_force(Force::newtons(x.of("W")), x.of("f"), modulus).in_newtons()
                }),
            formula("fall-limits", "Limits and peaks")
                .words("Climbing in jerks loads an anchor more than hanging still; a rope that runs out and is stopped dead doubles the load, by the formula above.")
                .figure("", "on somebody in a full-body harness, at most", limit(FULL_BODY_LIMIT), KN, &[OSHA])
                .figure("", "on somebody in a seat harness, at most", limit(SEAT_HARNESS_LIMIT), KN, &[SEAT_REVIEW])
                .figure("", "peak over load while climbing", CLIMBING_PEAK, RATIO, &[JUDGED])
                .from(&[OSHA, SEAT_REVIEW, JUDGED])
                .used("Cautions of What does each part carry?"),
        ],
    )
    .note(
        "the lowest catch",
        "From which height on a catch comes before the ground: the heaviest climber, the longest drop and the rope that gives most, all of it down to a tie at the foot.",
        &[GEOMETRY],
    )
}
