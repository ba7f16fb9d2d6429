//! What an ascent comes to: facts, without words.

use super::{Caution, Evidence, Gate, Going, LegClimb, PartFact, Sharper, TakenUp, TopOut, TurnFact, Verdict, WayDown};
use crate::climber::{Arms, Gloves, Hold, Measured, Norm, Posture, ShoulderReach, Training, Trial, Trunk};
use crate::field::{Row, Spread};
use crate::quantity::Mass;
use crate::reeving::{Rig, RigName};
use std::sync::Arc;

/// What has not been entered yet, and caps the verdict.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Missing {
    /// How strong the climber is.
    Strength,
    /// A measured pull: from an injury at the neck nothing is predicted.
    Pull,
    /// What the hands hold: from an injury at the neck only what was measured counts, and a loop proves only itself.
    Hold,
    /// The field that makes sex or age a whole piece of evidence.
    OtherHalf(&'static Row),
    /// What would make part of a trial a whole one.
    RestOfTrial,
    /// How long the climber's pull is.
    Stroke,
    /// Which rig: the usual one stands in for it.
    Rig,
    /// How high the crotch is, of a climb that is to end over an edge.
    Crotch,
    /// How the climber gets down.
    WayDown,
    /// Another way down: from the crotch a rope lets nobody down.
    Lowering,
    /// Who is there.
    SecondPerson,
}

