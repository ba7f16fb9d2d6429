//! The climber: what they weigh, what their arms pull, what their hands hold, how far they reach.

mod arms;
mod body;
mod hold;
mod pull;
mod stroke;

pub use arms::Arms;
pub use body::{BODY_MASS, KIT_MASS, STATURE};
pub use hold::{GRIP_LEFT, GRIP_RIGHT, Grip, HOLD, Hold, OTHER_HAND, PULL_OVER_GRIP, held_by};
pub use pull::{
    ANOTHER_DAY, CLIMB_ARMS, MEASURED_PULL, Measured, ONE_ARM, PULL_ARMS, PULL_HELD, PULL_TAKEN, PullTaken, for_arms,
};
pub use stroke::{
    HAND_TRAVEL, POSTURE, PULL_TIME, Posture, RESET_TIME, Reach, STACK_LENGTH, TO_CHEST, reach, share_used,
};
