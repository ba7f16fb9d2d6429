//! A sheet as Markdown, as forums read it: a paragraph a line, and tables.

use super::Sheet;
use crate::field::Spread;
use crate::quantity::View;
use crate::words::template::say;

/// The sheet as Markdown.
pub(super) fn written(sheet: &Sheet, link: &str) -> String {
    let mut text = String::new();
    line(&mut text, "# ", sheet.title);
    for section in &sheet.sections {
        if !section.heading.is_empty() {
            text.push('\n');
            for _ in 0..section.level {
                text.push('#');
            }
            line(&mut text, " ", &section.heading);
        }
        for block in &section.told() {
            text.push('\n');
            if !block.text.is_empty() {
                line(&mut text, "", &block.text);
                if !block.items.is_empty() || !block.rows.is_empty() {
                    text.push('\n');
                }
            }
            let mut number = 0.0;
            for item in &block.items {
                number += 1.0;
                if block.kind == "steps" {
                    say(&mut text, "{0}. ", &[&Spread::point(number)], &[], View::default());
                } else {
                    text.push_str("- ");
                }
                line(&mut text, "", item);
            }
            table(&mut text, &block.rows);
        }
    }
    if !link.is_empty() {
        // A whole address between angle brackets is a link; a bare fragment is kept as it is between backticks.
        let [before, after] = if link.starts_with('#') { ["`", "`"] } else { ["<", ">"] };
        for part in ["\n", before, link, after, "\n"] {
            text.push_str(part);
        }
    }
    text.push('\n');
    line(&mut text, "", &sheet.version);
    text
}

fn table(text: &mut String, rows: &[Vec<String>]) {
    for (at, row) in rows.iter().enumerate() {
        text.push('|');
        for cell in row {
            text.push(' ');
            escape(text, cell);
            text.push_str(" |");
        }
        text.push('\n');
        if at == 0 {
            text.push('|');
            for _ in row {
                text.push_str(" --- |");
            }
            text.push('\n');
        }
    }
}

fn line(text: &mut String, before: &str, said: &str) {
    text.push_str(before);
    escape(text, said);
    text.push('\n');
}

/// Goes on with words that mean nothing but themselves, whatever was typed into a box.
fn escape(text: &mut String, said: &str) {
    let mut in_number = true;
    let mut letters = said.char_indices().peekable();
    while let Some((at, letter)) = letters.next() {
        let special = match letter {
            '\\' | '`' | '*' | '_' | '[' | ']' | '<' | '>' | '|' | '~' | '&' | '$' | '^' | '!' => true,
            // These begin a heading or a list where they stand first.
            '#' | '+' | '-' | '=' | ':' => at == 0,
            // So does a number with one of these and a blank behind it.
            '.' | ')' => in_number && at > 0 && letters.peek().is_none_or(|(_, next)| next.is_whitespace()),
            _ => false,
        };
        in_number = in_number && letter.is_ascii_digit();
        if special {
            text.push('\\');
        }
        text.push(if letter.is_control() { ' ' } else { letter });
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn escaped(said: &str) -> String {
        let mut text = String::new();
        escape(&mut text, said);
        text
    }

    #[test]
    fn what_was_typed_is_no_markdown() {
        for (said, wanted) in [
            ("*foot* _loop_", "\\*foot\\* \\_loop\\_"),
            ("<img src=x onerror=y>", "\\<img src=x onerror=y\\>"),
            ("[a](b) | `c`", "\\[a\\](b) \\| \\`c\\`"),
            ("1. one", "1\\. one"),
            ("12) one", "12\\) one"),
            ("1.5 m, 2.5 m", "1.5 m, 2.5 m"),
            ("3.", "3\\."),
            ("- one - two", "\\- one - two"),
            ("# one #2", "\\# one #2"),
            ("one\ntwo\tthree", "one two three"),
            ("a & b ~c~ !d ^e $f \\g", "a \\& b \\~c\\~ \\!d \\^e \\$f \\\\g"),
            (". )", ". )"),
            ("80 kg", "80 kg"),
        ] {
            assert_eq!(escaped(said), wanted);
        }
    }
}
