//! What the arms give and the hands hold, and the share of it that a pull takes.

use super::super::figure::Style;
use super::super::phrase::{newtons, ranged};
use super::{FORCE, Rows};
use crate::climber::{Arms, Hold, ONE_ARM, OTHER_HAND, PREDICTION_ERROR, PullTaken};
use crate::field::Spread;
use crate::quantity::{percent, plain};
use crate::question::can_i_climb::{Evidence, Gate};
use crate::source::{CROSBY, GEOMETRY, HUR, JOHNSON, JUDGED, LA_DELFA, NHANES, Source, YOUNG};

impl Rows<'_> {
    pub(super) fn strength(&mut self) {
        let (answer, view) = (self.answer, self.view);
        if let Some(gate) = answer.arms {
            let (working, sources) = self.arms(gate);
            let nouns = if answer.hauled {
                [("armPull", "pull of the helper"), ("armShare", "share of the helper's pull")]
            } else {
                [("armPull", "pull your arms give"), ("armShare", "share of your arms' pull in one stroke")]
            };
            self.gate(nouns, gate, vec![working], &sources);
        }
        if let Some(planning) = answer.planning {
            let names = ("planningPull", "pull to plan on, from sex and age");
            let workings =
                vec!["Four people in five of your sex and age have a stronger grip than this rests on.".to_owned()];
            self.add(names, Spread::point(planning), FORCE, workings, &[NHANES, JUDGED]);
        }
        let besides = [
            (answer.by_grip, ("gripPull", "pull of your arms, by your grip"), LA_DELFA),
            (answer.by_norm, ("normPull", "pull of your arms, by sex and age"), NHANES),
        ];
        for (pull, names, source) in besides {
            if let Some(pull) = pull {
                let workings = vec!["Only to compare: what you measured says more.".to_owned()];
                self.add(names, pull, FORCE, workings, &[source, JUDGED]);
            }
        }
        if let Some(gate) = answer.grasp {
            let grip = if answer.grip_is_entered {
                format!(
                    "From the grip you entered; a hand that was not measured counts {} of the other.",
                    plain(OTHER_HAND, 1, view)
                )
            } else if answer.evidence == Some(Evidence::Norm) {
                "From the grip of people of your sex and age.".to_owned()
            } else {
                format!(
                    "Your grip has not been entered: it is reckoned from your pull, which is {} of the grip of both hands.",
                    ranged(answer.training.pull_over_grip(), 2, view)
                )
            };
            let of = |hold: Hold| ranged(hold.over_grip(answer.gloves), 2, view);
            let held = format!(
                "Grip × {} on bare rope, {} on a handle along the rope, {} on a handle across it or a loop; or what your measured pull proves, if that is more.",
                of(Hold::BareRope),
                of(Hold::VerticalHandle),
                of(Hold::HandLoop)
            );
            self.gate(
                [("handHold", "pull your hands hold"), ("handShare", "share of your hands' hold in one stroke")],
                gate,
                vec![grip, held],
                &[YOUNG, HUR, CROSBY, JUDGED],
            );
        }
        if let Some(verdict) = answer.verdict {
            let workings = vec![format!(
                "Of {} reckoned climbs, each with every uncertain figure drawn from its range, the share in which arms and hands give what one pull takes and the stroke gains height.",
                plain(f64::from(answer.samples), 0, view)
            )];
            let names = ("chance", "chance of one pull, by these figures alone");
            self.add(names, Spread::point(verdict.chance), Style::Chance, workings, &[JUDGED]);
        }
    }

    /// How the pull of the arms comes about, and what that rests on.
    fn arms(&self, gate: Gate) -> (String, Vec<Source>) {
        let (answer, view) = (self.answer, self.view);
        let given = newtons(gate.capacity.likely, view);
        let one_arm = ranged(ONE_ARM, 2, view);
        let arms_for = |measured_with: Arms| match (measured_with, answer.hands) {
            (Arms::Two, Arms::One) => format!(" × {one_arm} for one arm at a time"),
            (Arms::One, Arms::Two) => format!(" ÷ {one_arm} for two arms"),
            _ => String::new(),
        };
        let (whose, source) = match (answer.evidence, answer.measured) {
            (Some(Evidence::Pull), Some(measured)) => {
                let through = ranged(measured.taken.through_the_stroke(), 2, view);
                let pull = newtons(measured.pull.in_newtons(), view);
                let (why, source) = match measured.taken {
                    PullTaken::Overhead => ("arms pull harder overhead than where the stroke ends", LA_DELFA),
                    PullTaken::LowestPoint => ("it was taken where the stroke ends", LA_DELFA),
                    PullTaken::TenRepetitions => ("what goes ten times is 80 % of what goes once", JOHNSON),
                };
                let arms = arms_for(measured.arms);
                return (format!("measured pull {pull} × {through}{arms} = {given}: {why}"), vec![JUDGED, source]);
            }
            (Some(Evidence::Norm), _) => ("grip of both hands of people like you", NHANES),
            (Some(_), _) => ("grip of both hands", LA_DELFA),
            (None, _) => return ("What is pulled again and again for some minutes.".to_owned(), vec![JUDGED]),
        };
        let over_grip = ranged(answer.training.pull_over_grip(), 2, view);
        let trunk = match answer.trunk.share_of_prediction() {
            Some(share) if share.likely < 1.0 => format!(" × {} without the trunk", ranged(share, 2, view)),
            _ => String::new(),
        };
        let arms = arms_for(Arms::Two);
        let working = format!(
            "{whose} × {over_grip}{trunk}{arms} = {given}; one person in three is more than {} off",
            percent(PREDICTION_ERROR, view)
        );
        (working, vec![JUDGED, JOHNSON, source])
    }

    /// What somebody has, and the share of it that one stroke takes.
    fn gate(
        &mut self,
        [have, takes]: [(&'static str, &'static str); 2],
        gate: Gate,
        workings: Vec<String>,
        sources: &[Source],
    ) {
        let (need, has) = (newtons(self.answer.need.likely, self.view), newtons(gate.capacity.likely, self.view));
        let share = percent(gate.share.likely, self.view);
        self.add(have, gate.capacity, FORCE, workings, sources);
        let workings = vec![format!("pull it takes ÷ this = {need} ÷ {has} = {share}")];
        self.add(takes, gate.share, Style::Percent, workings, &[GEOMETRY]);
    }
}
