//! The knee-height trial: some strokes on the very rig, low down.

use crate::field::{Field, Kind, Limits, Row, Spread};
use crate::quantity::{CENTIMETRE, Count, Dimension, Duration, INCH, Length, SECOND};

/// What somebody did with the seat at knee height, on the rig and with the hold they will climb with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trial {
    /// The strokes they made.
    pub strokes: f64,
    /// As many more as they are sure they could have made.
    pub more: f64,
    /// From the first to the end of the last, in seconds.
    pub seconds: f64,
    /// The height they gained, in metres.
    pub height: f64,
}

/// The share of the strokes that somebody is sure of, which they would really have made.
///
/// # Source
/// Judged: from half of them to all.
pub const SURE_OF: Spread = Spread::new(0.5, 0.8, 1.0);

impl Trial {
    /// How long a stroke took, with all that lies between it and the next.
    #[must_use]
    pub fn cycle(self) -> f64 {
        self.seconds / self.strokes
    }

    /// What lies between a pull of so many seconds and the next: one time less than there are pulls.
    #[must_use]
    pub fn rest(self, pull: f64) -> f64 {
        ((self.seconds - self.strokes * pull) / (self.strokes - 1.0)).max(0.0)
    }

    /// The height of a stroke.
    #[must_use]
    pub fn gain(self) -> f64 {
        self.height / self.strokes
    }

    /// The strokes that spend what they have, as far as they know.
    #[must_use]
    pub fn to_the_end(self, sure_of: f64) -> f64 {
        self.strokes + self.more * sure_of
    }
}

/// How many strokes were made.
pub static TRIAL_STROKES: Field<Count> = Field::new(Row {
    id: "trialStrokes",
    noun: "strokes in the trial",
    hint: "Ten is a good number. Count from the first stroke that lifts you, on the rig you chose above.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 3.0,
        most: 100.0,
        example: 10.0,
        likely: None,
        bare: None,
    }),
    why: "Fewer than three tell nothing of tiring (judged).",
    private: true,
});

/// How many more there were left.
pub static TRIAL_MORE: Field<Count> = Field::new(Row {
    id: "trialMore",
    noun: "more you are sure of",
    hint: "How many more strokes you could have made at that pace. 0 if you were spent.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Count,
        least: 0.0,
        most: 100.0,
        example: 0.0,
        likely: Some(Spread::point(0.0)),
        bare: None,
    }),
    why: "None is the cautious default; of more than are counted here nobody is sure (judged).",
    private: true,
});

/// How long the strokes took.
pub static TRIAL_TIME: Field<Duration> = Field::new(Row {
    id: "trialTime",
    noun: "time they took",
    hint: "From the first pull to the end of the last, with every rest between.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Duration,
        least: 5.0,
        most: 3600.0,
        example: 90.0,
        likely: None,
        bare: Some([SECOND, SECOND]),
    }),
    why: "Over an hour it is no trial (judged).",
    private: true,
});

/// The height that they gained.
pub static TRIAL_HEIGHT: Field<Length> = Field::new(Row {
    id: "trialHeight",
    noun: "height they gained",
    hint: "How far your seat rose in all of them, once each hitch had taken its load.",
    kind: Kind::Quantity(Limits {
        dimension: Dimension::Length,
        least: 0.05,
        most: 20.0,
        example: 1.5,
        likely: None,
        bare: Some([CENTIMETRE, INCH]),
    }),
    why: "Less is not read off a tape; more is a climb (judged).",
    private: true,
});
