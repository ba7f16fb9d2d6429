//! What the rig does with the pull, and what hangs on it.

use super::super::figure::Style;
use super::super::phrase::{newtons, ranged};
use super::{FORCE, Rows};
use crate::field::Spread;
use crate::quantity::{Dimension, STANDARD_GRAVITY, System, View, plain, written};
use crate::question::can_i_climb::{Answer, CLIMBING_PEAK};
use crate::reeving::BodyKind;
use crate::source::{GEOMETRY, GRAVITY, JUDGED};

impl Rows<'_> {
    pub(super) fn rig(&mut self) {
        let (answer, view) = (self.answer, self.view);
        let mut sources = vec![GEOMETRY];
        if answer.turn_efficiency.is_none() {
            for turn in answer.turns.iter().filter(|turn| !turn.own) {
                sources.extend(turn.kind.sources());
            }
        }
        let workings = advantage_workings(answer, view);
        self.add(("realAdvantage", "real advantage"), answer.advantage, Style::Plain(2), workings, &sources);
        let workings = vec!["The rope the hand takes for each unit of height; losses never change it.".to_owned()];
        let (names, ideal) = (("idealAdvantage", "advantage without loss"), Spread::point(answer.ideal));
        self.add(names, ideal, Style::Plain(0), workings, &[GEOMETRY]);
        if let Some(kept) = answer.turn_efficiency {
            let workings = vec![
                "One reading and several turns: all are scaled by one power until the rig gives what you measured; the drag of the hitch is in it.".to_owned(),
            ];
            let names = ("turnEfficiency", "kept at a turn, by your own test");
            self.add(names, Spread::point(kept), Style::Plain(3), workings, &[GEOMETRY]);
        }
        let (mass, weight) = (written(answer.mass.likely, Dimension::Mass, view), newtons(answer.weight.likely, view));
        let workings = vec![match view.system {
            System::Si => format!("{mass} × {} m/s² = {weight}", plain(STANDARD_GRAVITY, 5, view)),
            System::Us => format!("{mass}, which standard gravity makes {weight}"),
        }];
        self.add(("climberWeight", "your weight, all-up"), answer.weight, FORCE, workings, &[GRAVITY, JUDGED]);
        let workings = vec![format!(
            "What the rope pulls on the crotch × {} for climbing in jerks. A slip or a catch loads it far more, and is not reckoned here.",
            ranged(CLIMBING_PEAK, 1, view)
        )];
        let names = ("anchorLoad", "load on the anchor, climbing in jerks");
        self.add(names, answer.anchor, FORCE, workings, &[GEOMETRY, JUDGED]);
    }
}

/// What adds up to the real advantage: every strand that pulls the climber up.
fn advantage_workings(answer: &Answer, view: View) -> Vec<String> {
    let climber = answer.rig.body(BodyKind::Climber);
    let mut lifting = String::new();
    let mut strands = 0;
    for (rope, tensions) in answer.rig.ropes().iter().zip(&answer.tensions) {
        for (ends, tension) in rope.stops.windows(2).zip(tensions) {
            let at_climber = ends.iter().any(|stop| stop.body == climber);
            let from_above = ends.iter().any(|stop| stop.body.is_some() && stop.body < climber);
            if at_climber && from_above && tension.likely > 0.0 {
                let before = if lifting.is_empty() { "" } else { " + " };
                lifting = plain(tension.likely / answer.need.likely, 2, view) + before + &lifting;
                strands += 1;
            }
        }
    }
    let sum = plain(answer.advantage.likely, 2, view);
    let mut workings = vec![if strands > 1 {
        format!("Each strand that lifts you, for one unit of pull at the hand: {lifting} = {sum}")
    } else {
        format!("One strand lifts you; for one unit of pull at the hand it carries {sum}")
    }];
    if answer.turn_efficiency.is_some() {
        workings.push(
            "The losses are those of your own test, which stands in place of any figure for a turn or a hitch."
                .to_owned(),
        );
    } else if !answer.turns.is_empty() {
        let mut kept = String::new();
        for turn in answer.turns.iter().rev() {
            let own = if turn.own { " (your own figure)" } else { "" };
            kept += &format!("{} {}{own}, ", turn.kind.named().noun, plain(turn.kept.likely, 2, view));
        }
        let drag = plain(answer.drag.likely, 2, view);
        workings
            .push(format!("Kept at each turn, from the hand: {kept}and past a hitch that slides under load {drag}."));
    }
    workings
}