/// The answer. Forces in newtons, lengths in metres, times in seconds.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// Which rig.
    pub rig_name: RigName,
    /// The rig.
    pub rig: Arc<Rig>,
    /// Whether a helper on the ground pulls.
    pub hauled: bool,
    /// Whether load passes a hitch while it slides, so that its drag counts.
    pub drags: bool,
    /// The grip of both hands that the pull of the arms is foretold from, likely, in newtons; of arms that take turns
    /// twice the weaker hand's.
    pub grip: Option<f64>,
    /// How many hands pull at a time.
    pub hands: Arms,
    /// The pull that was measured.
    pub measured: Option<Measured>,
    /// The fields whose defaults the answer rests on.
    pub assumed: Vec<&'static Row>,
    /// What the hands hold.
    pub hold: Hold,
    /// How the climber sits.
    pub posture: Posture,
    /// The turns, in the order of the ropes.
    pub turns: Vec<TurnFact>,
    /// The share kept past the sliding hitch.
    pub drag: Spread,
    /// The weight of the climber and all they carry.
    pub weight: Spread,
    /// Body mass and kit, in kilograms.
    pub mass: Spread,
    /// Load over pull, with losses.
    pub advantage: Spread,
    /// Load over pull, without.
    pub ideal: f64,
    /// The mean share kept at a turn by one's own test.
    pub turn_efficiency: Option<f64>,
    /// The pull that one stroke takes.
    pub need: Spread,
    /// What helpers beside the driving hand lift, where there are any.
    pub helped: Option<Spread>,
    /// What the arms pull through a whole stroke: the climber's, or the helpers' again and again.
    pub arms: Option<Gate>,
    /// What the hands hold.
    pub grasp: Option<Gate>,
    /// What the strength rests on; none where it is not known, or a helper hauls.
    pub evidence: Option<Evidence>,
    /// The pull of the arms to plan on where only sex and age are known: from the 20th percentile of the grip.
    pub planning: Option<f64>,
    /// What the grip that was entered foretells of the arms, where something better decides.
    pub by_grip: Option<Spread>,
    /// Whether the climber's legs do not move, or may not.
    pub hangs_still: bool,
    /// What better evidence would narrow the pull of the arms to.
    pub sharper: Sharper,
    /// What was measured gives, where something better decides.
    pub by_pull: Option<Spread>,
    /// What sex and age foretell of the arms, where something better decides.
    pub by_norm: Option<Spread>,
    /// What is known of the grip from sex and age.
    pub norm: Option<Norm>,
    /// Whether the climber trains pulling.
    pub training: Training,
    /// How far up the climber's arms go, where that is said.
    pub shoulder_reach: Option<ShoulderReach>,
    /// Whether the climber has one arm for it.
    pub one_armed: bool,
    /// What the climber's legs offer beside; none where they offer nothing, or it is not said.
    pub legs: Option<LegClimb>,
    /// Whether the climber's trunk holds them.
    pub trunk: Trunk,
    /// What the hands wear.
    pub gloves: Gloves,
    /// Whether a grip was entered: without one the hands' figure rests on the arms', or on sex and age.
    pub grip_is_entered: bool,
    /// Whether the rope pulled is the climber's own figure.
    pub travel_is_own: bool,
    /// The rope that the hands take in a stroke.
    pub travel: Option<Spread>,
    /// How far the upper hitch can stand above the lower one, where there is one and the reach is known: a stroke gains
    /// no more, however long the pull.
    pub room: Option<Spread>,
    /// The height gained in a stroke.
    pub gain: Option<Spread>,
    /// The height to climb.
    pub height: f64,
    /// What a hitch gives back.
    pub setback: Spread,
    /// How many strokes it is; endless where nothing is gained.
    pub strokes: Option<Spread>,
    /// What the rope gives at the start.
    pub taken_up: TakenUp,
    /// How near the crotch the climber comes.
    pub top: TopOut,
    /// The rope that passes the hands.
    pub rope_handled: Option<Spread>,
    /// The work of one stroke, in joules.
    pub stroke_work: Option<Spread>,
    /// The work of pulling all the rope, in joules.
    pub work: Option<Spread>,
    /// The power of the arms at the cadence that was said, in watts.
    pub power: Option<Spread>,
    /// How fast the climber rises at it, in metres a second.
    pub speed: Option<Spread>,
    /// How long the climb takes at it, in seconds.
    pub climb_time: Option<Spread>,
    /// The time of all strokes without a rest.
    pub time: Option<Spread>,
    /// The rest after each pull with which arms and hands last to the top, in seconds.
    pub rest: Option<Spread>,
    /// The time that the strokes take with those rests.
    pub lasting_time: Option<Spread>,
    /// The power that coming to the height in the time allowed takes, in watts.
    pub power_needed: Option<Spread>,
    /// The power that the arms keep up, in watts.
    pub power_kept_up: Option<Spread>,
    /// From leaving the seat to being back on it, in seconds: the climb with its rests, and the way down at walking pace.
    pub hanging: Option<Spread>,
    /// How long the climb may take, in seconds.
    pub time_allowed: f64,
    /// How the climber comes down.
    pub way_down: Option<WayDown>,
    /// The greatest mass that the labels allow.
    pub rated: Option<Mass>,
    /// What was done at knee height.
    pub trial: Option<Trial>,
    /// The greatest power of the arms that was measured, in watts.
    pub arm_power: Option<f64>,
    /// How the likely climb goes, pull by pull.
    pub going: Option<Going>,
    /// The peak load on the anchor while climbing.
    pub anchor: Spread,
    /// The tension of every strand of every rope while pulling.
    pub tensions: Vec<Vec<Spread>>,
    /// Whose failure drops the climber.
    pub parts: Vec<PartFact>,
    /// What has not been entered yet.
    pub missing: Vec<Missing>,
    /// The verdict; none while the strength is not known.
    pub verdict: Option<Verdict>,
    /// What to be careful about.
    pub cautions: Vec<Caution>,
    /// How many samples it rests on.
    pub samples: u32,
    /// Whether more could change it.
    pub more: bool,
}

impl Answer {
    /// Whether the room above the lap ends a stroke before the pull does.
    #[must_use]
    pub fn room_decides(&self) -> bool {
        let (Some(room), Some(travel)) = (self.room, self.travel) else { return false };
        room.likely < travel.likely / self.ideal
    }
}
