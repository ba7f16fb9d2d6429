//! What going on to the height takes, pull after pull.

use super::Plan;
use super::cycle::Cycle;
use super::strength::power;
use super::things::{TIRES, UNKNOWN, drawn};
use crate::chance::Pick;
use crate::climber::{KEPT_UP_FOR, LONGEST_REST, MOVING, Tiring, shortest_rest, strength_for};

/// What all pulls together take of somebody, over what they have. Endless where the time leaves no room for so many pulls,
/// and unknown where a share or the count of pulls is.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Lasting {
    /// The shortest rest after each pull with which arms and hands last, in seconds, and at least so many that the upper
    /// hitch takes; endless where no rest is long enough.
    pub(super) rest: f64,
    /// What the arms need for all pulls in the time allowed, over what they give.
    pub(super) arms: f64,
    /// The same of the hands.
    pub(super) hands: f64,
    /// The power it takes to come to the height in the time allowed, in watts.
    pub(super) power_needed: f64,
    /// The power that the arms keep up.
    pub(super) power: f64,
    /// Whether the pulls take longer than the time allowed, without any rest.
    pub(super) slow: bool,
}

impl Lasting {
    /// From the share of arms and of hands that a pull takes, the number of pulls and the work of them all.
    pub(super) fn of(plan: &Plan, pick: &dyn Pick, shares: [f64; 2], cycle: &Cycle, pulls: f64, work: f64) -> Self {
        let [arms, hands] = shares;
        if arms.is_nan() || hands.is_nan() || pulls.is_nan() {
            return Self {
                rest: UNKNOWN,
                arms: UNKNOWN,
                hands: UNKNOWN,
                power_needed: UNKNOWN,
                power: UNKNOWN,
                slow: false,
            };
        }
        let faster = drawn(pick, TIRES, &MOVING);
        let pull = cycle.pull;
        let left = plan.time_allowed / pulls - pull;
        // Of no pulls, or hardly one, the time is no bound.
        let most = if left < LONGEST_REST { left } else { LONGEST_REST };
        let slow = left < cycle.reset;
        let mut rest = cycle.reset;
        let mut takes = [f64::INFINITY; 2];
        for ((takes, muscles), share) in takes.iter_mut().zip([Tiring::ELBOW, Tiring::HAND]).zip(shares) {
            let muscles = muscles.faster(faster);
            if pulls.is_infinite() {
                rest = f64::INFINITY;
            } else if share * strength_for(muscles, pull, rest, pulls) > 1.0 {
                rest = shortest_rest(muscles, share, pull, pulls).unwrap_or(f64::INFINITY);
            }
            if !slow {
                *takes = share * strength_for(muscles, pull, most, pulls);
            }
        }
        let [arms, hands] = takes;
        let power = power(plan, pick).unwrap_or(UNKNOWN);
        // No faster than the arms' power allows; unknown power bounds nothing.
        rest = rest.max(work / pulls / power - pull);
        // What is kept up for half an hour is not kept up for longer.
        let power_needed = work / plan.time_allowed.min(KEPT_UP_FOR);
        Self { rest, arms, hands, power_needed, power, slow }
    }
}
