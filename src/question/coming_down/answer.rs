//! What the answer holds.

use crate::descent::{Brake, NoChangeOver, Step};
use crate::field::{Row, Spread};
use crate::gear::Fibre;

/// The answer. All in SI.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The climber's weight with all they carry.
    pub weight: Spread,
    /// What is added below the hitch.
    pub brake: Brake,
    /// How often the rope goes round it, where that is asked.
    pub turns: f64,
    /// The tension above it over what the hand holds.
    pub ratio: Spread,
    /// Whether that was measured.
    pub is_measured: bool,
    /// What the hand holds to stop, on the least friction; none where nobody goes down on the rig by themselves.
    pub hold: Option<Spread>,
    /// What it holds while the rope runs, on the most friction.
    pub run: Option<Spread>,
    /// What the weaker hand holds on bare rope; none where nothing tells.
    pub hand: Option<Spread>,
    /// The share of that which stopping takes.
    pub hand_share: Option<Spread>,
    /// In how many of the samples the weaker hand holds.
    pub chance: Option<f64>,
    /// How far down.
    pub height: f64,
    /// How fast while they move.
    pub speed: f64,
    /// How far between stops; none: in one go.
    pub stops: Option<f64>,
    /// How long each stop is.
    pub rest: f64,
    /// How long it takes, stops and all.
    pub time: f64,
    /// What it turns into heat.
    pub energy: Spread,
    /// How much of it a second.
    pub power: Spread,
    /// How much the rope warms, were it all there.
    pub rope_rise: f64,
    /// The hitch's cord; none where its diameter is not known.
    pub cord: Option<Cord>,
    /// How fast at the most, and why.
    pub sensible: (f64, Slowest),
    /// The steps of the change-over, or why there are none.
    pub steps: Result<Vec<Step>, NoChangeOver>,
    /// By how much the rope that somebody has ends above the ground, if it does; none where that is not known.
    pub end: Option<Option<Spread>>,
    /// The fields whose defaults it rests on.
    pub assumed: Vec<&'static Row>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
    /// How many samples it rests on.
    pub samples: u32,
    /// Whether more could change it.
    pub more: bool,
}

/// The cord of the hitch, and how hot it gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cord {
    /// Its diameter.
    pub diameter: f64,
    /// How much of it lies on the rope.
    pub length: f64,
    /// What it is made of.
    pub fibre: Fibre,
    /// The share of the heat that stays in it.
    pub share: Spread,
    /// How hot, in degrees Celsius, if the heat spread evenly through it.
    pub even: Spread,
    /// How hot on the side that lies on the rope.
    pub face: Spread,
    /// Where the high end of that stands.
    pub standing: Hot,
}

/// How hot a cord gets.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Hot {
    /// Under where its fibre changes.
    Under,
    /// Likely under it, past it where more of the heat stays in it.
    Perhaps,
    /// Likely past it: the cord is to be given up.
    Changes,
    /// Likely past where it melts or chars.
    Fails,
}

/// What says how fast at the most.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Slowest {
    /// What is sensible on any hitch.
    Sensible,
    /// The heat in its cord.
    Heat,
    /// However slow, the cord gets too hot in one go: stops are needed.
    NeedsStops,
}

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// The climb is higher than the crotch.
    ClimbAboveCrotch,
    /// Try it low down first.
    LowDownFirst,
    /// The hitch alone holds nothing that counts.
    HitchAlone,
    /// The hand may not hold it.
    WeakHand,
    /// Nothing tells what the hand holds.
    UnknownHand,
    /// Gloves slip.
    SlickGloves,
    /// Nothing about friction is sure until it is tried on this rope.
    TestTheBrake,
    /// Faster than is sensible.
    TooFast,
    /// High-modulus polyethylene in a hitch that slides.
    SlipsAndMelts,
    /// A cord thinner than one to live on.
    ThinLifeCord,
    /// The cord gets too hot where more of the heat stays in it than is likely.
    PerhapsHot,
    /// The cord gets too hot.
    HotCord,
    /// The cord melts.
    MeltingCord,
    /// A stopper in the end.
    Stopper,
    /// The rope ends above the ground.
    RopeEndsAbove {
        /// By how much, in metres.
        by: Spread,
    },
    /// Whether the rope reaches the ground is not known.
    UnknownEnd,
    /// Two hitches grabbed together let go together.
    StackedHitches,
    /// Somebody on the ground lets the climber down.
    LetDown,
}
