//! How strength lasts.

use super::formula::{Formula, formula};
use super::plan::climb;
use super::table::digits;
use super::unit::{J, KGF, MIN, N, PER_S, RATIO, S, W, one};
use super::{Chapter, Table};
use crate::ascent::MARGIN;
use crate::climber::{
    ABLE_POWER, EVERY, Grip, KEPT_UP, KEPT_UP_FOR, LONGEST_REST, MOVING, PARAPLEGIC_POWER, PEAK_OVER_GRIP, PULL_TIME,
    RESET_TIME, TETRAPLEGIC_POWER, Tired, Tiring, Trunk, USUAL_GRIP, peak_power, strength_for,
};
use crate::source::{AMINOFF, DELANEY, GEOMETRY, HAISMA, JOHNSON, JUDGED, RAKSHIT, Source, TIRING};

const ELBOW: Tiring = Tiring::ELBOW;

/// The figures of the arms' muscles.
fn arms(row: Formula) -> Formula {
    row.figure("F₀", "the arms tire, a second, held still", one(ELBOW.fatigue), PER_S, &[RAKSHIT])
        .figure("v", "times as fast with pulls that move", MOVING, RATIO, &[RAKSHIT, JOHNSON, TIRING, JUDGED])
        .figure("R", "they recover, a second", one(ELBOW.recovery), PER_S, &[RAKSHIT])
}

