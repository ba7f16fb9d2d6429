//! What the question reads, checked.

use crate::ascent::{CLIMB_HEIGHT, Reeved, reeved};
use crate::climber::{BODY_MASS, GLOVES, Gloves, KIT_MASS};
use crate::cord::{CORD_USE, HITCH_COILS, HITCH_CROSSINGS};
use crate::descent::{
    BRAKE, BRAKE_MEASURED, BRAKE_TURNS, Brake, HEAT_SHARE, HEAT_SHARE_ALONE, Hand, Heat, REST_EVERY, REST_FOR, SPEED,
};
use crate::draft::{Draft, Reader};
use crate::error::Error;
use crate::field::{Field, Row, Spread};
use crate::gear::{CORD_FIBRE, Fibre, HITCH_CORD, LEAST_LIFE_CORD, ROPE_DIAMETER, TOP_TURN, kept_by};
use crate::quantity::{Count, Mass, Quantity, Ratio};
use crate::question::Question;
use crate::question::fields::reader;
use crate::reeving::{BodyKind, What};
use crate::rope::{
    ADDING_UP, ANCHOR, Anchor, CROTCH_HEIGHT, HITCH_HEIGHT, OVER_CROTCH, ROPE_OWNED, ROPE_TAIL, Sizes, courses,
    ends_above, is_anchored, made_fast_by,
};

/// The inputs of the question. Made only by [`Inputs::of`], so that asking cannot fail.
#[derive(Debug, Clone, PartialEq)]
pub struct Inputs {
    pub(super) body_mass: Mass,
    pub(super) kit_mass: Spread,
    pub(super) height: f64,
    pub(super) rig: Reeved,
    /// What a rope that runs over the crotch keeps there.
    pub(super) top: Spread,
    pub(super) brake: Brake,
    pub(super) turns: f64,
    pub(super) measured: Option<f64>,
    pub(super) hand: Hand,
    pub(super) gloves: Gloves,
    /// None: as fast as the cord bears.
    pub(super) speed: Option<f64>,
    /// The height of the crotch, where it was said.
    pub(super) crotch: Option<f64>,
    pub(super) stops: Option<f64>,
    pub(super) rest: f64,
    pub(super) share: Spread,
    pub(super) fibre: Fibre,
    /// Whether the cord of the hitch is thinner than one to live on.
    pub(super) thin: bool,
    /// The diameter of the hitch's cord and how much of it lies on the rope, in metres.
    pub(super) cord: Option<(f64, f64)>,
    /// By how much the rope that somebody has ends above the ground; none while it, its anchor or the crotch is not known.
    pub(super) end: Option<Option<Spread>>,
    assumed: Vec<&'static Row>,
}

impl Inputs {
    /// The fields whose defaults the answer rests on.
    #[must_use]
    pub fn assumed(&self) -> &[&'static Row] {
        &self.assumed
    }

    /// Somebody of a weight who comes down at a speed.
    pub(super) fn heat(&self, weight: f64, speed: f64) -> Heat {
        Heat { weight, height: self.height, speed, stops: self.stops, rest: self.rest }
    }

    /// The inputs that a draft comes to.
    ///
    /// # Errors
    /// Everything that is wrong with the draft.
    pub fn of(draft: &Draft) -> Result<Self, Vec<Error>> {
        let mut reader = reader(draft, Question::ComingDown);
        let body_mass = reader.need(&BODY_MASS);
        let height = reader.need(&CLIMB_HEIGHT).map(Quantity::si);
        let kit_mass = reader.spread(&KIT_MASS);
        let rig = reeved(&mut reader);
        let (kind, own) = (reader.chosen(&TOP_TURN.kind), reader.maybe(&TOP_TURN.own));
        let brake = reader.chosen(&BRAKE);
        let (turns, measured) = (reader.spread(&BRAKE_TURNS), reader.maybe(&BRAKE_MEASURED).map(Ratio::value));
        let hand = Hand::read(&mut reader, body_mass);
        let gloves = reader.chosen(&GLOVES);
        let speed = reader.maybe(&SPEED).map(Quantity::si);
        let crotch = reader.maybe(&CROTCH_HEIGHT).map(Quantity::si);
        let (stops, rest) = (reader.maybe(&REST_EVERY).map(Quantity::si), reader.spread(&REST_FOR));
        let (share, fibre) = (reader.spread(heat_share(brake)), reader.chosen(&CORD_FIBRE));
        let thin = reader.maybe(&HITCH_CORD).is_some_and(|cord| cord < LEAST_LIFE_CORD);
        let cord = on_the_rope(&mut reader);
        let anchor = reader.maybe(&ANCHOR).filter(|_| rig.as_ref().is_some_and(|rig| is_anchored(&rig.rig)));
        let end = rope_end(&mut reader, rig.as_ref(), anchor);
        let fast = end.map(|_| &made_fast_by(anchor).row);
        let assumed = assumed(&reader, rig.as_ref(), brake, cord.is_some(), fast);
        reader.done(|| {
            Some(Self {
                body_mass: body_mass?,
                kit_mass: kit_mass?,
                height: height?,
                rig: rig?,
                top: kept_by(kind?, own),
                brake: brake?,
                turns: turns?.likely,
                measured,
                hand: hand?,
                gloves: gloves?,
                speed,
                crotch,
                stops,
                rest: rest?.likely,
                share: share?,
                fibre: fibre?,
                cord,
                thin,
                end,
                assumed,
            })
        })
    }
}

