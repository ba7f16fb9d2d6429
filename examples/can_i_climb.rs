//! Prints the numbers of the README: one climber, one oak, one rig.

use boughline::Draft;
use boughline::quantity::View;
use boughline::question::{Effort, can_i_climb};
use boughline::words::{error_lines, report};

fn main() {
    let draft = Draft::new()
        .set("bodyMass", "80 kg")
        .set("stature", "175 cm")
        .set("measuredPull", "520 N")
        .set("rig", "tail-3")
        .set("climbHeight", "11 m");
    let view = View::default();
    match can_i_climb::Inputs::of(&draft) {
        Ok(inputs) => {
            let report = report(&can_i_climb::ask(&inputs, Effort::FULL), view);
            println!("{}\n{}\n{}\n", report.verdict.text, report.first, report.second);
            for figure in report.figures {
                println!("{:32} {:>10}  {}", figure.noun, figure.text, figure.range.unwrap_or_default());
            }
        }
        Err(errors) => error_lines(&errors, view).iter().for_each(|error| println!("{}", error.message)),
    }
}