fn muscles() -> Table {
    const HEADS: &[&str] = &["muscles", "tire, 1/s", "recover, 1/s", "times faster at rest", "used for"];
    let mut table = Table::new("muscles", "How fast muscles tire and recover", HEADS, &[]);
    let rows: [(&str, Tiring, &str, &[Source]); 3] = [
        ("elbow", Tiring::ELBOW, "arms", &[RAKSHIT]),
        ("hand and grip", Tiring::HAND, "hands", &[RAKSHIT]),
        ("shoulder", Tiring::SHOULDER, "arms on the map of rigs: the kind edge", &[TIRING]),
    ];
    for (name, tiring, used, sources) in rows {
        let mut cells = vec![name.to_owned()];
        cells.extend([tiring.fatigue, tiring.recovery, tiring.rest].map(digits));
        cells.push(used.to_owned());
        table = table.row(cells, sources);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "tiring",
        "Tiring and pace",
        "A model of three compartments: what works, what is tired, what rests. Between changes of load it has an exact solution, which is used as it is. It was fitted to muscles held still and is too kind to pulls that move, so its rate of tiring is multiplied by what two measurements of moving pulls bracket.",
        vec![
            arms(formula("left-after-a-pull", "Strength left after one pull by somebody fresh"))
                .words("Of what works a share tires every second, and of what is tired a share recovers. A pull succeeds while what is left is at least the share it takes.")
                .symbols(RATIO, "F = F₀ × v\nL = 1 − s × F / R × (1 − exp(−R × t))")
                .term("L", "strength left, as a share of the whole", RATIO)
                .term("s", "share of the whole strength that the pull takes", RATIO)
                .term("t", "how long the pull takes", S)
                .from(&[TIRING, RAKSHIT])
                .used("Every pull of the climb that is drawn, and the count of pulls that can succeed.")
                .example(&[("s", 0.67), ("t", 1.35)], |x| {
                    Tired::FRESH.pulling(ELBOW.faster(MOVING.likely), x.of("s"), x.of("t")).left()
                }),
            formula("left-after-a-rest", "Strength left after a rest")
                .words("At rest what is tired fades so many times faster.")
                .symbols(RATIO, "L = 1 − s × exp(−r × R × t)")
                .term("L", "strength left", RATIO)
                .term("s", "share that was tired at the beginning of the rest", RATIO)
                .figure("R", "the arms recover, a second", one(ELBOW.recovery), PER_S, &[RAKSHIT])
                .figure("r", "times faster at rest", one(ELBOW.rest), RATIO, &[RAKSHIT])
                .term("t", "the rest", S)
                .from(&[TIRING])
                .used("Between two pulls.")
                .example(&[("s", 0.3), ("t", 10.0)], |x| {
                    // Asked for exactly as much as keeps that much tired, for long enough to settle.
                    let share = x.of("s") * ELBOW.recovery / ELBOW.fatigue;
                    Tired::FRESH.pulling(ELBOW, share, 1e6).resting(ELBOW, x.of("t")).left()
                }),
            arms(formula("strength-for-pulls", "Strength that so many pulls take, over that of one"))
                .words("Tiredness after the last pull is a sum of a series that shrinks by the same factor from pull to pull. A share lasts where it times this is at most one.")
                .symbols(RATIO, "F = F₀ × v\nk = exp(−R × (t + r × b))\nZ = 1 + F / R × (1 − exp(−R × t)) × (1 − k ^ n) / (1 − k)")
                .term("Z", "strength for all pulls over strength for one", RATIO)
                .figure("r", "times faster at rest", one(ELBOW.rest), RATIO, &[RAKSHIT])
                .term("t", "a pull", S)
                .term("b", "the rest between two", S)
                .term("n", "pulls", RATIO)
                .from(&[TIRING])
                .used("Whether arms and hands last to the height in the time allowed; what a trial at knee height proves.")
                .example(&[("t", 1.35), ("b", 8.0), ("n", 60.0)], |x| {
                    strength_for(ELBOW.faster(MOVING.likely), x.of("t"), x.of("b"), x.of("n"))
                }),
            formula("shortest-rest", "Shortest rest between pulls")
                .words("The shortest with which the share of a pull times the strength for so many pulls is at most one, found by halving to a tenth of a second; none where even the longest rest is not enough.")
                .symbols(S, "s × Z(b) ≤ 1")
                .term("b", "the rest", S)
                .figure("", "longest rest that counts", one(LONGEST_REST), S, &[JUDGED])
                .from(&[TIRING])
                .used("Pace and time of the climb."),
            formula("pace", "Pace of the climb that is drawn")
                .words("The quickest pace, of equal rests and of longer ones after every 5, 10, 20 or 40 pulls, with which every pull leaves a margin beyond what it takes. The upper hitch takes its time, and power bounds the pace too.")
                .figure("", "margin left at the end of each pull", MARGIN, RATIO, &[JUDGED])
                .figure("", "one pull", PULL_TIME, S, &[JUDGED])
                .figure("", "moving the upper hitch", RESET_TIME, S, &[JUDGED])
                .figure("", "most pulls between two longer rests", one(EVERY.iter().fold(0.0, |most, every| f64::from(*every).max(most))), RATIO, &[JUDGED])
                .from(&[TIRING, JUDGED])
                .used("How the climb goes, pull by pull. Time to turn back, judged: half the time gone and less than half the height done, or less left than another pull takes and the margin."),
            formula("lasting-share", "Share of one’s strength that can be asked for ever")
                .words("Where tiring and recovering balance, at work for part of the time. The kind edge: measured moving pulls at a third of the time topped out at 0.37.")
                .symbols(RATIO, "k = R / F × (D + r × (1 − D)) / D\nS = k / (1 + k)")
                .term("S", "share that lasts", RATIO)
                .figure("F", "the shoulder tires, a second", one(Tiring::SHOULDER.fatigue), PER_S, &[TIRING])
                .figure("R", "it recovers, a second", one(Tiring::SHOULDER.recovery), PER_S, &[TIRING])
                .figure("r", "times faster at rest", one(Tiring::SHOULDER.rest), RATIO, &[TIRING])
                .term("D", "share of the time at work", RATIO)
                .from(&[TIRING])
                .used("Only the map of rigs by weight and pull, which quotes the full reckoning for your own place.")
                .example(&[("D", 0.5)], |x| Tiring::SHOULDER.lasting(x.of("D"))),
            formula("peak-power", "Greatest power of the arms for a minute or two")
                .words("In proportion to the grip of both hands. With a trunk that does not hold, or after an injury at the neck, from figures of people with such injuries.")
                .symbols(W, "Q = Q₀ × G / G₀ × i")
                .term("Q", "greatest power", W)
                .figure("Q₀", "able-bodied men at the arm crank", one(ABLE_POWER), W, &[AMINOFF])
                .figure("", "with paraplegia", one(PARAPLEGIC_POWER), W, &[HAISMA])
                .figure("", "with tetraplegia, at most", one(TETRAPLEGIC_POWER), W, &[HAISMA])
                .term("G", "grip of both hands, added", KGF)
                .figure("G₀", "the grip that goes with it", one(USUAL_GRIP.in_newtons()), KGF, &[JUDGED])
                .figure("i", "one person’s power over that of their grip", PEAK_OVER_GRIP, RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("Power, where none was measured.")
                .example(&[("G", 80.0)], |x| {
                    let hand = crate::quantity::Force::kilograms_force(x.of("G") / 2.0).in_newtons();
                    peak_power(Grip { left: hand, right: hand }, Trunk::Steady, PEAK_OVER_GRIP.likely)
                }),
            formula("power-gate", "Power to come to the height in the time allowed")
                .words("Work of all strokes over the time, held against the share of the greatest power that is kept up for half an hour; what is kept up so long is not kept up longer.")
                .symbols(W, "U = E / min(T, T₀)")
                .term("U", "power that is needed", W)
                .term("E", "work of all strokes at the hand, those that only stretch the rope included", J)
                .term("T", "time allowed", S)
                .figure("T₀", "as long as it is kept up", one(KEPT_UP_FOR), S, &[JUDGED])
                .figure("", "share of the greatest power kept up for that long", KEPT_UP, RATIO, &[JUDGED])
                .figure("", "the same time", one(KEPT_UP_FOR), MIN, &[JUDGED])
                .from(&[GEOMETRY])
                .used("The gate of power in the verdict.")
                .answered(climb().and_then(|climb| {
                    let work = climb.stroke_work?.likely * climb.taken_up.all_strokes?.likely;
                    Some(([("E", work), ("T", climb.time_allowed)], climb.power_needed?.likely))
                })),
            formula("one-share", "Share of the arms that one pull takes")
                .words("Pull over strength; of the hands likewise, with what they hold. Over one, not one pull succeeds.")
                .symbols(RATIO, "s = P / A")
                .term("s", "share", RATIO)
                .term("P", "pull that is needed", N)
                .term("A", "pull that the arms give through a stroke", N)
                .from(&[GEOMETRY, DELANEY])
                .used("The first gates of the verdict.")
                .answered(climb().and_then(|climb| {
                    let arms = climb.arms?;
                    Some(([("P", climb.need.likely), ("A", arms.capacity.likely)], arms.share.likely))
                })),
        ],
    )
    .table(muscles())
    .note(
        "the multiplier",
        "1.6 times as fast gives the ten repetitions at 80 % that were measured (1.5 s on, 1.5 s off); 3.8 times gives the 0.37 of the greatest effort at which repeated moving squeezes levelled off at a third of the time over twelve minutes. Likely 2.4 lies between, judged.",
        &[JOHNSON, RAKSHIT, TIRING],
    )
    .note(
        "what it is not",
        "It is reckoned of muscles that were tested, not of yours, and knows nothing of pain, breath, heat or will.",
        &[],
    )
}
