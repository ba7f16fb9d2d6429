//! What the arms give and the hands hold, and the share of it that a pull takes.

use super::Rows;
use crate::climber::{
    ANOTHER_DAY, Arms, Hold, ONE_ARM, OTHER_HAND, PREDICTION_ERROR, PULL_OVER_GRIP, PullTaken, SURE_OF, Trunk,
};
use crate::field::Spread;
use crate::question::can_i_climb::{Evidence, Gate};
use crate::source::{CROSBY, GEOMETRY, HUR, JOHNSON, JUDGED, LA_DELFA, NHANES, RAKSHIT, Source, YOUNG};

const REACHES: &str = "chance of the height in the time you allow";
const ONE_PULL: &str = "chance of one pull, by these figures alone";

impl Rows<'_> {
    pub(super) fn strength(&mut self) {
        let answer = self.answer;
        if let Some(gate) = &answer.arms {
            let [have, share] = if answer.hauled {
                ["pull of the helper", "share of the helper's pull"]
            } else {
                ["pull your arms give", "share of your arms' pull in one stroke"]
            };
            self.add("armPull", have, &gate.capacity, "{N}", self.arms_rest_on());
            self.arms(gate);
            self.sharper();
            self.share("armShare", share, gate);
        }
        if let Some(planning) = answer.planning {
            let planning = Spread::point(planning);
            self.add("planningPull", "pull to plan on, from sex and age", &planning, "{N}", &[NHANES, JUDGED]);
            self.line("Four people in five of your sex and age have a stronger grip than this rests on.", &[], &[]);
        }
        if let Some(pull) = &answer.by_pull {
            self.beside("measuredPull", "pull of your arms, by the pull you measured", pull, &[JUDGED]);
        }
        if let Some(pull) = &answer.by_grip {
            self.beside("gripPull", "pull of your arms, by your grip", pull, &[LA_DELFA, JUDGED]);
        }
        if let Some(pull) = &answer.by_norm {
            self.beside("normPull", "pull of your arms, by sex and age", pull, &[NHANES, JUDGED]);
        }
        if let Some(gate) = &answer.grasp {
            self.add("handHold", "pull your hands hold", &gate.capacity, "{N}", &[YOUNG, HUR, CROSBY, JUDGED]);
            self.hands();
            self.share("handShare", "share of your hands' hold in one stroke", gate);
        }
        if let Some(verdict) = answer.verdict {
            let [noun, what] = if answer.hauled {
                ["chance of the haul, by these figures alone", "the helper pulls what the haul takes"]
            } else if answer.strokes.is_some() {
                [ONE_PULL, "arms and hands give what one pull takes and the stroke gains height"]
            } else {
                [ONE_PULL, "arms and hands give what one pull takes; whether a stroke gains height is not known"]
            };
            self.add("chance", noun, &Spread::point(verdict.chance), "{C}", &[JUDGED]);
            self.line(
                "Of {0} reckoned climbs, each with every uncertain figure drawn from its range, the share in which {}.",
                &[&Spread::point(f64::from(answer.samples))],
                &[what],
            );
            if let Some(reaches) = verdict.reaches {
                self.add("reachChance", REACHES, &Spread::point(reaches), "{C}", &[RAKSHIT, JUDGED]);
                self.line(
                    "The share of them in which arms and hands also last through all pulls, and the arms keep up the power, within {S}. It is arithmetic on ranges: it knows nothing of pain, fear, weather, a hitch that jams, or a limb that breaks.",
                    &[&Spread::point(answer.time_allowed)],
                    &[],
                );
            }
        }
    }

    /// What better evidence would make of the range.
    fn sharper(&mut self) {
        let sharper = self.answer.sharper;
        for (known, how) in [(&sharper.by_grip, "your grip, measured"), (&sharper.by_pull, "your pull, measured")] {
            if let Some(Spread { low, high, .. }) = known {
                let ends = [&Spread::point(*low), &Spread::point(*high)];
                self.line("If it came out the same, {} would narrow this to {N} to {N}.", &ends, &[how]);
            }
        }
        if matches!(self.answer.evidence, Some(Evidence::Pull | Evidence::Grip | Evidence::Norm)) {
            self.line("Ten strokes at knee height would tell losses, setback and tiring too.", &[], &[]);
        }
    }

    /// What the pull of the arms rests on.
    fn arms_rest_on(&self) -> &'static [Source] {
        let taken = self.answer.measured.map(|measured| measured.taken);
        match (self.answer.evidence, taken) {
            (Some(Evidence::Trial), _) => &[RAKSHIT, JUDGED],
            (Some(Evidence::Pull), Some(PullTaken::TenRepetitions)) => &[JUDGED, JOHNSON],
            (Some(Evidence::Pull), Some(_)) => &[JUDGED, LA_DELFA],
            (Some(Evidence::Norm), _) => &[JUDGED, JOHNSON, NHANES],
            (Some(_), _) => &[JUDGED, JOHNSON, LA_DELFA],
            (None, _) => &[JUDGED],
        }
    }

    /// How the pull of the arms comes about.
    fn arms(&mut self, gate: &Gate) {
        let answer = self.answer;
        let given = &gate.capacity;
        if let Some(trial) = answer.trial.filter(|_| answer.evidence == Some(Evidence::Trial)) {
            self.line(
                "At knee height you made {0} strokes, one every {S}, and were sure of {0} more; the share of those that counts is {r1}. Arms that tire as fast as that rig tires them must have {N} for it.",
                &[&Spread::point(trial.strokes), &Spread::point(trial.cycle()), &Spread::point(trial.more), &SURE_OF, given],
                &[],
            );
            return self.line("What rig, hitches and you lose is in it already.", &[], &[]);
        }
        let whose = match (answer.evidence, answer.measured) {
            (Some(Evidence::Pull), Some(measured)) => {
                let pull = Spread::point(measured.pull.in_newtons());
                self.line("measured pull {N} × {r2}", &[&pull, &measured.taken.through_the_stroke()], &[]);
                self.for_arms(measured.arms);
                let why = match measured.taken {
                    PullTaken::Overhead => "arms pull harder overhead than where the stroke ends",
                    PullTaken::LowestPoint => "it was taken where the stroke ends",
                    PullTaken::TenRepetitions => "what goes ten times is 80 % of what goes once",
                };
                return self.more(" = {N}: {}; another day {r2} of it", &[given, &ANOTHER_DAY], &[why]);
            }
            (Some(evidence), _) => match (evidence, answer.hands, answer.one_armed) {
                (Evidence::Norm, Arms::Two, _) => "grip of both hands of people like you",
                (Evidence::Norm, Arms::One, _) => "twice the grip of the weaker hand of people like you",
                (_, Arms::Two, _) => "grip of both hands",
                (_, Arms::One, true) => "twice the grip of your hand",
                (_, Arms::One, false) => "twice the grip of your weaker hand",
            },
            (None, _) => return self.line("What is pulled again and again for some minutes.", &[], &[]),
        };
        let grip = Spread::point(answer.grip.unwrap_or(0.0));
        self.line("{} {N} × {r2}", &[&grip, &answer.training.pull_over_grip()], &[whose]);
        if let Some(share) = answer.trunk.share_of_prediction()
            && share.likely < 1.0
        {
            self.more(" × {r2} without the trunk", &[&share], &[]);
        }
        self.for_arms(Arms::Two);
        self.more(
            " = {N}; one person in three is more than {%} off",
            &[given, &const { Spread::point(PREDICTION_ERROR) }],
            &[],
        );
    }

    /// What it counts that the climb is made with other arms than the pull was measured with.
    fn for_arms(&mut self, measured_with: Arms) {
        match (measured_with, self.answer.hands) {
            (Arms::Two, Arms::One) => self.more(" × {r2} for one arm at a time", &[&ONE_ARM], &[]),
            (Arms::One, Arms::Two) => self.more(" ÷ {r2} for two arms", &[&ONE_ARM], &[]),
            _ => {}
        }
    }

    /// A pull foretold by something that does not decide.
    fn beside(&mut self, id: &'static str, noun: &'static str, pull: &Spread, sources: &[Source]) {
        self.add(id, noun, pull, "{N}", sources);
        self.line("Only to compare: what you measured says more.", &[], &[]);
    }

    /// How the hold of the hands comes about.
    fn hands(&mut self) {
        let answer = self.answer;
        if answer.grip_is_entered && answer.one_armed {
            self.line("From the grip you entered; of two hands, the stronger.", &[], &[]);
        } else if answer.grip_is_entered {
            self.line(
                "From the grip you entered; a hand that was not measured counts {1} of the other.",
                &[&const { Spread::point(OTHER_HAND) }],
                &[],
            );
            if answer.hands == Arms::One {
                self.more(" The hands take turns, so the weaker counts.", &[], &[]);
            }
        } else if answer.evidence == Some(Evidence::Norm) {
            self.line("From the grip of people of your sex and age.", &[], &[]);
        } else if answer.trunk == Trunk::Cervical {
            self.line("From what your measured pull proves alone.", &[], &[]);
        } else {
            self.line(
                "Your grip has not been entered: it is reckoned from your pull, which is {r2} of the grip of both hands.",
                &[&PULL_OVER_GRIP],
                &[],
            );
        }
        let of = |hold: Hold| hold.over_grip(answer.gloves);
        self.line(
            "Grip × {r2} on bare rope, {r2} on a handle along the rope, {r2} on a handle across it or a loop; or what your measured pull proves, if that is more.",
            &[&of(Hold::BareRope), &of(Hold::VerticalHandle), &of(Hold::HandLoop)],
            &[],
        );
    }

    /// The share of what somebody has that one stroke takes.
    fn share(&mut self, id: &'static str, noun: &'static str, gate: &Gate) {
        self.add(id, noun, &gate.share, "{%}", &[GEOMETRY]);
        let numbers = [&self.answer.need, &gate.capacity, &gate.share];
        self.line("pull it takes ÷ this = {N} ÷ {N} = {%}", &numbers, &[]);
    }
}
