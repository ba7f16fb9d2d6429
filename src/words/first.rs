//! What decides a verdict, in a sentence.

use super::capped::capped;
use super::phrase::{listed, sentence};
use super::template::{said, say};
use crate::field::Spread;
use crate::quantity::View;
use crate::question::can_i_climb::{Answer, Decided, Gate, Level, Missing, Verdict};

/// What decides the verdict, in a sentence.
pub(super) fn first(answer: &Answer, view: View) -> String {
    let need = &answer.need;
    let tell = |template: &str, numbers: &[&Spread], words: &[&str]| said(template, numbers, words, view);
    let (Some(verdict), Some(arms)) = (answer.verdict, &answer.arms) else {
        if let Some(arms) = &answer.arms {
            return tell(
                "One pull takes about {P}, {%} of what your arms give. What your hands hold on this has not been measured, so whether they keep it is not known.",
                &[need, &arms.share],
                &[],
            );
        }
        // A grip that was entered says something about the hands.
        return match &answer.grasp {
            Some(grasp) => tell(
                "One pull takes about {P}, {%} of what your hands hold. Your pull has not been measured, so whether your arms give it is not known.",
                &[need, &grasp.share],
                &[],
            ),
            None => tell(
                "One pull takes about {P}. How strong you are is not known, so there is nothing to hold it against.",
                &[need],
                &[],
            ),
        };
    };
    let gives = &arms.capacity;
    let often = of_hundred(verdict.chance, view);
    let often = &[often.as_str()];
    if let Some(text) = capped(verdict.decided, answer, view) {
        return text;
    }
    let Some(grasp) = &answer.grasp else { return hauled(answer, verdict, arms, view) };
    let holds = &grasp.capacity;
    let allowed = &Spread::point(answer.time_allowed);
    let reached = of_hundred(verdict.counts(), view);
    let reaches = &[reached.as_str()];
    let unknown = Spread::point(f64::NAN);
    let strokes = answer.taken_up.all_strokes.as_ref().unwrap_or(&unknown);
    let mut text = match (verdict.decided, verdict.level) {
        (Decided::Missing, _) => not_entered(answer) + " " + &going(answer, verdict, view),
        (decided, Level::WithinReach) => {
            let mut text = going(answer, verdict, view);
            say(
                &mut text,
                " What comes nearest to failing: {}. This is of strength and time alone: what the parts carry, the way down and the rescue are questions of their own.",
                &[],
                &[tightest(decided)],
                view,
            );
            text
        }
        (Decided::LastingArms, _) => tell(
            "Your arms tire before the height: one pull takes about {P}, {%} of what they give, and the climb is about {I} such pulls. Within {S} they last to it in {} of 100 reckoned climbs.",
            &[need, &arms.share, strokes, allowed],
            reaches,
        ),
        (Decided::LastingHands, _) => tell(
            "Your hands tire before the height: one pull takes about {P}, {%} of what they hold, and the climb is about {I} such pulls. Within {S} they last to it in {} of 100 reckoned climbs.",
            &[need, &grasp.share, strokes, allowed],
            reaches,
        ),
        (Decided::Power, _) => {
            let [takes, keeps] =
                [&answer.power_needed, &answer.power_kept_up].map(|power| power.as_ref().unwrap_or(&unknown));
            let template = "The power of your arms decides: coming to the height within {S} takes about {W} all the way, and they keep up about {W}. {} of 100 reckoned climbs come to the height in that time.";
            tell(template, &[allowed, takes, keeps], &[&sentence(&reached)])
        }
        (Decided::Time, _) => {
            let template = "The time is too short: about {I} strokes take about {S} without any rest, and you allow {S}. {} of 100 reckoned climbs come to the height in that time.";
            tell(
                template,
                &[answer.strokes.as_ref().unwrap_or(&unknown), answer.time.as_ref().unwrap_or(&unknown), allowed],
                &[&sentence(&reached)],
            )
        }
        (Decided::Stroke, _) => {
            let template =
                "{} would not rise: the hitch gives back {M} at every stroke, at least as much as a stroke brings.";
            let mut text = tell(template, &[&answer.setback], &[&how_often_stuck(verdict, view)]);
            if is_weak(answer) {
                say(&mut text, " Nor do your arms or hands give the {P} that one pull takes.", &[need], &[], view);
            }
            text
        }
        (Decided::Hands, Level::OutOfReach) => tell(
            "Your hands would slip or open first: one pull takes about {P}, and they hold about {P} on this.",
            &[need, holds],
            &[],
        ),
        (Decided::Arms, Level::OutOfReach) => tell(
            "One pull is too hard: it takes about {P}, and your arms give about {P} through a whole stroke.",
            &[need, gives],
            &[],
        ),
        (Decided::ArmsAndHands, Level::OutOfReach) => tell(
            "One pull is too hard for arms and hands: it takes about {P}; your arms give about {P} through a whole stroke, and your hands hold about {P} on this.",
            &[need, gives, holds],
            &[],
        ),
        (Decided::Hands, _) => tell(
            "Your hands decide: one pull takes about {P}; they hold about {P}, more or less, and it succeeds in {} of 100 reckoned climbs.",
            &[need, holds],
            often,
        ),
        (Decided::ArmsAndHands, _) => tell(
            "Your arms and hands decide: one pull takes about {P}; your arms give about {P} and your hands hold about {P}, more or less, and it succeeds in {} of 100 reckoned climbs.",
            &[need, gives, holds],
            often,
        ),
        // What caps it has been told.
        (_, _) => tell(
            "Your arms decide: one pull takes about {P}; they give about {P}, more or less, and it succeeds in {} of 100 reckoned climbs.",
            &[need, gives],
            often,
        ),
    };
    let of_one = matches!(verdict.decided, Decided::Arms | Decided::Hands | Decided::ArmsAndHands);
    if of_one && verdict.level == Level::AtLimit && verdict.reaches.is_some() {
        say(&mut text, " The height is reached within {S} in {} of 100.", &[allowed], reaches, view);
    }
    if let Some(planning) = answer.planning {
        say(
            &mut text,
            " By age and sex alone, plan on no more than {P} of pull: the grip of one in five like you is weaker still.",
            &[&Spread::point(planning)],
            &[],
            view,
        );
    }
    text
}

