//! What all climbs together say of the start and of the top.

use super::{Answer, Climbs};

/// Puts into an answer what the rope gives at the start, and how near the crotch the climber comes.
pub(super) fn ends(climbs: &Climbs, answer: &mut Answer) {
    let start = &mut answer.taken_up;
    climbs.always(&mut start.above, |climb| climb.slack.above);
    climbs.always(&mut start.stretch, |climb| climb.slack.stretch);
    climbs.always(&mut start.rope, |climb| climb.slack.rope);
    climbs.always(&mut start.work, |climb| climb.slack.rope * climb.need);
    climbs.maybe(&mut start.strokes, |climb| climb.slack.strokes);
    climbs.maybe(&mut start.time, |climb| climb.slack_time);
    climbs.maybe(&mut start.all_strokes, |climb| climb.all_strokes);
    let top = &mut answer.top;
    climbs.always(&mut top.start, |climb| climb.top.start);
    climbs.always(&mut top.gap, |climb| climb.top.gap);
    climbs.maybe(&mut top.seat, |climb| climb.top.seat);
    climbs.maybe(&mut top.left, |climb| climb.top.left);
    climbs.maybe(&mut top.over_edge, |climb| climb.top.over_edge);
}