/// The heat that stays in the hitch's cord, by whether friction is added below it.
fn heat_share(brake: Option<Brake>) -> &'static Field<Ratio> {
    if brake == Some(Brake::None) { &HEAT_SHARE_ALONE } else { &HEAT_SHARE }
}

/// The diameter of the hitch's cord and how much of it lies on the rope; none while either is not known.
fn on_the_rope(reader: &mut Reader<'_>) -> Option<(f64, f64)> {
    let (cord, rope) = (reader.maybe(&HITCH_CORD), reader.maybe(&ROPE_DIAMETER));
    let (coils, crossings) = (reader.maybe(&HITCH_COILS), reader.maybe(&HITCH_CROSSINGS));
    let hitch = reader.maybe(&CORD_USE).filter(|hitch| hitch.is_hitch());
    let pattern = hitch?.pattern();
    let count = |count: Count| count.number();
    let coils = coils.map(count).or(pattern.coils.map(f64::from))?;
    let crossings = crossings.map_or(f64::from(pattern.crossings), count);
    let (cord, rope) = (cord?.si(), rope?.si());
    let [coiled, crossed] = pattern.on_the_rope(rope, cord, coils, crossings);
    Some((cord, coiled + crossed)).filter(|(_, length)| *length > 0.0)
}

/// By how much the rope that somebody has ends above the ground on the way down, if at all.
fn rope_end(reader: &mut Reader<'_>, rig: Option<&Reeved>, anchor: Option<Anchor>) -> Option<Option<Spread>> {
    let (crotch, rope) = (reader.maybe(&CROTCH_HEIGHT), reader.maybe(&ROPE_OWNED));
    let hitch = reader.spread(&HITCH_HEIGHT);
    let height = crotch.map_or(0.0, Quantity::si);
    let sizes = Sizes::read(reader, height, hitch, anchor)?;
    let (_, rope, rig) = (crotch?, rope?.si(), rig?);
    if is_anchored(&rig.rig) && anchor.is_none() {
        return None;
    }
    let courses = courses(&rig.rig, anchor, &sizes);
    let above = ends_above(rope, &courses);
    // From the crotch on there is no rope at all.
    let within = |end: f64| end.min(height);
    let above = Spread::new(within(above.low), within(above.likely), within(above.high));
    Some(Some(above).filter(|above| above.high > ADDING_UP))
}

/// The fields that have their defaults, of those that matter.
fn assumed(
    reader: &Reader<'_>,
    rig: Option<&Reeved>,
    brake: Option<Brake>,
    hot: bool,
    fast: Option<&'static Row>,
) -> Vec<&'static Row> {
    let over_the_top = rig.is_some_and(|rig| {
        rig.rig.stops().any(|stop| matches!(stop.what, What::Turn(_)) && rig.rig.kind_at(stop) == Some(BodyKind::Tree))
    });
    let mut assumed = Vec::new();
    for (counts, row) in [
        (true, &KIT_MASS.row),
        (over_the_top, &TOP_TURN.kind.row),
        (!reader.says(&BRAKE_MEASURED.row), &BRAKE.row),
        (brake == Some(Brake::Turns) && !reader.says(&BRAKE_MEASURED.row), &BRAKE_TURNS.row),
        (true, &GLOVES.row),
        (reader.says(&REST_EVERY.row), &REST_FOR.row),
        (hot, &CORD_FIBRE.row),
        (hot, &heat_share(brake).row),
    ] {
        if counts && reader.rests_on_default(row) {
            assumed.push(row);
        }
    }
    for row in fast.iter().flat_map(|fast| [&OVER_CROTCH.row, *fast, &ROPE_TAIL.row]) {
        if !reader.says(row) {
            assumed.push(row);
        }
    }
    assumed
}
