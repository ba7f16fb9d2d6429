//! The simplex method: the least cost at which unknowns, none negative, satisfy equations.

use super::linear::Equations;
use super::{Fraction, Number};

/// Steps after which the method stops where it is (judged: systems of this size take fewer than 50).
const MOST_STEPS: usize = 1000;

/// The least cost of unknowns, none negative, that satisfy every equation; none where no unknowns do.
///
/// Each equation starts with an unknown of its own making; the sum of those is driven to nought, then the cost as low as
/// it goes. A made unknown at nought leaves as soon as it can, so that it never grows again. Bland's rule keeps the
/// method from going round.
///
/// # Guarantees
/// Whether there is a cost is exact, and so are the unknowns that it is found for; the cost itself is in floats. Costs
/// are not negative.
///
/// # Source
/// R. G. Bland, "New finite pivoting rules for the simplex method", *Mathematics of Operations Research* 2(2),
/// 1977 (from memory).
pub(super) fn least_cost(equations: &Equations<Fraction>, costs: &[f64]) -> Option<f64> {
    let (unknowns, count) = (equations.unknowns, equations.count());
    let mut tableau = Equations::new(unknowns);
    for row in 0..count {
        let sign = Fraction::from(if equations.right(row).is_less(Fraction::ZERO) { -1 } else { 1 });
        let mut cells = Vec::new();
        for column in 0..unknowns {
            cells.push(sign.times(equations.at(row, column)));
        }
        tableau.push(&cells, sign.times(equations.right(row)));
    }
    let mut basis = Vec::new();
    for made in unknowns..unknowns + count {
        basis.push(made);
    }
    let mut cost = None;
    for _ in 0..MOST_STEPS {
        // The right-hand side first, which says whether made unknowns are left, then the first column that lowers them,
        // or else the cost.
        let mut entering = None;
        let mut feasible = false;
        for column in (0..=unknowns).rev() {
            let (mut made, mut paid) = (Fraction::ZERO, 0.0);
            for (row, basic) in basis.iter().enumerate() {
                let cell = tableau.at(row, column);
                match costs.get(*basic) {
                    Some(each) => paid += each * cell.in_f64(),
                    None => made = made.plus(cell),
                }
            }
            if column == unknowns {
                feasible = made.is_nought();
                cost = feasible.then_some(paid);
            } else if if feasible { paid - costs.get(column)? > 1e-9 } else { Fraction::ZERO.is_less(made) } {
                entering = Some(column);
            }
        }
        let Some(entering) = entering else { break };
        let mut leaving: Option<(usize, usize, Fraction)> = None;
        for (row, basic) in basis.iter().enumerate() {
            let (step, right) = (tableau.at(row, entering), tableau.right(row));
            let idle = *basic >= unknowns && right.is_nought() && !step.is_nought();
            if idle || Fraction::ZERO.is_less(step) {
                let ratio = right.over(step);
                if leaving
                    .is_none_or(|(_, other, least)| ratio.is_less(least) || *basic < other && !least.is_less(ratio))
                {
                    leaving = Some((row, *basic, ratio));
                }
            }
        }
        let (row, ..) = leaving?;
        tableau.pivot(row, entering);
        if let Some(basic) = basis.get_mut(row) {
            *basic = entering;
        }
    }
    cost
}

#[cfg(test)]
mod tests {
    use super::*;

    fn cost(rows: &[&[i64]], costs: &[f64]) -> Option<f64> {
        let mut equations = Equations::new(costs.len());
        for row in rows {
            let cells: Vec<Fraction> = row.iter().map(|&cell| Fraction::from(cell)).collect();
            equations.push(&cells, cells[costs.len()]);
        }
        least_cost(&equations, costs)
    }

    #[test]
    fn non_negative_unknowns_are_found_and_refused() {
        assert_eq!(cost(&[&[1, -1, 0], &[0, 1, 1]], &[0.0; 2]), Some(0.0));
        assert_eq!(cost(&[&[1, 1, 0], &[0, 1, 1]], &[0.0; 2]), None);
        assert_eq!(cost(&[&[-1, -1, -2]], &[0.0; 2]), Some(0.0));
        assert_eq!(cost(&[&[0, 0, 1]], &[0.0; 2]), None);
    }

    #[test]
    fn the_cheaper_of_two_ways_is_found_whatever_their_order() {
        assert_eq!(cost(&[&[1, 1, 1]], &[2.0, 3.0]), Some(2.0));
        assert_eq!(cost(&[&[1, 1, 1]], &[3.0, 2.0]), Some(2.0));
        assert_eq!(cost(&[&[1, 2, 1]], &[2.0, 3.0]), Some(1.5));
    }

    /// The first two rows say the same, so that one made unknown stays in; it must not pay for the third.
    #[test]
    fn a_row_said_twice_costs_nothing_and_hides_nothing() {
        assert_eq!(cost(&[&[1, -1, 0, 0], &[-1, 1, 0, 0], &[1, 0, 1, 1]], &[1.0, 1.0, 5.0]), Some(2.0));
        assert_eq!(cost(&[&[1, -1, 0, 0], &[-1, 1, 0, 0], &[1, 0, 1, 1]], &[1.0, 1.0, 1.5]), Some(1.5));
    }
}
