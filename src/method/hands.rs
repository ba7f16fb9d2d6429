//! What the hands hold.

use super::formula::formula;
use super::table::range;
use super::unit::{N, RATIO, one};
use super::{Chapter, Table};
use crate::climber::{Arms, Gloves, Grip, Hold, PULL_OVER_GRIP, held_by};
use crate::source::{GEOMETRY, HUR, JUDGED, YOUNG};

pub(super) fn chapter() -> Chapter {
    const HEADS: &[&str] = &["what the hand holds", "bare hand", "smooth glove", "rubbered glove"];
    let caption = "What one hand holds over its grip: likely (range)";
    let mut holds = Table::new("holds", caption, HEADS, &[YOUNG, HUR, JUDGED]);
    for hold in Hold::ALL {
        let mut cells = vec![hold.named().noun.to_owned()];
        cells.extend([Gloves::None, Gloves::Slick, Gloves::Rubbered].map(|gloves| range(hold.over_grip(gloves), 1.0)));
        holds = holds.row(cells, &[]);
    }
    Chapter::new(
        "hands",
        "What hands hold",
        "Hands and arms tire apart, and the tighter one decides. Nobody has published what a hand holds on bare rope.",
        vec![
            formula("hold-with-gloves", "What a hand holds on bare rope, in a smooth glove, over its grip")
                .words("Along a rope friction holds, so what is held is in proportion to friction; on bare rope never more than the grip itself.")
                .symbols(RATIO, "k = min(k₀ × μ / μ₀, 1)")
                .term("k", "held over grip", RATIO)
                .figure("k₀", "bare hand on bare rope", Hold::BareRope.over_grip(Gloves::None), RATIO, &[JUDGED])
                .figure("μ", "friction of a smooth glove", one(Gloves::Slick.friction()), RATIO, &[HUR])
                .figure("μ₀", "friction of a bare hand", one(Gloves::None.friction()), RATIO, &[HUR])
                .figure("", "friction of a rubbered glove", one(Gloves::Rubbered.friction()), RATIO, &[HUR])
                .from(&[JUDGED])
                .used("Hands on the climb, and the hand below a brake.")
                .example(&[], |_| Hold::BareRope.over_grip(Gloves::Slick).likely),
            formula("hold-by-grip", "What two hands hold on bare rope, by their grip")
                .words("The grip of the hands that pull, times what a hand holds of it. Hands that take turns: the weaker one’s.")
                .symbols(N, "H = (l + r) × k")
                .term("H", "what the hands hold", N)
                .term("l", "grip of the left hand", N)
                .term("r", "grip of the right hand", N)
                .figure("k", "bare hand on bare rope", Hold::BareRope.over_grip(Gloves::None), RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("Hands, where a grip is known.")
                .example(&[("l", 350.0), ("r", 390.0)], |x| {
                    let over = Hold::BareRope.over_grip(Gloves::None).likely;
                    held_by(Arms::Two, over, Grip::of(Some(x.of("l")), Some(x.of("r"))), None, 1.0).unwrap_or(f64::NAN)
                }),
            formula("hold-by-proof", "What the hands hold, because a measured pull went through them")
                .words("What went through the hands then they can hold now, as much more or less as what they hold now is better or worse. The greater of this and the grip’s counts. A loop round the hand proves only itself.")
                .symbols(N, "H = F × k / k₀")
                .term("H", "what the hands hold", N)
                .term("F", "the pull that was measured, with as many hands", N)
                .figure("k", "now: bare rope", Hold::BareRope.over_grip(Gloves::None), RATIO, &[JUDGED])
                .figure("k₀", "then: a handle across", Hold::CrossHandle.over_grip(Gloves::None), RATIO, &[YOUNG])
                .from(&[GEOMETRY])
                .used("Hands, where a pull or a trial was measured.")
                .example(&[("F", 500.0)], |x| {
                    let [now, then] = [Hold::BareRope, Hold::CrossHandle].map(|hold| hold.over_grip(Gloves::None).likely);
                    held_by(Arms::Two, now, None, Some((x.of("F"), Arms::Two)), then).unwrap_or(f64::NAN)
                }),
            formula("grip-from-pull", "Grip of both hands, where only a pull is known")
                .words("The other way round from a pull that is guessed by a grip. A pull that was measured proves only what was held then; taking that proof for the limit would turn strong hands away.")
                .symbols(N, "G = P / r")
                .term("G", "grip of both hands, added", N)
                .term("P", "pull of two arms", N)
                .figure("r", "pull over grip", PULL_OVER_GRIP, RATIO, &[JUDGED])
                .from(&[JUDGED])
                .used("Hands, where a grip was not entered; an entered grip replaces it.")
                .example(&[("P", 500.0)], |x| Grip::reckoned(x.of("P"), PULL_OVER_GRIP.likely).used(Arms::Two)),
        ],
    )
    .table(holds)
}
