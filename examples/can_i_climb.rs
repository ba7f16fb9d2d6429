//! Prints the numbers of the README: one climber, one oak, one rig.

use boughline::quantity::View;
use boughline::question::{Effort, can_i_climb};
use boughline::{Draft, words};

/// The answer, a line a figure.
#[must_use]
pub fn lines() -> Vec<String> {
    let draft = Draft::new()
        .set("bodyMass", "80 kg")
        .set("stature", "175 cm")
        .set("measuredPull", "640 N")
        .set("rig", "tail-3")
        .set("climbHeight", "11 m")
        .set("wayDown", "descend")
        .set("secondPerson", "rescuer");
    let view = View::default();
    match can_i_climb::Inputs::of(&draft) {
        Ok(inputs) => {
            let report = words::report(&can_i_climb::ask(&inputs, Effort::FULL), view);
            let mut lines = vec![report.verdict.text.to_owned(), report.first, report.second, String::new()];
            lines.extend(report.figures.iter().map(|figure| {
                let range = figure.range.as_deref().unwrap_or_default();
                format!("{:<44} {:>8}   {range}", figure.noun, figure.text).trim_end().to_owned()
            }));
            lines
        }
        Err(errors) => words::error_lines(&errors, view).into_iter().map(|error| error.message).collect(),
    }
}

fn main() {
    println!("{}", lines().join("\n"));
}
