//! Hitches and cord.

use super::formula::formula;
use super::table::{digits, ids};
use super::unit::{COUNT, KN, M, MM, RATIO, one, usual};
use super::{Chapter, Table};
use crate::cord::{CordUse, DRESSED, FITTED, HAND_END, KNOTTED, LEFT, Make, Wanted, barrel, eye, shortest_tail};
use crate::field::Spread;
use crate::gear::{Ends, Fibre, Knot, LEAST_LIFE_CORD, cord_minimum, loop_strength};
use crate::hitch::{CONNECTOR_STOCK, HITCH_DRAG, Lay, PRUSIK, SETBACK, coil, girth};
use crate::quantity::{Force, Length};
use crate::question::cut_length::{LEAST_DIFFERENCE, LEAST_LINE, RATIO as CORD_OVER_ROPE};
use crate::source::{
    AFAG401, CALIFORNIA, COMMON_PRACTICE, CORD_MEMORY, EN_564, EVANS, GEOMETRY, HITCH_PAGES, HITCH_SLIP, JUDGED,
    KNOT_PAGES, KNOT_STRENGTH, MOUNTAIN_PAGES, MOYER,
};

fn patterns() -> Table {
    const HEADS: &[&str] = &[
        "cord for",
        "coils",
        "strands of a coil",
        "how they lie",
        "crossings × strands",
        "bound in, m",
        "legs",
        "eyes",
        "hangs free, m",
        "usual ends",
        "sources",
    ];
    let caption = "How every hitch and sling is laid, unless you say otherwise; without coils the last length is the finished one";
    let mut table = Table::new("patterns", caption, HEADS, &[]);
    for cord_use in CordUse::ALL {
        let pattern = cord_use.pattern();
        let lay = match pattern.lay {
            Lay::Single => "one round and round",
            Lay::Mirrored => "one up and one down",
            Lay::Double => "side by side",
        };
        let coils = pattern.coils.map_or("say yours".to_owned(), |coils| coils.to_string());
        let coiled = pattern.coils != Some(0);
        let cells = vec![
            cord_use.named().noun.to_owned(),
            coils,
            if coiled { pattern.lay.strands().to_string() } else { String::new() },
            if coiled { lay } else { "" }.to_owned(),
            if pattern.crossings == 0 {
                "0".to_owned()
            } else {
                format!("{} × {}", pattern.crossings, pattern.crossing)
            },
            digits(pattern.beside),
            pattern.legs.to_string(),
            pattern.eyes.to_string(),
            digits(pattern.usual),
            pattern.ends.first().map_or("", |ends| ends.named().noun).to_owned(),
            ids(pattern.sources),
        ];
        table = table.row(cells, pattern.sources);
    }
    table
}

