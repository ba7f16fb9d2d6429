//! Prints the numbers of the README: one climber, one oak, one rig.

use boughline::quantity::View;
use boughline::question::{Effort, can_i_climb};
use boughline::words::{self, Report};
use boughline::{Draft, error::Error};

/// The answer in words.
///
/// # Errors
/// Everything that is wrong with the draft; nothing is wrong with this one.
pub fn answer(view: View) -> Result<Report, Vec<Error>> {
    let draft = Draft::new()
        .set("bodyMass", "80 kg")
        .set("stature", "175 cm")
        .set("measuredPull", "640 N")
        .set("rig", "tail-3")
        .set("climbHeight", "11 m")
        .set("wayDown", "descend")
        .set("secondPerson", "rescuer");
    let inputs = can_i_climb::Inputs::of(&draft)?;
    Ok(words::report(&can_i_climb::ask(&inputs, Effort::FULL), view))
}

/// It line by line, a line a figure.
#[must_use]
pub fn lines(report: &Report) -> Vec<String> {
    let mut lines = vec![report.verdict.text.to_owned(), report.first.clone(), report.second.clone(), String::new()];
    lines.extend(report.figures.iter().map(|figure| {
        let range = figure.range.as_deref().unwrap_or_default();
        format!("{:<44} {:>8}   {range}", figure.noun, figure.text).trim_end().to_owned()
    }));
    lines
}

fn main() {
    let view = View::default();
    match answer(view) {
        Ok(report) => {
            println!("{}", lines(&report).join("\n"));
            // They are part of the answer.
            for caution in &report.cautions {
                eprintln!("! {}", caution.text);
            }
        }
        Err(errors) => {
            for error in words::error_lines(&errors, view) {
                eprintln!("{}", error.message);
            }
        }
    }
}
