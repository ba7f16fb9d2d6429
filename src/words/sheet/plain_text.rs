//! A sheet as lines of plain text.

use super::Sheet;
use crate::field::Spread;
use crate::quantity::View;
use crate::words::template::say;

/// The sheet as lines of plain text.
pub(super) fn written(sheet: &Sheet, link: &str) -> String {
    let mut text = String::new();
    underlined(&mut text, sheet.title, '=');
    for section in &sheet.sections {
        if !section.heading.is_empty() {
            text.push('\n');
            underlined(&mut text, &section.heading, if section.level > 2 { '.' } else { '-' });
        }
        for block in &section.told() {
            text.push('\n');
            if !block.text.is_empty() {
                line(&mut text, "", &block.text);
            }
            let mut number = 0.0;
            for item in &block.items {
                number += 1.0;
                match block.kind {
                    "steps" => {
                        say(&mut text, "{0}. ", &[&Spread::point(number)], &[], View::default());
                        line(&mut text, "", item);
                    }
                    "blanks" => line(&mut text, "", item),
                    _ => line(&mut text, "- ", item),
                }
            }
            table(&mut text, &block.rows);
        }
    }
    text.push('\n');
    if !link.is_empty() {
        line(&mut text, "", link);
    }
    line(&mut text, "", &sheet.version);
    text
}

/// A line, whatever breaks are in what was typed.
fn line(text: &mut String, before: &str, said: &str) {
    text.push_str(before);
    for letter in said.chars() {
        text.push(if letter.is_control() { ' ' } else { letter });
    }
    text.push('\n');
}

fn underlined(text: &mut String, heading: &str, with: char) {
    line(text, "", heading);
    for _ in heading.chars() {
        text.push(with);
    }
    text.push('\n');
}

/// The rows with their columns under each other.
fn table(text: &mut String, rows: &[Vec<String>]) {
    for row in rows {
        let mut blanks = 0;
        for (column, cell) in row.iter().enumerate() {
            for _ in 0..blanks {
                text.push(' ');
            }
            for letter in cell.chars() {
                text.push(if letter.is_control() { ' ' } else { letter });
            }
            let mut widest = 0;
            for other in rows {
                widest = widest.max(other.get(column).map_or(0, |cell| cell.chars().count()));
            }
            // An empty cell is no reason for blanks at the end of a line.
            blanks = if cell.is_empty() { blanks } else { 0 } + 2 + widest - cell.chars().count();
        }
        text.push('\n');
    }
}
