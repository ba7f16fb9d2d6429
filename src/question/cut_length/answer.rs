//! What the question answers: facts, without words.

use crate::cord::{Asked, CordUse, Cut, Make};
use crate::field::{Row, Spread};
use crate::gear::Fibre;
use crate::quantity::Force;

/// Something to be careful about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Caution {
    /// This is arithmetic, not training.
    Arithmetic,
    /// A hitch is set, dressed and tested low down.
    SetDressTest,
    /// The cord is too thick for the rope: the share of the rope's diameter.
    TooThick(f64),
    /// The cord is thin for the rope: the share of the rope's diameter.
    TooThin(f64),
    /// Thinner than a hitch one lives on may be.
    ThinLifeCord,
    /// The rope is thinner than a climbing line may be.
    ThinRope,
    /// The fibre melts where it rubs.
    Melts(Fibre),
    /// The fibre is stiff, and weak where it is bent.
    Stiff,
    /// It bears less than a jerky climb can ask of it.
    Weak,
    /// Nobody sets a least strength for it.
    NoStandard,
    /// No life hangs on it.
    NoLifeLine,
    /// More coils on thin or slick rope.
    Coils,
    /// Cut the longer figure and trim it.
    TrimLater,
    /// With this working end its legs are not alike.
    UnlikeLegs,
    /// With sewn eyes the maker's instructions hold.
    SewnEyes,
}

/// The answer. Lengths in metres.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// What the cord is for.
    pub cord_use: CordUse,
    /// What was asked.
    pub asked: Asked,
    /// What it is made for.
    pub make: Make,
    /// Its pieces.
    pub cut: Cut,
    /// A loop's inside length, or what is between its ends.
    pub finished: Spread,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// Those whose usual values depend on what the cord is for.
    pub usual: Vec<&'static Row>,
    /// The strands of the rig's haul cord and how long each is; none of other cords, or where its length was said.
    pub strands: Option<(u32, Spread)>,
    /// What it is made of.
    pub fibre: Fibre,
    /// What the cord bears straight; none where nobody says.
    pub straight: Option<Force>,
    /// What it bears as it is tied, in newtons.
    pub strength: Option<Spread>,
    /// The weight on it with everything hanging still, in newtons; none where no body mass was said.
    pub weight: Option<Spread>,
    /// The same with the jerks of a climb.
    pub peak: Option<Spread>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
}
