//! The way down: what a hand must hold, what gets hot, and the change from going up to going down, step by step.
//!
//! ```text
//!   crotch     x
//!              |
//!   hitch      #   tended by a hand, and counted as nothing
//!   brake      @   friction added below it
//!   hand       |   holds the weight over the brake's ratio
//!              |
//!   stopper    o   in the rope's end
//! ```

mod brake;
mod change_over;
mod clock;
mod foot;
mod foot_brake;
mod hand;
mod heat;
mod share;
mod skin;
mod speed;
mod stage;
mod step;

pub use brake::{BRAKE, BRAKE_MEASURED, BRAKE_TURNS, Brake, METAL_FRICTION, hand_share};
pub use change_over::{NoChangeOver, TO_THE_KNOT, TO_THE_NEXT, change_over, going_down};
pub use clock::RESCUE_CLOCK;
pub use foot::{Haul, hauls, lowering_share};
pub use foot_brake::{FOOT_BRAKE, FOOT_TURNS, FootBrake};
pub use hand::{Hand, USUAL_HAND};
pub use heat::{AIR, HEAT_SHARE, HEAT_SHARE_ALONE, Heat, REST_EVERY, REST_FOR, SPEED};
pub use share::Kept;
pub use skin::{Slab, skin_rise};
pub use speed::{DEVICE_SPEED, SENSIBLE_SPEED};
pub use stage::{RESCUER_SPEED, Stage, total};
pub use step::{Attached, Does, Step};
