//! How far people reach, sitting: ANSUR II.

use super::rows::number;
use super::squares::least_squares;
use super::{prints, rows};
use boughline::climber::{TO_CHEST, reach};

/// A soldier, in millimetres.
struct Soldier {
    is_man: bool,
    stature: f64,
    /// Overhead grip above the seat: fingertips, less the hand's part beyond the grip.
    overhead: f64,
    to_lap: f64,
    to_chest: f64,
}

fn soldiers() -> Vec<Soldier> {
    let head = "sex,stature,sittingheight,overheadfingertipreachsitting,forearmhandlength,forearmcenterofgriplength,chestheight,thighclearance";
    rows(include_str!("../data/people/ansur2_reach_micro_mm.csv"), head, ',')
        .into_iter()
        .map(|row| {
            let millimetres: Vec<f64> = row[1..].iter().map(|cell| number(cell)).collect();
            let &[stature, sitting, fingertips, to_fingertips, to_grip, chest, thigh] = millimetres.as_slice() else {
                panic!("eight columns: {row:?}")
            };
            let overhead = fingertips - to_fingertips + to_grip;
            // The chest is measured from the floor, standing.
            let to_chest = overhead - (chest - (stature - sitting));
            Soldier { is_man: row[0] == "M", stature, overhead, to_lap: overhead - thigh, to_chest }
        })
        .collect()
}

#[test]
fn men_of_1750_mm_reach_what_is_printed() {
    let men: Vec<Soldier> =
        soldiers().into_iter().filter(|soldier| soldier.is_man && (soldier.stature - 1750.0).abs() <= 25.0).collect();
    assert_eq!(men.len(), 1186);
    let mean = |figure: fn(&Soldier) -> f64| men.iter().map(figure).sum::<f64>() / men.len() as f64;
    assert!(prints(mean(|man| man.overhead), "1292"));
    assert!(prints(mean(|man| man.to_lap), "1112"));
    assert!(prints(mean(|man| man.to_chest), "841"));
}

/// Of both sexes together.
#[test]
fn the_lines_of_reach_are_the_least_squares_of_the_survey() {
    let soldiers = soldiers();
    assert_eq!(soldiers.len(), 6068);
    let fit = |figure: fn(&Soldier) -> f64| {
        let observed: Vec<_> = soldiers.iter().map(|soldier| ([1.0, soldier.stature], figure(soldier), 1.0)).collect();
        least_squares(&observed)
    };
    let ([chest, chest_slope], chest_left) = fit(|soldier| soldier.to_chest);
    assert!(prints(chest_slope, "0.4802") && prints(chest, "1.2") && prints(chest_left, "46"));
    let ([lap, lap_slope], lap_left) = fit(|soldier| soldier.to_lap);
    assert!(prints(lap_slope, "0.6940") && prints(lap, "-106.1") && prints(lap_left, "41"));

    // The shipped lines are these, in metres.
    assert!(prints(TO_CHEST.0, "0.4802") && prints(TO_CHEST.1 * 1000.0, "1.2"));
    let (at, taller, off) = (reach(1.0, 0.0), reach(2.0, 0.0), reach(1.0, 1.0));
    assert!(prints(taller.to_chest - at.to_chest, "0.4802") && prints(taller.to_lap - at.to_lap, "0.6940"));
    assert!(prints((at.to_lap - (taller.to_lap - at.to_lap)) * 1000.0, "-106.1"));
    assert!(prints((off.to_chest - at.to_chest) * 1000.0, "46") && prints((off.to_lap - at.to_lap) * 1000.0, "41"));
}

#[test]
fn the_shortest_twentieth_pull_what_is_printed() {
    for (is_man, printed) in [(true, 744.0), (false, 698.0)] {
        let mut strokes: Vec<f64> =
            soldiers().into_iter().filter(|soldier| soldier.is_man == is_man).map(|soldier| soldier.to_chest).collect();
        strokes.sort_by(f64::total_cmp);
        let fifth = strokes[(strokes.len() * 5).div_ceil(100) - 1];
        assert_eq!(fifth.to_bits(), f64::to_bits(printed));
    }
}
