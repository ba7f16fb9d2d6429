//! Coming down.

use super::formula::formula;
use super::table::{digits, range};
use super::unit::{J, KELVIN, M, M_PER_S, N, RATIO, S, W, one, usual};
use super::{Chapter, Shown, Table};
use crate::descent::{
    AIR, Brake, DEVICE_SPEED, HEAT_SHARE, HEAT_SHARE_ALONE, Heat, METAL_FRICTION, REST_FOR, SENSIBLE_SPEED, Slab,
    TO_THE_KNOT, TO_THE_NEXT, USUAL_HAND, hand_share, skin_rise,
};
use crate::gear::{Fibre, PACKED};
use crate::quantity::CENTIMETRE;
use crate::question::coming_down::ROPE_A_METRE;
use crate::reeving::{Backup, RigName};
use crate::source::{
    AFAG401, CAPSTAN, COMMON_PRACTICE, EN_341, FIBRE_HEAT, GEOMETRY, JUDGED, MORTON_HEARLE, MUNTER, SUMMIT,
};

/// Somebody on the way down in one go.
const fn heat(weight: f64, height: f64, speed: f64) -> Heat {
    Heat { weight, height, speed, stops: None, rest: 0.0 }
}

fn brakes() -> Table {
    let caption = "Tension above a brake over what the hand holds: to plan on (range)";
    let mut table = Table::new("brakes", caption, &["friction added", "times"], &[MUNTER, CAPSTAN, JUDGED]);
    for brake in Brake::ALL {
        let turned: &[f64] = if *brake == Brake::Turns { &[1.0, 2.0, 3.0] } else { &[1.0] };
        for turns in turned {
            let noun = brake.named().noun;
            let name = if turned.len() > 1 { format!("{noun}: {turns}") } else { noun.to_owned() };
            let mut ratio = brake.ratio(*turns);
            for end in [&mut ratio.low, &mut ratio.likely, &mut ratio.high] {
                *end = (*end * 100.0).round() / 100.0;
            }
            table = table.row(vec![name, range(ratio, 1.0)], &[]);
        }
    }
    table
}

