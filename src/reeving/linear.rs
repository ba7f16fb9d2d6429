//! Elimination: the solver of motion and forces, and the rows that the held test works on.

use super::Number;

/// Equations: a row holds the coefficient of each unknown, then the right-hand side.
#[derive(Debug, Clone)]
pub(super) struct Equations<N> {
    pub(super) unknowns: usize,
    count: usize,
    cells: Vec<N>,
}

impl<N: Number> Equations<N> {
    /// No equations yet.
    pub(super) fn new(unknowns: usize) -> Self {
        Self { unknowns, count: 0, cells: Vec::new() }
    }

    /// Adds an equation. What is missing counts as nought, what is too much is left out.
    pub(super) fn push(&mut self, coefficients: &[N], right: N) {
        self.cells.reserve(self.width());
        for unknown in 0..self.unknowns {
            self.cells.push(coefficients.get(unknown).copied().unwrap_or(N::ZERO));
        }
        self.cells.push(right);
        self.count += 1;
    }

    fn width(&self) -> usize {
        self.unknowns + 1
    }

    pub(super) fn count(&self) -> usize {
        self.count
    }

    #[inline(never)]
    pub(super) fn at(&self, row: usize, column: usize) -> N {
        self.cells.get(row * self.width() + column).copied().unwrap_or(N::ZERO)
    }

    #[inline(never)]
    fn set(&mut self, row: usize, column: usize, to: N) {
        let width = self.width();
        if let Some(cell) = self.cells.get_mut(row * width + column) {
            *cell = to;
        }
    }

    pub(super) fn right(&self, row: usize) -> N {
        self.at(row, self.unknowns)
    }

    fn swap(&mut self, one: usize, other: usize) {
        for column in 0..self.width() {
            let (above, below) = (self.at(one, column), self.at(other, column));
            self.set(one, column, below);
            self.set(other, column, above);
        }
    }

    /// Makes the cell one, by division of its row, and clears its column everywhere else.
    pub(super) fn pivot(&mut self, row: usize, column: usize) {
        let by = self.at(row, column);
        for cell in 0..self.width() {
            self.set(row, cell, self.at(row, cell).over(by));
        }
        for other in 0..self.count {
            let factor = self.at(other, column);
            if other != row {
                for cell in 0..self.width() {
                    self.set(other, cell, self.at(other, cell).minus(factor.times(self.at(row, cell))));
                }
            }
        }
    }
}

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

/// The solution of equations.
///
/// # Guarantees
/// A contradiction is reported before looseness. Equations may outnumber the unknowns if they agree.
pub(super) fn solution<N: Number>(mut equations: Equations<N>) -> Solution<N> {
    let mut order = Vec::with_capacity(equations.count());
    for row in 0..equations.count() {
        order.push(row);
    }
    let mut done = 0;
    let mut loose = None;
    for column in 0..equations.unknowns {
        let mut best = None;
        let mut largest = N::ZERO;
        for row in done..equations.count() {
            let size = equations.at(row, column).size();
            if !size.is_nought() && largest.is_less(size) {
                (best, largest) = (Some(row), size);
            }
        }
        let Some(best) = best else {
            loose = loose.or(Some(column));
            continue;
        };
        equations.swap(done, best);
        exchange(&mut order, done, best);
        equations.pivot(done, column);
        done += 1;
    }
    for row in done..equations.count() {
        if !equations.right(row).is_nought() {
            return Solution::Stuck(order.get(row).copied().unwrap_or(row));
        }
    }
    if let Some(column) = loose {
        return Solution::Loose(column);
    }
    let mut found = Vec::with_capacity(done);
    for row in 0..done {
        found.push(equations.right(row));
    }
    Solution::Unique(found)
}

/// Two places of a list change their contents.
fn exchange(list: &mut [usize], one: usize, other: usize) {
    if let (Some(&first), Some(&second)) = (list.get(one), list.get(other)) {
        for (place, value) in [(one, second), (other, first)] {
            if let Some(place) = list.get_mut(place) {
                *place = value;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::Fraction;
    use super::*;

    fn rows(rows: &[&[i64]]) -> Equations<Fraction> {
        let mut equations = Equations::new(rows[0].len() - 1);
        for row in rows {
            let cells: Vec<Fraction> = row.iter().map(|&v| Fraction::from(v)).collect();
            equations.push(&cells, cells[cells.len() - 1]);
        }
        equations
    }

    #[test]
    fn two_equations_give_exact_fractions() {
        let solved = solution(rows(&[&[2, 1, 3], &[1, -3, 0]]));
        assert_eq!(solved, Solution::Unique(vec![Fraction::new(9, 7).unwrap(), Fraction::new(3, 7).unwrap()]));
    }

    #[test]
    fn a_contradiction_names_its_row_and_a_gap_its_unknown() {
        assert_eq!(solution(rows(&[&[1, 0, 1], &[0, 1, 1], &[0, 0, 3]])), Solution::Stuck(2));
        assert_eq!(solution(rows(&[&[1, 1, 1], &[2, 2, 2]])), Solution::Loose(1));
    }

    #[test]
    fn a_third_row_that_agrees_is_no_contradiction() {
        let solved = solution(rows(&[&[1, 0, 2], &[0, 1, 3], &[1, 1, 5]]));
        assert_eq!(solved, Solution::Unique(vec![Fraction::from(2), Fraction::from(3)]));
    }
}