/// What the climb takes, and how often it comes off.
fn going(answer: &Answer, verdict: Verdict, view: View) -> String {
    let (Some(arms), Some(grasp)) = (&answer.arms, &answer.grasp) else { return String::new() };
    let numbers = [&answer.need, &arms.share, &grasp.share];
    let mut text = said(
        "One pull takes about {P}, {%} of what your arms give and {%} of what your hands hold",
        &numbers,
        &[],
        view,
    );
    if let Some(strokes) = &answer.taken_up.all_strokes {
        say(&mut text, "; the climb is about {I} such pulls", &[strokes], &[], view);
    }
    match &answer.lasting_time {
        Some(time) if time.likely.is_finite() => {
            say(&mut text, ", and about {S} with the rests that strength needs to last", &[time], &[], view);
        }
        Some(_) => text.push_str(", for which strength does not last, however long you rest between them"),
        None => {}
    }
    text.push('.');
    if let Some(reaches) = verdict.reaches {
        let template = " In {} of 100 reckoned climbs you come to the height within {S}.";
        say(&mut text, template, &[&Spread::point(answer.time_allowed)], &[&of_hundred(reaches, view)], view);
    }
    text
}

/// How many of a hundred, never all and never none.
fn of_hundred(share: f64, view: View) -> String {
    if share > 0.995 {
        "over 99".to_owned()
    } else if share < 0.005 {
        "under 1".to_owned()
    } else {
        said("about {0}", &[&Spread::point(share * 100.0)], &[], view)
    }
}

/// What a gate is called where nothing fails at it.
fn tightest(decided: Decided) -> &'static str {
    match decided {
        Decided::Hands => "the hold of your hands",
        Decided::ArmsAndHands => "the pull of your arms and the hold of your hands",
        Decided::LastingArms => "your arms, which tire",
        Decided::LastingHands => "your hands, which tire",
        Decided::Power => "the power of your arms",
        Decided::Time => "the time you allow",
        Decided::Stroke => "what a stroke gains",
        _ => "the pull of your arms",
    }
}

/// What decides where helpers haul.
fn hauled(answer: &Answer, verdict: Verdict, helpers: &Gate, view: View) -> String {
    let (need, gives) = (&answer.need, &helpers.capacity);
    if verdict.level == Level::OutOfReach {
        said(
            "The haul is too hard: it takes about {P}, and the helper pulls about {P} again and again.",
            &[need, gives],
            &[],
            view,
        )
    } else if verdict.decided == Decided::Missing {
        let mut text = not_entered(answer);
        let template = " The haul takes about {P}, {%} of what the helper pulls.";
        say(&mut text, template, &[need, &helpers.share], &[], view);
        text
    } else {
        said(
            "The helper decides: the haul takes about {P}; they pull about {P}, more or less, and it succeeds in {} of 100 reckoned hauls.",
            &[need, gives],
            &[&of_hundred(verdict.chance, view)],
            view,
        )
    }
}

/// The beginning of a sentence that goes on with "would not rise".
fn how_often_stuck(verdict: Verdict, view: View) -> String {
    let in_hundred = (verdict.stuck * 100.0).round();
    if in_hundred >= 100.0 {
        "You".to_owned()
    } else if in_hundred > 50.0 {
        "In most reckoned climbs you".to_owned()
    } else {
        said("In about {0} of 100 reckoned climbs you", &[&Spread::point(in_hundred)], &[], view)
    }
}

/// The beginning of what is said of a plan that lacks something.
fn not_entered(answer: &Answer) -> String {
    let mut nouns = Vec::new();
    for missing in &answer.missing {
        nouns.push(
            match missing {
                Missing::Strength | Missing::Pull | Missing::Hold | Missing::OtherHalf(_) => "no strength",
                Missing::RestOfTrial => "only part of a trial",
                Missing::Stroke => "no length of pull",
                Missing::Rig => "no rig chosen",
                Missing::Crotch => "no height of the crotch",
                Missing::WayDown => "no way down",
                Missing::Lowering => "no way down that the rope allows",
                Missing::SecondPerson => "no second person",
            }
            .to_owned(),
        );
    }
    let mut text = "It is not yet a plan: ".to_owned();
    text.push_str(&listed(&nouns));
    text + "."
}

/// Whether one pull takes more than arms or hands give, most likely.
pub(super) fn is_weak(answer: &Answer) -> bool {
    let lacks = |gate: &Option<Gate>| gate.as_ref().is_some_and(|gate| gate.share.likely > 1.0);
    lacks(&answer.arms) || lacks(&answer.grasp)
}
