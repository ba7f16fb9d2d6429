//! Prints whom a rig would take up: everybody of 20 and over in a national survey of grip, on the self-haul of 3:1 on the
//! rope's tail, to 10 m, at likely values, by age and sex.
//!
//! The survey (NHANES 2011-2014) lies in `tests/data/people/`. Each person counts by the number of people they stand for.

use boughline::Draft;
use boughline::quantity::{Force, KILOGRAM_FORCE, Length, Mass, Quantity};
use boughline::question::{Effort, can_i_climb};

/// The time that a climb may take with the rests that strength needs, in seconds.
const TIME: f64 = 30.0 * 60.0;

/// What comes of one person: whether one pull succeeds, and whether all of them do within the time.
fn climbs(height_cm: f64, mass_kg: f64, grip_kg: f64) -> Option<[bool; 2]> {
    // The two hands as one: half of what both squeezed is either's.
    let hand = Force::from_si(KILOGRAM_FORCE.si(grip_kg / 2.0));
    let draft = Draft::new()
        .with(&boughline::climber::BODY_MASS, Mass::kilograms(mass_kg))
        .with(&boughline::climber::STATURE, Length::metres(height_cm / 100.0))
        .with(&boughline::climber::GRIP_LEFT, hand)
        .with(&boughline::climber::GRIP_RIGHT, hand)
        .set("hold", "hand-loop")
        .set("rig", "tail-3")
        .set("climbHeight", "10 m");
    let inputs = can_i_climb::Inputs::of(&draft).ok()?;
    let answer = can_i_climb::ask(&inputs, Effort::samples(1));
    let within = |gate: &Option<can_i_climb::Gate>| gate.as_ref().is_some_and(|gate| gate.share.likely <= 1.0);
    let one = within(&answer.arms) && within(&answer.grasp) && answer.gain.is_some_and(|gain| gain.likely > 0.0);
    let all = answer.lasting_time.is_some_and(|time| time.likely <= TIME);
    Some([one, one && all])
}

/// Women, or men, of ten years of age, each counted by the number of people they stand for.
#[derive(Default, Clone, Copy)]
struct Group {
    all: f64,
    /// Of whom one pull succeeds.
    once: f64,
    /// Of whom all pulls do within the time.
    lasting: f64,
}

impl Group {
    fn add(&mut self, weight: f64, [once, lasting]: [bool; 2]) {
        self.all += weight;
        self.once += weight * f64::from(u8::from(once));
        self.lasting += weight * f64::from(u8::from(lasting));
    }

    /// Both shares, in hundredths.
    fn shares(self) -> [f64; 2] {
        [self.once, self.lasting].map(|part| 100.0 * part / self.all)
    }
}

/// The table: a line for each ten years of age, and how many people it rests on.
#[must_use]
pub fn lines(survey: &str) -> Vec<String> {
    let mut bands = [[Group::default(); 2]; 7];
    let mut people = 0;
    for line in survey.lines().skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let &[_, sex, age, height, mass, grip, weight] = cells.as_slice() else { continue };
        let number = |text: &str| text.parse::<f64>().ok();
        let (Some(age), Some(height), Some(mass), Some(grip), Some(weight)) =
            (number(age), number(height), number(mass), number(grip), number(weight))
        else {
            continue;
        };
        let band = bands.get_mut(((age / 10.0) as usize).saturating_sub(2)).filter(|_| age >= 20.0);
        let group = band.and_then(|band| band.get_mut(usize::from(*sex == *"M")));
        let (Some(group), Some(climbs)) = (group, climbs(height, mass, grip)) else { continue };
        people += 1;
        group.add(weight, climbs);
    }
    let mut lines = vec![
        format!(
            "{people} people of the survey who were weighed and measured, self-haul 3:1 on the rope's tail with a hand loop, 10 m, likely values"
        ),
        "age      women: one pull   in 30 min     men: one pull   in 30 min".to_owned(),
    ];
    for (at, band) in bands.iter().enumerate() {
        let age = if at == 6 { "80 on".to_owned() } else { format!("{} to {}", 20 + 10 * at, 29 + 10 * at) };
        let [[women, women_last], [men, men_last]] = band.map(Group::shares);
        lines.push(format!("{age:<9}{women:>13.0} %{women_last:>10.0} %{men:>15.0} %{men_last:>10.0} %"));
    }
    lines
}

fn main() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/people/nhanes_grip_micro_18plus.csv");
    match std::fs::read_to_string(path) {
        Ok(survey) => println!("{}", lines(&survey).join("\n")),
        Err(error) => println!("The survey cannot be read: {error}"),
    }
}
