//! The tree.

use super::formula::formula;
use super::table::digits;
use super::unit::{CM, DEGREES, M, MPA, N, RATIO, one, usual};
use super::{Chapter, Shown, Table};
use crate::quantity::{Angle, Force, Length};
use crate::source::{ASTM_GREEN, CAPSTAN, GEOMETRY, JUDGED, LAVERS, OREGON_BOLE, RESCUE_MANUAL, WOOD_HANDBOOK};
use crate::tree::{
    BARK_FRICTION, BASE_ANCHOR_PLAN, GREEN_OVER_DRY, Green, LEAST_BOLE, LIMB_ANGLE, LIMB_REACH, SHARE_THAT_RULES_OUT,
    Species, VARIATION, base_anchor, hauled_over, low_of_dry, moment, redirect, stress, thickness,
};

fn species() -> Table {
    const HEADS: &[&str] = &["species", "mean, MPa", "standard deviation, MPa", "low, MPa", "source"];
    let caption = "Bending strength of green clear wood, and mean less two standard deviations; where two sources disagree both stand here and the lower is taken";
    let mut table = Table::new("species", caption, HEADS, &[]);
    let mega = |pascals: f64| digits((pascals / 1e4).round() / 100.0);
    for species in Species::ALL {
        for green in species.published() {
            let deviation = green.deviation.map_or("16 % of it".to_owned(), mega);
            let cells = vec![
                species.named().noun.to_owned(),
                mega(green.mean),
                deviation,
                mega(green.low()),
                green.source.id.to_owned(),
            ];
            table = table.row(cells, &[green.source]);
        }
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "tree",
        "The tree",
        "What a crotch carries, and what bending does to a limb. It can only ever rule a limb out; it never says that a limb will do. Dead wood is always refused.",
        vec![
            formula("base-anchor", "Load on the crotch of a base anchor, by friction once the rope has moved")
                .words("The weight on one side, and on the other what friction leaves of it. Friction counts only once the rope has moved, so the plan is twice the weight.")
                .symbols(N, "R = W × (1 + exp(−μ × π))")
                .term("R", "load on the crotch", N)
                .term("W", "weight", N)
                .figure("μ", "friction of rope on bark", BARK_FRICTION, RATIO, &[CAPSTAN, JUDGED])
                .figure("", "over the weight, to plan on", one(BASE_ANCHOR_PLAN), RATIO, &[RESCUE_MANUAL])
                .from(&[GEOMETRY, RESCUE_MANUAL])
                .used("Every part at a base anchor’s crotch.")
                .example(&[("W", 863.0)], |x| base_anchor(Force::newtons(x.of("W")), BARK_FRICTION.likely).in_newtons()),
            formula("hauled-over", "Load on a crotch while somebody is hauled over it")
                .words("The weight, and the taut side that friction asks for: more than twice the weight.")
                .symbols(N, "R = W × (1 + exp(μ × π))")
                .term("R", "load on the crotch", N)
                .term("W", "weight", N)
                .figure("μ", "friction of rope on bark", BARK_FRICTION, RATIO, &[CAPSTAN, JUDGED])
                .from(&[GEOMETRY])
                .used("Helpers’ rigs.")
                .example(&[("W", 863.0)], |x| hauled_over(Force::newtons(x.of("W")), BARK_FRICTION.likely).in_newtons()),
            formula("redirect", "Load on a redirect")
                .words("Both strands pull with the same tension; the flatter the angle between them, the less they pull together.")
                .symbols(N, "R = 2 × T × cos(θ / 2 × π / 180)")
                .term("R", "load on the redirect", N)
                .term("T", "tension", N)
                .term("θ", "angle between the strands", DEGREES)
                .from(&[GEOMETRY])
                .used("A second limb on the rope’s way.")
                .example(&[("T", 1000.0), ("θ", 120.0)], |x| {
                    redirect(Force::newtons(x.of("T")), Angle::degrees(x.of("θ"))).in_newtons()
                }),
            formula("bending-moment", "Bending moment at a limb’s union")
                .words("The pull, times how far out it acts, times the sine of the angle between limb and pull. A level limb bends most.")
                .symbols(Shown::si("N m"), "B = r × R × sin(φ × π / 180)")
                .term("B", "moment at the union", Shown::si("N m"))
                .term("r", "from the union to the rope", M)
                .term("R", "pull on the limb", N)
                .term("φ", "angle between the limb and the pull", DEGREES)
                .figure("", "rope out along the limb, where nothing is said", usual(&LIMB_REACH.row), M, &[JUDGED])
                .figure("", "angle, where nothing is said", usual(&LIMB_ANGLE.row), DEGREES, &[JUDGED])
                .from(&[GEOMETRY, RESCUE_MANUAL])
                .used("What bending says of the limb.")
                .example(&[("r", 5.0), ("R", 2000.0), ("φ", 45.0)], |x| {
                    moment(Force::newtons(x.of("R")), Length::metres(x.of("r")), Angle::degrees(x.of("φ")))
                }),
            formula("bending-stress", "Greatest stress in a round limb")
                .words("Moment over the section modulus of a round section.")
                .symbols(MPA, "σ = 32 × B / (π × d ^ 3) / 1000000")
                .term("σ", "greatest stress", MPA)
                .term("B", "moment at the union", Shown::si("N m"))
                .term("d", "thickness of the limb", M)
                .figure("", "share of the low strength from which on the limb is ruled out", one(SHARE_THAT_RULES_OUT), RATIO, &[JUDGED])
                .from(&[GEOMETRY])
                .used("What bending says of the limb.")
                .example(&[("B", 500.0), ("d", 0.2)], |x| stress(x.of("B"), Length::metres(x.of("d"))) / 1e6),
            formula("low-strength", "Low strength of green wood")
                .words("Mean less two standard deviations: one piece of clear wood in some forty bears less. A living limb has knots, taper, decay and unions, so this is an upper bound.")
                .symbols(MPA, "L = m − 2 × v × m")
                .term("L", "low strength", MPA)
                .term("m", "mean", MPA)
                .figure("v", "standard deviation over the mean, where none is published of the species", one(VARIATION), RATIO, &[WOOD_HANDBOOK])
                .from(&[WOOD_HANDBOOK, LAVERS, ASTM_GREEN])
                .used("What bending says of the limb. Always the green column: dry wood is 56 to 83 % stronger.")
                .example(&[("m", 57.0)], |x| {
                    Green { mean: x.of("m") * 1e6, deviation: None, source: WOOD_HANDBOOK }.low() / 1e6
                }),
            formula("low-strength-of-dry", "Low strength of a species of which only dry wood is published")
                .words("Half of what is published at 12 % moisture, less two standard deviations: the cautious end of what 38 species show.")
                .symbols(MPA, "L = g × D × (1 − 2 × v)")
                .term("L", "low strength, green", MPA)
                .term("D", "mean at 12 % moisture", MPA)
                .figure("g", "green over dry", one(GREEN_OVER_DRY), RATIO, &[WOOD_HANDBOOK])
                .figure("v", "standard deviation over the mean", one(VARIATION), RATIO, &[WOOD_HANDBOOK])
                .from(&[WOOD_HANDBOOK])
                .used("Nothing yet: a species that is not listed gets no answer.")
                .example(&[("D", 100.0)], |x| low_of_dry(x.of("D") * 1e6) / 1e6),
            formula("forearm", "Thickness from a girth")
                .words("A tie-in limb is at least as thick as the climber’s forearm, and never a single smaller branch.")
                .symbols(CM, "t = G / π")
                .term("t", "thickness", CM)
                .term("G", "girth", CM)
                .figure("", "thinnest bole above which nobody climbs unsecured in a conifer", one(LEAST_BOLE.in_metres()), CM, &[OREGON_BOLE])
                .from(&[GEOMETRY, RESCUE_MANUAL])
                .used("A limb that is too thin before any sum is made.")
                .example(&[("G", 27.0)], |x| thickness(Length::centimetres(x.of("G"))).in_centimetres()),
        ],
    )
    .table(species())
}
