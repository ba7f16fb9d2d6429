//! At what pace the climb goes, how far it comes, and where to turn back.

use super::Rows;
use crate::climber::Pace;
use crate::field::Spread;
use crate::question::can_i_climb::{Going, MARGIN};
use crate::source::{GEOMETRY, JOHNSON, JUDGED, RAKSHIT, Source};

const TIRED: &[Source] = &[RAKSHIT, JOHNSON, JUDGED];

impl Rows<'_> {
    pub(super) fn going(&mut self) {
        let answer = self.answer;
        let Some(going) = &answer.going else { return };
        if let Some(pace) = &going.pace {
            self.pace(going, pace);
        }
        let noun = if going.is_at_top() { "time to the height at that pace" } else { "time until a pull fails" };
        self.at("paceTime", noun, going.end.time, "{S}", TIRED);
        let numbers = [&count(going.end.strokes), &Spread::point(going.pulls.seconds)];
        self.line("{0} × {2} s a pull, and the rests between them", &numbers, &[]);
        self.end(going);
        self.turn_back(going);
    }

    /// A figure without a range: it holds at the likely value of everything.
    fn at(&mut self, id: &'static str, noun: &'static str, value: f64, slot: &str, sources: &[Source]) {
        self.add(id, noun, &Spread::point(value), slot, sources);
    }

    fn pace(&mut self, going: &Going, pace: &Pace) {
        self.at("paceRest", "rest after each pull, with some strength to spare", pace.rest, "{S}", TIRED);
        let [low, likely, high] = [MARGIN.low, MARGIN.likely, MARGIN.high].map(Spread::point);
        self.line(
            "The quickest pace at which every pull leaves {%} of your strength beyond what it takes (judged, {%} to {%}), everything at its likely value.",
            &[&likely, &low, &high],
            &[],
        );
        match &pace.longer {
            Some(longer) => {
                self.at("paceEvery", "pulls between longer rests", f64::from(longer.every), "{0}", TIRED);
                self.line("Quicker here than to rest as much after each pull.", &[], &[]);
                self.at("longRest", "each longer rest", longer.seconds, "{S}", TIRED);
                self.line("The shortest with which every pull leaves so much.", &[], &[]);
            }
            None if pace.rest > going.pulls.least_rest => self.line(
                "Longer rests only now and then would take more time: the more is tired, the more of it a rest brings back.",
                &[],
                &[],
            ),
            None if pace.rest > 0.0 => self.line("Moving the upper hitch is all the rest it takes.", &[], &[]),
            None => self.line("Strength lasts without any.", &[], &[]),
        }
    }

    /// Where it ends, and where it is when the time allowed is over.
    fn end(&mut self, going: &Going) {
        let [arms, hands] = going.end.left;
        let [(_, by_arms), (_, by_hands)] = going.pulls.muscles;
        if going.is_at_top() {
            let tighter = if hands - by_hands < arms - by_arms { hands } else { arms };
            self.at("leftAtTop", "strength left after the last pull", tighter, "{%}", TIRED);
            let numbers = [arms, by_arms, hands, by_hands].map(Spread::point);
            self.line("arms {%}, where a pull takes {%}; hands {%}, where it takes {%}", &numbers.each_ref(), &[]);
        } else {
            let height = going.end.height;
            self.at("heightReached", "height at which a pull fails", height, "{M}", TIRED);
            self.line(
                "No rest is long enough for every pull to leave {%} of your strength beyond what it takes, so this is reckoned with the shortest. It is as far down again.",
                &[&Spread::point(MARGIN.likely)],
                &[],
            );
            self.at("stillToTop", "from there to the height", going.height - height, "{M}", &[GEOMETRY]);
            self.line("height − height at which a pull fails", &[], &[]);
        }
        if going.in_time.strokes < going.end.strokes {
            let height = going.in_time.height;
            self.at("heightInTime", "height when the time allowed is over", height, "{M}", TIRED);
            let numbers = [&count(going.in_time.strokes), &Spread::point(going.allowed)];
            self.line("after {0} strokes in {S}", &numbers, &[]);
        }
    }

    /// Where to go down.
    fn turn_back(&mut self, going: &Going) {
        let half = Spread::point(0.5 * going.allowed);
        self.at("halfwayStrokes", "strokes to half the height", f64::from(going.halfway()), "{0}", &[GEOMETRY, JUDGED]);
        self.line(
            "If fewer are done when half the time allowed is gone, after {S}, go down: nobody is quicker when tired (judged).",
            &[&half],
            &[],
        );
        let [(_, by_arms), (_, by_hands)] = going.pulls.muscles;
        let tighter = if by_hands > by_arms { by_hands } else { by_arms };
        let margin = going.pulls.margin;
        self.at("turnBackLeft", "strength left at which to go down", tighter + margin, "{%}", &[JUDGED]);
        self.line(
            "what a pull takes, and {%} on top: arms {%}, hands {%}. With less the next bad pull fails, and the way down takes strength too.",
            &[&Spread::point(margin), &Spread::point(by_arms + margin), &Spread::point(by_hands + margin)],
            &[],
        );
        let Some(back) = &going.turn_back else { return };
        self.at("turnBackStrokes", "strokes after which to go down", f64::from(back.at.strokes), "{0}", TIRED);
        let why = if back.tired {
            "The first pull that leaves less strength than that."
        } else {
            "Half the time allowed is gone, and less than half the height is done."
        };
        self.line(why, &[], &[]);
        self.at("turnBackTime", "time at which to go down", back.at.time, "{S}", TIRED);
        self.line("since the first pull", &[], &[]);
        self.at("turnBackHeight", "height from which to go down", back.at.height, "{M}", TIRED);
        self.line("strokes × gain", &[], &[]);
    }
}

fn count(number: u32) -> Spread {
    Spread::point(f64::from(number))
}
