//! Elimination: the one solver that motion, forces and the held test share.

use super::Number;

/// What a system of linear equations comes to.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Solution<N> {
    /// Exactly one value for each unknown.
    Unique(Vec<N>),
    /// This unknown may be anything.
    Loose(usize),
    /// This equation contradicts the others.
    Stuck(usize),
}

/// The solution of `unknowns` unknowns, each row holding their coefficients and then the right-hand side.
///
/// # Guarantees
/// A contradiction is reported before looseness. Rows may outnumber the unknowns if they agree.
#[expect(clippy::indexing_slicing, reason = "every row is `unknowns + 1` wide and rows are counted here")]
pub(super) fn solution<N: Number>(rows: Vec<Vec<N>>, unknowns: usize) -> Solution<N> {
    debug_assert!(rows.iter().all(|row| row.len() == unknowns + 1));
    let mut rows: Vec<(usize, Vec<N>)> = rows.into_iter().enumerate().collect();
    let mut pivots = Vec::new();
    for column in 0..unknowns {
        let done = pivots.len();
        let Some(best) = largest(&rows, done, column) else { continue };
        rows.swap(done, best);
        let pivot = rows[done].1[column];
        for value in &mut rows[done].1 {
            *value = *value / pivot;
        }
        let lead = rows[done].1.clone();
        for (at, (_, row)) in rows.iter_mut().enumerate() {
            let factor = row[column];
            if at != done && factor != N::ZERO {
                for (value, from) in row.iter_mut().zip(&lead) {
                    *value = *value - factor * *from;
                }
            }
        }
        pivots.push(column);
    }
    if let Some((row, _)) = rows.iter().skip(pivots.len()).find(|(_, row)| !row[unknowns].is_nought()) {
        return Solution::Stuck(*row);
    }
    match (0..unknowns).find(|column| !pivots.contains(column)) {
        Some(column) => Solution::Loose(column),
        None => Solution::Unique(rows.iter().take(unknowns).map(|(_, row)| row[unknowns]).collect()),
    }
}

/// The row, from `first` on, whose entry in `column` is largest, if any is not nought.
#[expect(clippy::indexing_slicing, reason = "`column` is below the width of every row")]
fn largest<N: Number>(rows: &[(usize, Vec<N>)], first: usize, column: usize) -> Option<usize> {
    let mut best: Option<usize> = None;
    for at in first..rows.len() {
        let size = rows[at].1[column].size();
        if !size.is_nought() && best.is_none_or(|best| size > rows[best].1[column].size()) {
            best = Some(at);
        }
    }
    best
}

/// Whether some set of unknowns, none negative, satisfies every row.
///
/// Phase one of the simplex method with Bland's rule, which cannot cycle.
///
/// # Source
/// R. G. Bland, "New finite pivoting rules for the simplex method", *Mathematics of Operations Research* 2(2),
/// 1977 (from memory).
#[expect(clippy::indexing_slicing, reason = "the tableau is rectangular and its size fixed here")]
pub(super) fn has_non_negative_solution<N: Number>(rows: Vec<Vec<N>>, unknowns: usize) -> bool {
    let count = rows.len();
    // Each row gets an artificial unknown of its own; the sum of those is to be driven to nought.
    let mut tableau: Vec<Vec<N>> = rows
        .into_iter()
        .enumerate()
        .map(|(at, row)| {
            let flip = row[unknowns] < N::ZERO;
            let mut wide: Vec<N> = row[..unknowns].iter().map(|&v| if flip { -v } else { v }).collect();
            wide.extend((0..count).map(|other| if other == at { N::ONE } else { N::ZERO }));
            wide.push(row[unknowns].size());
            wide
        })
        .collect();
    let width = unknowns + count;
    let mut basis: Vec<usize> = (unknowns..width).collect();
    loop {
        let artificial = |at: &usize| basis[*at] >= unknowns;
        let gain = |column: usize| (0..count).filter(artificial).fold(N::ZERO, |sum, at| sum + tableau[at][column]);
        if gain(width).is_nought() {
            return true;
        }
        let entering = (0..unknowns).find(|&column| {
            let gain = gain(column);
            gain > N::ZERO && !gain.is_nought()
        });
        let Some(entering) = entering else { return false };
        let leaving = (0..count).filter(|&at| tableau[at][entering] > N::ZERO).min_by(|&a, &b| {
            let ratio = |at: usize| tableau[at][width] / tableau[at][entering];
            let order = ratio(a).partial_cmp(&ratio(b)).unwrap_or(core::cmp::Ordering::Equal);
            order.then(basis[a].cmp(&basis[b]))
        });
        let Some(leaving) = leaving else { return false };
        let pivot = tableau[leaving][entering];
        for value in &mut tableau[leaving] {
            *value = *value / pivot;
        }
        let lead = tableau[leaving].clone();
        for (_, row) in tableau.iter_mut().enumerate().filter(|(at, _)| *at != leaving) {
            let factor = row[entering];
            for (value, from) in row.iter_mut().zip(&lead) {
                *value = *value - factor * *from;
            }
        }
        basis[leaving] = entering;
    }
}

#[cfg(test)]
mod tests {
    use super::super::Fraction;
    use super::*;

    fn rows(rows: &[&[i64]]) -> Vec<Vec<Fraction>> {
        rows.iter().map(|row| row.iter().map(|&v| Fraction::from(v)).collect()).collect()
    }

    #[test]
    fn two_equations_give_exact_fractions() {
        let solved = solution(rows(&[&[2, 1, 3], &[1, -3, 0]]), 2);
        assert_eq!(solved, Solution::Unique(vec![Fraction::new(9, 7).unwrap(), Fraction::new(3, 7).unwrap()]));
    }

    #[test]
    fn a_contradiction_names_its_row_and_a_gap_its_unknown() {
        assert_eq!(solution(rows(&[&[1, 0, 1], &[0, 1, 1], &[0, 0, 3]]), 2), Solution::Stuck(2));
        assert_eq!(solution(rows(&[&[1, 1, 1], &[2, 2, 2]]), 2), Solution::Loose(1));
    }

    #[test]
    fn a_third_row_that_agrees_is_no_contradiction() {
        let solved = solution(rows(&[&[1, 0, 2], &[0, 1, 3], &[1, 1, 5]]), 2);
        assert_eq!(solved, Solution::Unique(vec![Fraction::from(2), Fraction::from(3)]));
    }

    #[test]
    fn non_negative_solutions_are_found_and_refused() {
        assert!(has_non_negative_solution(rows(&[&[1, -1, 0], &[0, 1, 1]]), 2));
        assert!(!has_non_negative_solution(rows(&[&[1, 1, 0], &[0, 1, 1]]), 2));
        assert!(has_non_negative_solution(rows(&[&[-1, -1, -2]]), 2));
        assert!(!has_non_negative_solution(rows(&[&[0, 0, 1]]), 2));
    }
}
