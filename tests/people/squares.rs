//! Weighted least squares by the normal equations.

/// One observation: what is multiplied by coefficients, what should come out, how much it counts.
pub(crate) type Observed<const N: usize> = ([f64; N], f64, f64);

/// The coefficients of least squares, and the weighted standard deviation of what is left.
pub(crate) fn least_squares<const N: usize>(observed: &[Observed<N>]) -> ([f64; N], f64) {
    let mut equations = [[0.0; N]; N];
    let mut right = [0.0; N];
    for (x, y, weight) in observed {
        for i in 0..N {
            right[i] += weight * x[i] * y;
            for j in 0..N {
                equations[i][j] += weight * x[i] * x[j];
            }
        }
    }
    let found = solved(equations, right);
    let (mut squares, mut weights) = (0.0, 0.0);
    for (x, y, weight) in observed {
        let fitted: f64 = x.iter().zip(found).map(|(x, coefficient)| x * coefficient).sum();
        squares += weight * (y - fitted) * (y - fitted);
        weights += weight;
    }
    (found, (squares / weights).sqrt())
}

/// Elimination with the greatest pivot, then back.
fn solved<const N: usize>(mut a: [[f64; N]; N], mut b: [f64; N]) -> [f64; N] {
    for at in 0..N {
        let pivot = (at..N).max_by(|i, j| a[*i][at].abs().total_cmp(&a[*j][at].abs())).expect("at least one row");
        a.swap(at, pivot);
        b.swap(at, pivot);
        for row in at + 1..N {
            let (above, times) = (a[at], a[row][at] / a[at][at]);
            for (cell, above) in a[row].iter_mut().zip(above) {
                *cell -= times * above;
            }
            b[row] -= times * b[at];
        }
    }
    let mut x = [0.0; N];
    for at in (0..N).rev() {
        let known: f64 = (at + 1..N).map(|column| a[at][column] * x[column]).sum();
        x[at] = (b[at] - known) / a[at][at];
    }
    x
}

/// y = 3 + 2x through (0, 3), (1, 5), (2, 7); the point off it that counts nothing changes nothing.
#[test]
fn a_line_through_its_points_is_found_again() {
    let ([constant, slope], left) = least_squares(&[
        ([1.0, 0.0], 3.0, 1.0),
        ([1.0, 1.0], 5.0, 2.0),
        ([1.0, 2.0], 7.0, 1.0),
        ([1.0, 5.0], 0.0, 0.0),
    ]);
    assert!((constant - 3.0).abs() < 1e-12 && (slope - 2.0).abs() < 1e-12 && left < 1e-7);
}

/// (0, 0), (1, 3), (2, 0) have the level line at 1, and 1, 2 and 1 left over: the root of (1 + 4 + 1) / 3.
#[test]
fn what_is_left_over_has_its_deviation() {
    let ([constant, slope], left) =
        least_squares(&[([1.0, 0.0], 0.0, 1.0), ([1.0, 1.0], 3.0, 1.0), ([1.0, 2.0], 0.0, 1.0)]);
    assert!((constant - 1.0).abs() < 1e-12 && slope.abs() < 1e-12 && (left - 2.0_f64.sqrt()).abs() < 1e-12);
}
