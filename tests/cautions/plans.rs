//! Random plans of a question, most of them in order: part of the fields said, numbers as people have them.

use boughline::Draft;
use boughline::field::{Kind, Row, Said};
use boughline::question::Question;
use proptest::prelude::*;

/// A plan, with what was said read back as it was said.
#[derive(Debug, Clone)]
pub(crate) struct Plan(pub(crate) Draft);

impl Plan {
    /// The choice or text of a field, if one was said.
    pub(crate) fn says(&self, id: &str) -> Option<&str> {
        match self.0.get(id) {
            Some(Said::Text(text)) => Some(text),
            _ => None,
        }
    }

    pub(crate) fn is(&self, id: &str, choice: &str) -> bool {
        self.says(id) == Some(choice)
    }

    pub(crate) fn is_or_open(&self, id: &str, choice: &str) -> bool {
        self.says(id).is_none_or(|said| said == choice)
    }

    /// The number of a field in SI, if one was said.
    pub(crate) fn si(&self, id: &str) -> Option<f64> {
        match self.0.get(id) {
            Some(Said::Number(si)) => Some(*si),
            _ => None,
        }
    }

    pub(crate) fn has(&self, id: &str) -> bool {
        self.0.get(id).is_some()
    }

    /// Whether somebody else hauls; a rig of one's own may be such a one.
    pub(crate) fn is_hauled(&self) -> bool {
        self.says("rig").is_some_and(|rig| rig.starts_with("ground") || rig == "own")
    }

    /// Climber and kit at the least: kit that is not said is 4 kg and more.
    pub(crate) fn least_mass(&self) -> f64 {
        self.si("bodyMass").unwrap_or(0.0) + self.si("kitMass").unwrap_or(4.0)
    }
}

/// Rigs of people's own.
const OWN_RIGS: &[&str] = &[
    "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper carabiner, hand climber",
    "tied tree, turn climber, turn tree, hand climber, helper ground 150 N",
    "tied tree, hand climber",
];

/// What is needed for an answer at all.
fn needed(question: Question) -> &'static [&'static str] {
    match question {
        Question::RopeLength => &["crotchHeight", "anchor", "ownRig"],
        Question::CutLength => &["cordUse", "ropeDiameter", "hitchCord", "slingCord", "haulCord", "ownRig"],
        Question::CutPlan => &["cords", "ownRig"],
        _ => &["bodyMass", "climbHeight", "rig", "ownRig"],
    }
}

/// Left out: halves of a test, lists of their own, and figures that follow from each other.
const LEFT_OUT: &[&str] = &[
    "testMass",
    "testPull",
    "ropeStock",
    "cordCut",
    "cameOut",
    "finishedLength",
    "workingEnd",
    "hitchHeight",
    "trialStrokes",
    "trialTime",
    "trialHeight",
    "trialMore",
];

/// The range that people's own figures lie in, where the limits are wider.
fn usual(id: &str) -> Option<(f64, f64)> {
    Some(match id {
        "bodyMass" => (40.0, 170.0),
        "kitMass" => (1.0, 20.0),
        "ratedMass" => (80.0, 150.0),
        "climbHeight" => (3.0, 20.0),
        "crotchHeight" => (6.0, 25.0),
        "ropeOwned" => (5.0, 90.0),
        "measuredPull" => (100.0, 1800.0),
        "gripLeft" | "gripRight" => (100.0, 600.0),
        "stature" => (1.4, 2.0),
        "age" => (18.0, 95.0),
        "ropeDiameter" => (0.009, 0.014),
        "hitchCord" | "slingCord" => (0.005, 0.012),
        "haulCord" => (0.005, 0.009),
        "freeLeg" => (0.1, 0.5),
        _ => return None,
    })
}

fn value(row: &'static Row) -> BoxedStrategy<Said> {
    let texts = |texts: &'static [&'static str]| {
        prop::sample::select(texts).prop_map(|text| Said::Text(text.to_owned())).boxed()
    };
    match (row.id, row.kind) {
        ("cords", _) => texts(&["2~6mm~1.8m", "3 ~ 8 mm ~ 1.2 m ~ polyester ~ hitch\n1 ~ 6 mm ~ 2 m"]),
        ("hanks", _) => texts(&["any~20m", "6mm~3.2m~0~x1\nany ~ 30 m"]),
        ("ownRig", _) => texts(OWN_RIGS),
        (id, Kind::Quantity(limits)) => {
            let (least, most) = usual(id).unwrap_or((limits.least, limits.most));
            (least..=most).prop_map(Said::Number).boxed()
        }
        (_, Kind::Choice { options, .. }) => {
            (0..options.len()).prop_map(move |at| Said::Text(options[at].id.to_owned())).boxed()
        }
        _ => texts(&[""]),
    }
}

/// Plans of a question; half of them say few of the fields that can wait.
pub(crate) fn plans(question: Question) -> impl Strategy<Value = Plan> {
    let fields: Vec<BoxedStrategy<Option<(&'static str, Said)>>> = question
        .fields()
        .iter()
        .filter(|row| !LEFT_OUT.contains(&row.id))
        .map(|row| {
            let said = value(row).prop_map(|said| (row.id, said));
            if needed(question).contains(&row.id) {
                said.prop_map(Some).boxed()
            } else {
                prop::option::weighted(0.35, said).boxed()
            }
        })
        .collect();
    fields.prop_map(|fields| {
        let mut draft = Draft::new();
        for (id, said) in fields.into_iter().flatten() {
            draft.put(id, said);
        }
        Plan(draft)
    })
}
