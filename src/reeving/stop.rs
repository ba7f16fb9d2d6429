//! A stop of a rope: what it does there, and on which body.

use crate::quantity::Length;
use std::borrow::Cow;

/// What people call a part.
pub type Noun = Cow<'static, str>;

/// What a rope does at a stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum What {
    /// The rope is tied here; only at a rope's end.
    Tied,
    /// The rope turns round something; the number counts turns through the rig, ropes in order.
    Turn(usize),
    /// A friction hitch sits on the rope; the number counts hitches through the rig.
    Hitch(usize),
    /// The hand that drives the rig; there is at most one.
    Hand,
    /// A helper's hand pulls here with a given force, towards the loose end; the number counts helpers through the rig.
    Helper(usize),
    /// A stopper knot, which catches once this much rope has run, whichever way.
    Knot(Length),
    /// The rope's loose tail.
    Free,
}

/// One stop of a rope.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// The body it is on, as a place in [`Rig::bodies`](super::Rig::bodies); none for a loose tail.
    pub body: Option<usize>,
    /// What the rope does there.
    pub what: What,
    /// What people call it.
    pub noun: Noun,
    /// Whether it does nothing until what it backs up is gone.
    pub backup: bool,
}

impl Stop {
    fn on(body: usize, what: What, noun: impl Into<Noun>) -> Self {
        Self { body: Some(body), what, noun: noun.into(), backup: false }
    }

    /// The rope's end, tied to a body.
    #[must_use]
    pub fn tied(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Tied, noun)
    }

    /// A turn round a pulley, ring, carabiner or limb on a body.
    #[must_use]
    pub fn turn(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Turn(0), noun)
    }

    /// A friction hitch whose cord is clipped to a body.
    #[must_use]
    pub fn hitch(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Hitch(0), noun)
    }

    /// A second hitch on a body that carries nothing until the first is gone.
    #[must_use]
    pub fn backup_hitch(body: usize, noun: impl Into<Noun>) -> Self {
        Self { backup: true, ..Self::hitch(body, noun) }
    }

    /// The driving hand, of someone who hangs on, or stands on, a body.
    #[must_use]
    pub fn hand(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Hand, noun)
    }

    /// The hand of a helper, who hangs on, or stands on, a body.
    #[must_use]
    pub fn helper(body: usize, noun: impl Into<Noun>) -> Self {
        Self::on(body, What::Helper(0), noun)
    }

    /// A stopper knot that jams at a body once `slack` of rope has run.
    #[must_use]
    pub fn knot(body: usize, slack: Length, noun: impl Into<Noun>) -> Self {
        Self { backup: true, ..Self::on(body, What::Knot(slack), noun) }
    }

    /// Whether there is a part here that can fail.
    #[must_use]
    pub fn can_fail(&self) -> bool {
        !matches!(self.what, What::Hand | What::Helper(_) | What::Free)
    }

    /// The loose tail.
    #[must_use]
    pub fn free() -> Self {
        Self { body: None, what: What::Free, noun: "loose tail".into(), backup: false }
    }
}
