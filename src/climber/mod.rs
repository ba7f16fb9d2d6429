//! The climber: what they weigh, what their arms pull, what their hands hold, how far they reach; and who helps.

mod all_day;
mod arms;
mod body;
mod endurance;
mod fastest;
mod gloves;
mod grip;
mod helper;
mod hold;
mod legs;
mod norm;
mod pace;
mod power;
mod pull;
mod seat;
mod shoulder;
mod spell;
mod stroke;
mod survey;
mod tired;
mod training;
mod trial;
mod trunk;

pub use all_day::all_day_share;
pub use arms::Arms;
pub use body::{BODY_MASS, KIT_MASS, STATURE};
pub use endurance::Tiring;
pub use fastest::{EVERY, LongerRest, Pace, Pulls, fastest_pace};
pub use gloves::{GLOVES, Gloves};
pub use grip::{GRIP_LEFT, GRIP_RIGHT, Grip, OTHER_HAND};
pub use helper::HELPER_PULL;
pub use hold::{HOLD, Hold, held_by};
pub(crate) use legs::hangs_still;
pub use legs::{LEGS, Legs, STAIRS, Stairs};
pub use norm::{AGE, Norm, SEX, Sex};
pub use pace::{LONGEST_REST, MOVING, shortest_rest, strength_for};
pub use power::{
    ABLE_POWER, ARM_POWER, KEPT_UP, KEPT_UP_FOR, PARAPLEGIC_POWER, PEAK_OVER_GRIP, TETRAPLEGIC_POWER, USUAL_GRIP,
    peak_power,
};
pub use pull::{
    ANOTHER_DAY, CLIMB_ARMS, MEASURED_PULL, Measured, ONE_ARM, PULL_ARMS, PULL_HELD, PULL_TAKEN, PullTaken, for_arms,
};
pub use seat::{SEAT_BELOW, SEAT_HEIGHT};
pub use shoulder::{SHOULDER_REACH, ShoulderReach};
pub(crate) use spell::Spell;
pub use stroke::{
    CADENCE, EXTRA_PAIR, HAND_TRAVEL, POSTURE, PULL_TIME, Posture, RESET_TIME, Reach, STACK_LENGTH, TO_CHEST, TO_LAP,
    reach, share_used,
};
pub use survey::{
    AGE_BANDS, AgeBand, DEVIATIONS, FEMALE_LINE, HEAVIEST, LEAST_GRIP, Line, MALE_LINE, OLDEST, TWENTIETH,
};
pub use tired::Tired;
pub use training::{PREDICTION_ERROR, PULL_OVER_GRIP, TRAINED_PULL_OVER_GRIP, TRAINING, Training, predicted_pull};
pub use trial::{SURE_OF, TRIAL_HEIGHT, TRIAL_MORE, TRIAL_STROKES, TRIAL_TIME, Trial};
pub use trunk::{TRUNK, Trunk};