fn fibres() -> Table {
    const HEADS: &[&str] = &[
        "fibre",
        "specific heat, J/(kg K)",
        "density, kg/m³",
        "conductivity, W/(m K)",
        "changes, °C",
        "melts or chars, °C",
    ];
    let mut table = Table::new("fibres", "How fibres take heat, dry and solid", HEADS, &[MORTON_HEARLE, FIBRE_HEAT]);
    for fibre in Fibre::ALL {
        let warmth = fibre.warmth();
        let mut cells = vec![fibre.named().noun.to_owned()];
        let figures = [warmth.specific_heat, warmth.density, warmth.conductivity, warmth.changes, warmth.fails];
        cells.extend(figures.map(digits));
        table = table.row(cells, &[]);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "down",
        "Coming down",
        "A hitch held in the hand counts as nothing: friction must be added for the way down, and the hand is planned on the least of it. Heat is reckoned as if none left, which errs on the hot side.",
        vec![
            formula("brake-turns", "Tension over hand of turns round smooth metal")
                .words("The capstan again, with whole turns.")
                .symbols(RATIO, "B = exp(μ × 2 × π × n)")
                .term("B", "tension above over what the hand holds", RATIO)
                .figure("μ", "friction of rope on smooth metal", METAL_FRICTION, RATIO, &[CAPSTAN])
                .term("n", "turns", RATIO)
                .figure("", "a Munter, to plan on, and its range", Brake::Munter.ratio(1.0), RATIO, &[MUNTER])
                .from(&[GEOMETRY, CAPSTAN])
                .used("Can I get down again? The foot of the tree in a rescue.")
                .example(&[("n", 2.0)], |x| Brake::Turns.ratio(x.of("n")).likely),
            formula("hand-below-brake", "Force in the hand below a brake, on a rope tied above")
                .words("By the general model of the rig as it is on the way down, with one turn more for the brake: the weight over the brake’s ratio.")
                .symbols(N, "H = W / B")
                .term("H", "force in the hand", N)
                .term("W", "weight", N)
                .term("B", "tension above over what the hand holds", RATIO)
                .figure("", "what a hand is usually taken to hold", one(USUAL_HAND), N, &[SUMMIT])
                .from(&[GEOMETRY])
                .used("Can I get down again? Planned on the low end of the brake.")
                .example(&[("W", 863.0), ("B", 5.0)], |x| {
                    let rig = RigName::TailThree.rig(Backup::None).ok();
                    rig.and_then(|rig| hand_share(&rig, 1.0 / x.of("B"), 1.0)).map_or(f64::NAN, |share| share * x.of("W"))
                }),
            formula("heat", "Heat of the way down")
                .words("Weight times height; while moving, weight times speed.")
                .symbols(J, "E = W × h")
                .term("E", "heat", J)
                .term("W", "weight", N)
                .term("h", "height", M)
                .from(&[GEOMETRY])
                .used("What gets hot.")
                .example(&[("W", 784.532), ("h", 20.0)], |x| heat(x.of("W"), x.of("h"), 1.0).energy()),
            formula("heat-a-second", "Heat a second while moving")
                .words("Twice the speed, twice the heat a second.")
                .symbols(W, "Q = W × v")
                .term("Q", "heat a second", W)
                .term("W", "weight", N)
                .term("v", "speed", M_PER_S)
                .figure("", "sensible speed on a hitch, at most", one(SENSIBLE_SPEED), M_PER_S, &[JUDGED])
                .figure("", "a limit for devices", one(DEVICE_SPEED), M_PER_S, &[EN_341])
                .from(&[GEOMETRY])
                .used("What gets hot; a speed to come down at.")
                .example(&[("W", 784.532), ("v", 2.0)], |x| heat(x.of("W"), 10.0, x.of("v")).power()),
            formula("rope-warms", "How much the rope warms")
                .words("If all heat spread through the rope that passes: the same for every height and speed, and little. What stays in the heat, the hitch’s cord and the metal, is the danger.")
                .symbols(KELVIN, "ΔT = W / (w × c)")
                .term("ΔT", "warming", KELVIN)
                .term("W", "weight", N)
                .figure("w", "mass of a metre of rope", one(ROPE_A_METRE), Shown::si("kg/m"), &[JUDGED])
                .figure("c", "specific heat of nylon", one(Fibre::Nylon.warmth().specific_heat), Shown::si("J/(kg K)"), &[MORTON_HEARLE])
                .from(&[GEOMETRY])
                .used("What gets hot.")
                .example(&[("W", 784.532)], |x| {
                    heat(x.of("W"), 10.0, 0.5).rope_rise(ROPE_A_METRE, Fibre::Nylon.warmth().specific_heat)
                }),
            formula("cord-warms", "How much the hitch’s cord warms, if its share spread evenly")
                .words("Its share of the heat over what the cord in the hitch takes.")
                .symbols(KELVIN, "m = f × ρ × π / 4 × d ^ 2 × l\nΔT = s × W × h / (m × c)")
                .term("ΔT", "warming", KELVIN)
                .term("W", "weight", N)
                .term("h", "height", M)
                .term("d", "diameter of the cord", M)
                .term("l", "cord in the hitch", M)
                .figure("s", "share of the heat that stays, with friction added below", usual(&HEAT_SHARE.row), RATIO, &[JUDGED])
                .figure("", "the same of a hitch alone", usual(&HEAT_SHARE_ALONE.row), RATIO, &[JUDGED])
                .figure("f", "share of a cord’s round that is fibre", one(PACKED), RATIO, &[JUDGED])
                .figure("ρ", "density of nylon", one(Fibre::Nylon.warmth().density), Shown::si("kg/m³"), &[FIBRE_HEAT])
                .figure("c", "specific heat of nylon", one(Fibre::Nylon.warmth().specific_heat), Shown::si("J/(kg K)"), &[MORTON_HEARLE])
                .from(&[GEOMETRY])
                .used("What gets hot.")
                .example(&[("W", 863.0), ("h", 11.0), ("d", 0.008), ("l", 0.4)], |x| {
                    let share = usual(&HEAT_SHARE.row).likely;
                    heat(x.of("W"), x.of("h"), 0.5).cord_rise(share, x.of("d"), x.of("l"), Fibre::Nylon)
                }),
            formula("face-warms", "How much the side of the cord warms that the rope runs past, in a short run")
                .words("A slab heated on one face that loses nothing: at first heat has not come through, and the face warms with the root of time. Later the exact series is used; with stops on the way the runs are added. The cord counts as a strip as wide as it is thick.")
                .symbols(KELVIN, "ΔT = q × 2 × √(t / (π × k × C))")
                .term("ΔT", "warming of the face", KELVIN)
                .term("q", "heat a second and square metre", Shown::si("W/m²"))
                .term("t", "how long", S)
                .term("k", "conductivity", Shown::si("W/(m K)"))
                .term("C", "heat that warms a cubic metre by a kelvin", Shown::si("J/(m³ K)"))
                .figure("", "air and cord to begin with, °C", AIR, Shown::RATIO, &[JUDGED])
                .figure("", "each stop, where nothing is said", usual(&REST_FOR.row), S, &[JUDGED])
                .from(&[GEOMETRY])
                .used("What gets hot, against where the fibre changes and melts.")
                .example(&[("q", 10_000.0), ("t", 2.0), ("k", 0.25), ("C", 1.3e6)], |x| {
                    let slab = Slab { thickness: CENTIMETRE.si(1.0), conductivity: x.of("k"), by_volume: x.of("C") };
                    skin_rise(&slab, x.of("q"), &[(0.0, x.of("t"))], x.of("t"))
                }),
            formula("time-down", "Time of the way down")
                .words("Height over speed, and a stop between each two pieces.")
                .symbols(S, "t = h / v + (n − 1) × b")
                .term("t", "time", S)
                .term("h", "height", M)
                .term("v", "speed while moving", M_PER_S)
                .term("n", "pieces that the stops make of it", RATIO)
                .term("b", "each stop", S)
                .from(&[GEOMETRY])
                .used("Can I get down again?")
                .example(&[("h", 12.0), ("v", 0.5), ("n", 6.0), ("b", 10.0)], |x| {
                    let way = x.of("h") / x.of("n");
                    Heat { stops: Some(way), rest: x.of("b"), ..heat(800.0, x.of("h"), x.of("v")) }.time()
                }),
            formula("change-over", "The change from going up to going down")
                .words("A list of rigs, each as it hangs while a step is made: what is opened or moved is taken out of it, every hand is off, and the model says whether something holds, and whether any one failure drops the climber. Nothing counts as two attachments that needs a hand.")
                .figure("", "rope between the hitch and the knot below it", one(TO_THE_KNOT), M, &[JUDGED])
                .figure("", "rope to the next knot further down", one(TO_THE_NEXT), M, &[COMMON_PRACTICE])
                .from(&[GEOMETRY, AFAG401])
                .used("The change-over, step by step."),
        ],
    )
    .table(brakes())
    .table(fibres())
}
