//! How hot the side of a cord gets that the rope runs past.

use crate::float;
use std::f64::consts::PI;

/// A slab that is heated on one face and loses nothing on the other.
///
/// ```text
///   rope ===>   | q   hot face
///               |:::|
///               |:::|  thickness
///               |:::|   nothing leaves here
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Slab {
    /// In metres.
    pub thickness: f64,
    /// In watts a metre and kelvin.
    pub conductivity: f64,
    /// The heat that warms a cubic metre by a kelvin, in joules.
    pub by_volume: f64,
}

impl Slab {
    /// How much the hot face has warmed after so many seconds of one watt a square metre, in kelvin.
    ///
    /// ```text
    ///   t / (c b)  +  b / k x (1/3 - 2/pi^2 x sum e^(-n^2 pi^2 Fo) / n^2)          Fo = k t / (c b^2)
    ///   2 sqrt(t / (pi k c))                                                        while nothing has come through
    /// ```
    ///
    /// # Source
    /// Geometry: the heat equation of a slab with one face insulated, as in any text on the conduction of heat.
    fn after(&self, seconds: f64) -> f64 {
        if seconds <= 0.0 {
            return 0.0;
        }
        let Self { thickness, conductivity, by_volume } = *self;
        let through = conductivity * seconds / (by_volume * thickness * thickness);
        // Here the two differ by a part in 10^14, so that nothing is hotter for resting longer.
        if through < 0.03 {
            return 2.0 * (seconds / (PI * conductivity * by_volume)).sqrt();
        }
        let mut sum = 0.0;
        for n in 1..13 {
            let square = f64::from(n) * f64::from(n);
            sum += float::exp(-square * PI * PI * through) / square;
        }
        seconds / (by_volume * thickness) + thickness / conductivity * (1.0 / 3.0 - 2.0 / (PI * PI) * sum)
    }
}

/// How much the hot face has warmed at a moment, in kelvin, of a flux that was on from and to these seconds.
///
/// # Units
/// The flux in watts a square metre.
///
/// # Guarantees
/// Never less than what the heat would warm the whole slab by, if it were even. Nothing is lost to the air, which errs
/// on the hot side.
#[must_use]
pub fn skin_rise(slab: &Slab, flux: f64, runs: &[(f64, f64)], at: f64) -> f64 {
    let mut rise = 0.0;
    for (on, off) in runs {
        rise += flux * (slab.after(at - on) - slab.after(at - off.min(at)));
    }
    rise
}

#[cfg(test)]
mod tests {
    use super::*;

    const CORD: Slab = Slab { thickness: 0.0063, conductivity: 0.25, by_volume: 1.304e6 };

    /// The heat equation in one dimension by finite differences, explicit; the hot face is the outer face of cell 0.
    fn solved(slab: &Slab, flux: f64, runs: &[(f64, f64)], until: f64, loss: f64) -> (f64, f64) {
        const CELLS: usize = 200;
        let across = slab.thickness / CELLS as f64;
        let spread = slab.conductivity / slab.by_volume;
        let step = 0.25 * across * across / spread;
        let mut heat = vec![0.0_f64; CELLS];
        let mut time = 0.0;
        let mut on = 0.0;
        while time < until {
            on = if runs.iter().any(|(from, to)| *from <= time && time < *to) { flux } else { 0.0 };
            let before = heat.clone();
            for (at, here) in heat.iter_mut().enumerate() {
                let left = if at == 0 { on / slab.conductivity * across } else { before[at - 1] - before[at] };
                let right = if at + 1 == CELLS {
                    -loss * before[at] / slab.conductivity * across
                } else {
                    before[at + 1] - before[at]
                };
                *here += spread * step / (across * across) * (left + right);
            }
            time += step;
        }
        (heat[0] + on * across / 2.0 / slab.conductivity, heat.iter().sum::<f64>() / CELLS as f64)
    }

    #[test]
    fn the_sum_agrees_with_a_conduction_solve_short_long_and_with_stops() {
        for (runs, at) in [
            (vec![(0.0, 4.0)], 4.0),
            (vec![(0.0, 40.0)], 40.0),
            (vec![(0.0, 400.0)], 400.0),
            (vec![(0.0, 4.0), (9.0, 13.0), (18.0, 22.0)], 22.0),
            (vec![(0.0, 4.0), (9.0, 13.0)], 30.0),
        ] {
            let (face, even) = solved(&CORD, 6000.0, &runs, at, 0.0);
            let found = skin_rise(&CORD, 6000.0, &runs, at);
            assert!((found / face - 1.0).abs() < 0.01, "{runs:?} at {at}: {found} against {face}");
            assert!(found >= even, "{runs:?}");
        }
    }

    /// 12 W a square metre and kelvin: still air. What it takes away in a minute is next to nothing.
    #[test]
    fn air_would_take_away_little_and_never_add() {
        let runs = [(0.0, 40.0)];
        let (kept, _) = solved(&CORD, 6000.0, &runs, 40.0, 0.0);
        let (cooled, _) = solved(&CORD, 6000.0, &runs, 40.0, 12.0);
        assert!(cooled <= kept && cooled > 0.95 * kept, "{cooled} {kept}");
    }

    #[test]
    fn the_two_sums_meet_where_one_takes_over() {
        let meets = 0.03 * CORD.by_volume * CORD.thickness * CORD.thickness / CORD.conductivity;
        let (before, after) = (CORD.after(meets * (1.0 - 1e-15)), CORD.after(meets * (1.0 + 1e-15)));
        assert!((before / after - 1.0).abs() < 1e-13, "{before} {after}");
    }
}