pub(super) fn chapter() -> Chapter {
    Chapter::new(
        "hitch",
        "Hitches and cord",
        "There is no formula for a hitch. A hitch is data: coils, how their strands lie, crossings, legs, ends. One model lays them all: coils round the rope, crossings of half a round, legs, eyes, knots of so many laps, and tails.",
        vec![
            formula("coil", "Cord in one coil")
                .words("Once round on the middle of the cord, and one diameter along: coils lie close, and a helix unrolled is the long side of a triangle.")
                .symbols(M, "C = √((π × (D + d)) ^ 2 + d ^ 2)")
                .term("C", "cord in a coil", M)
                .term("D", "diameter of the rope", M)
                .term("d", "diameter of the cord", M)
                .from(&[GEOMETRY])
                .used("Every hitch.")
                .example(&[("D", 0.011), ("d", 0.006)], |x| coil(girth(x.of("D"), 0.0, x.of("d")), x.of("d"))),
            formula("girth-with-a-bar", "Once round a rope with a carabiner’s back beside it")
                .words("Half a circle round each, and straight across between them.")
                .symbols(M, "g = π × ((D + b) / 2 + d) + D + b")
                .term("g", "once round", M)
                .term("D", "diameter of the rope", M)
                .term("b", "thickness of the bar", M)
                .term("d", "diameter of the cord", M)
                .from(&[GEOMETRY])
                .used("The Bachmann.")
                .example(&[("D", 0.011), ("b", 0.012), ("d", 0.006)], |x| girth(x.of("D"), x.of("b"), x.of("d"))),
            formula("barrel", "Cord in a barrel of so many laps")
                .words("Each lap a coil on the cord itself; the way back as long as the laps are wide, and a diameter in and out. A double fisherman’s is two barrels of two laps, a scaffold one of three, a stopper one of two.")
                .symbols(M, "B = n × √((π × (d + d)) ^ 2 + d ^ 2) + (n + 2) × d")
                .term("B", "cord in the barrel, without its tail", M)
                .term("n", "laps", COUNT)
                .term("d", "diameter of the cord", M)
                .from(&[GEOMETRY, KNOT_PAGES])
                .used("Every knot. With tails a double fisherman’s on 6 mm comes to the 67 diameters that are published.")
                .example(&[("n", 2.0), ("d", 0.006)], |x| barrel(x.of("n"), x.of("d"))),
            formula("eye", "Cord in an eye drawn tight on a connector")
                .words("Once round its metal.")
                .symbols(M, "y = π × (b + d)")
                .term("y", "cord in the eye", M)
                .figure("b", "thickness of a connector’s metal", one(CONNECTOR_STOCK), M, &[JUDGED])
                .term("d", "diameter of the cord", M)
                .from(&[GEOMETRY])
                .used("Ends with eyes.")
                .example(&[("d", 0.008)], |x| eye(x.of("d"))),
            formula("tail", "Shortest tail of a knot")
                .words("Ten diameters, and at least ten centimetres.")
                .symbols(M, "t = max(10 × d, 0.10)")
                .term("t", "tail", M)
                .term("d", "diameter of the cord", M)
                .from(&[KNOT_PAGES])
                .used("Every knot.")
                .example(&[("d", 0.012)], |x| shortest_tail(x.of("d"))),
            formula("cut", "Cut length, here of a prusik loop")
                .words("All pieces together: coils, the crossing, legs, two barrels and two tails.")
                .symbols(M, "B = 2 × √((π × (d + d)) ^ 2 + d ^ 2) + 4 × d\nt = max(10 × d, 0.10)\nL = 2 × n × √((π × (D + d)) ^ 2 + d ^ 2) + π × (D + d) / 2 + f + 2 × B + 2 × t")
                .term("L", "cut length", M)
                .term("n", "wraps", COUNT)
                .term("D", "diameter of the rope", M)
                .term("d", "diameter of the cord", M)
                .figure("f", "hangs free, both legs together", one(PRUSIK.usual), M, PRUSIK.sources)
                .figure("", "coils and crossings over what they take drawn close", DRESSED, RATIO, &[JUDGED])
                .figure("", "knots and eyes over what their geometry says", KNOTTED, RATIO, &[JUDGED])
                .figure("", "tails over the shortest", LEFT, RATIO, &[JUDGED])
                .figure("", "what is still not sure once your own way of tying is known", FITTED, RATIO, &[JUDGED])
                .figure("", "of a haul cord, hangs from the last turn for the hand", HAND_END, M, &[JUDGED])
                .from(&[GEOMETRY, EVANS])
                .used("What length of cord? The published loops of 6 and 7 mm on 11 mm rope, 0.91 and 1.04 m, come out within 3 %.")
                .example(&[("n", 3.0), ("D", 0.011), ("d", 0.006)], |x| {
                    let make = Make {
                        pattern: &PRUSIK,
                        ends: Ends::Loop,
                        rope: x.of("D"),
                        cord: x.of("d"),
                        coils: x.of("n"),
                        crossings: 1.0,
                        hand_end: Spread::point(0.0),
                        fit: None,
                        working_end: None,
                    };
                    make.cut(Wanted::Legs(Spread::point(PRUSIK.usual))).map_or(f64::NAN, |cut| cut.total.likely)
                }),
            formula("cord-minimum", "What accessory cord of 4 to 8 mm bears at least, straight")
                .words("A fifth of a kilonewton for each square millimetre of diameter squared.")
                .symbols(KN, "F = 0.2 × d ^ 2")
                .term("F", "strength", KN)
                .term("d", "diameter", MM)
                .from(&[EN_564])
                .used("Strength of hitches and slings where no label was read.")
                .example(&[("d", 6.0)], |x| {
                    cord_minimum(Length::millimetres(x.of("d"))).map_or(f64::NAN, Force::in_kilonewtons)
                }),
            formula("loop-strength", "What a loop, or a hitch with both legs on one connector, bears")
                .words("Two strands, each of what its knots leave of the cord. Coils share unequally and are not reckoned.")
                .symbols(KN, "S = 2 × k × F")
                .term("S", "strength as tied", KN)
                .figure("k", "kept in a knot, nylon", Knot::Any.kept(Fibre::Nylon), RATIO, &[KNOT_STRENGTH])
                .term("F", "strength of the cord, straight", KN)
                .from(&[GEOMETRY, MOYER])
                .used("What each part carries; what length of cord.")
                .example(&[("F", 7.2)], |x| {
                    loop_strength(Force::kilonewtons(x.of("F")), Knot::Any, Fibre::Nylon).in_kilonewtons()
                }),
            formula("sliding-hitch", "What a hitch drags and gives back")
                .words("Nobody published either.")
                .figure("", "tension kept past it while it slides", usual(&HITCH_DRAG.row), RATIO, &[JUDGED])
                .figure("", "height it gives back when it takes the load", usual(&SETBACK.row), M, &[JUDGED, COMMON_PRACTICE])
                .from(&[JUDGED])
                .used("Advantage and stroke."),
            formula("cord-rules", "Thresholds of the cautions about cord")
                .words("Two rules for two uses: a cord that one lives on, and mountaineers’ backup loops of 5 to 7 mm, at most half the rope. The answer says which.")
                .figure("", "thinnest cord that a life hangs on", one(LEAST_LIFE_CORD.in_metres()), MM, &[AFAG401])
                .figure("", "thinnest climbing line", one(LEAST_LINE), MM, &[CALIFORNIA, AFAG401])
                .figure("", "thinner than the rope by at least", one(LEAST_DIFFERENCE), MM, &[MOUNTAIN_PAGES])
                .figure("", "cord over rope, at least", one(CORD_OVER_ROPE[0]), RATIO, &[CORD_MEMORY])
                .figure("", "cord over rope, at most", one(CORD_OVER_ROPE[1]), RATIO, &[CORD_MEMORY])
                .from(&[AFAG401, MOUNTAIN_PAGES])
                .used("Cautions of What length of cord? and of the way down."),
        ],
    )
    .table(patterns())
    .note(
        "a hitch is no fuse",
        "An 8 mm prusik of three wraps on half-inch rope began to slip at 7 to 9.5 kN; tree climbing hitches held up to 18.7 kN with at most 9.6 cm of slip. One incident slid and melted near 300 lbf. No slip is counted on.",
        &[HITCH_SLIP],
    )
    .note(
        "counts of coils",
        "Prusik of 3 wraps, klemheist of 3 to 5, Bachmann and autoblock of 4 were tested; Schwabisch and Blake’s hitch are read or quoted from tree climbing manuals; the others are from memory, and an upper hitch that opens is laid so as to agree with common practice.",
        &[MOYER, HITCH_PAGES, CORD_MEMORY, COMMON_PRACTICE],
    )
}
