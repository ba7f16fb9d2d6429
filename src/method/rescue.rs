//! Rescue.

use super::formula::formula;
use super::table::range;
use super::unit::{M, M_PER_S, MIN, N, RATIO, S, one, usual};
use super::{Chapter, Table};
use crate::ascent::HARNESS_CLOCK;
use crate::climber::HELPER_PULL;
use crate::descent::{FootBrake, RESCUE_CLOCK, RESCUER_SPEED, SENSIBLE_SPEED, Stage, hauls, total};
use crate::field::Spread;
use crate::reeving::RigName;
use crate::source::{AFAG401, GEOMETRY, HSIAO, JUDGED, MUNTER, RAUCH, RESCUE_MANUAL, TURNER};

const HEIGHT: f64 = 10.0;

fn stages() -> Table {
    const STAGES: [(&str, Stage); 10] = [
        ("somebody sees that the climber hangs still", Stage::Notice),
        ("the brake at the foot is made ready", Stage::Unlock),
        ("a haul is rigged at the foot", Stage::RigHaul),
        ("the climber is let down", Stage::Lower),
        ("the climber changes over", Stage::ChangeOver),
        ("the climber comes down", Stage::ComeDown),
        ("a second rope is put into the tree", Stage::SetRope),
        ("the rescuer gears up", Stage::GearUp),
        ("the rescuer climbs to them", Stage::Climb),
        ("the rescuer takes them over", Stage::TakeOver),
    ];
    let mut table = Table::new(
        "stages",
        "Stages of a rescue, in seconds, at a height of 10 m: likely (range). Judged, every one: rehearse yours, with a watch",
        &["stage", "seconds"],
        &[JUDGED],
    );
    for (name, stage) in STAGES {
        table = table.row(vec![name.to_owned(), range(stage.time(HEIGHT), 1.0)], &[]);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "rescue",
        "Rescue clocks",
        "Two clocks, and no time is ever called safe. The rescue clock runs for everybody from the moment they stop moving: start at once. The harness clock runs for somebody whose legs do not move, from leaving the seat.",
        vec![
            formula("clocks", "The two clocks")
                .words("Of people who hung still in a chest attachment 95 % lasted at least 7 min, the shortest 4; in a sit harness the earliest near-faint came at 13.4 min. A rescue within 9 min would have kept 95 % unaffected in a full-body harness; the shorter is taken.")
                .figure("", "rescue clock: on the ground within", one(RESCUE_CLOCK), MIN, &[TURNER, HSIAO])
                .figure("", "harness clock: never better than at your limit beyond", one(HARNESS_CLOCK), MIN, &[JUDGED, RAUCH])
                .from(&[TURNER, HSIAO, RAUCH])
                .used("What if I am stuck? And the verdict, where legs do not move."),
            formula("letting-down", "Time to be let down")
                .words("Seen, brake made ready, let down at a sensible speed: one stage after the other, each end of the range the sum of those ends.")
                .symbols(S, "t = a + u + h / v")
                .term("t", "time until the ground", S)
                .figure("a", "somebody notices", Stage::Notice.time(HEIGHT), S, &[JUDGED])
                .figure("u", "the brake is made ready", Stage::Unlock.time(HEIGHT), S, &[JUDGED])
                .term("h", "height", M)
                .figure("v", "sensible speed, at most", one(SENSIBLE_SPEED), M_PER_S, &[JUDGED])
                .figure("", "a trained rescuer climbs", RESCUER_SPEED, M_PER_S, &[JUDGED])
                .from(&[JUDGED])
                .used("Every way to the ground, likewise.")
                .example(&[("h", 11.0)], |x| total(&[Stage::Notice, Stage::Unlock, Stage::Lower], x.of("h")).likely),
            formula("hauling", "Pull of those who haul somebody up over a crotch, 1:1")
                .words("The weight over what the turn at the top keeps, and over the advantage of the helpers’ rig, by the general model; friction from its unfavourable end.")
                .symbols(N, "P = W / e")
                .term("P", "pull", N)
                .term("W", "weight", N)
                .term("e", "kept by the turn at the top", RATIO)
                .figure("", "what a helper pulls for minutes", usual(&HELPER_PULL.row), N, &[JUDGED])
                .from(&[GEOMETRY])
                .used("If somebody hauls from the ground. Downwards nobody pulls more than half of their own weight for long; from 5:1 on one person can break gear or crush somebody under a limb.")
                .example(&[("W", 863.0), ("e", 0.5)], |x| {
                    let kept = Spread::point(x.of("e"));
                    let one = hauls(kept, Spread::point(1.0)).into_iter().find(|haul| haul.rig == RigName::GroundOne);
                    one.map_or(f64::NAN, |haul| haul.share.likely * x.of("W"))
                }),
            formula("foot-brake", "Friction at the foot")
                .words("As at the harness; turns round a stem hold by bark, and unevenly.")
                .figure("", "a Munter: tension over hand", FootBrake::Munter.ratio(1.0), RATIO, &[MUNTER])
                .figure("", "two turns round metal", FootBrake::Turns.ratio(2.0), RATIO, &[JUDGED])
                .figure("", "two turns round a stem", FootBrake::Stem.ratio(2.0), RATIO, &[JUDGED])
                .from(&[GEOMETRY])
                .used("The hand that lets somebody down."),
        ],
    )
    .table(stages())
    .note(
        "two people",
        "At least two people at all tree climbing, one on the ground, able and equipped to rescue at once; and where possible lines are set so that the climber can be let down.",
        &[AFAG401, RESCUE_MANUAL],
    )
}
