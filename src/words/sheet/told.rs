//! Any answer as sections, from what crosses to JavaScript: a key that is new is on paper without another word.

use super::{Block, Section};
use crate::quantity::{View, plain};
use crate::words::record::Plain;
use crate::words::template::worded;

/// The answer as sections; what stands under no heading comes first.
pub(super) fn told(answer: &Plain) -> Vec<Section> {
    let mut sections = vec![Section::of("answer", "", 2)];
    let entries = entries(answer);
    for (key, value) in entries {
        if heading(key).is_empty() {
            tell(&mut sections, key, value, 2);
        }
    }
    for (key, value) in entries {
        let name = heading(key);
        if !name.is_empty() && !is_bare(value) {
            sections.push(Section::of(key, name, 2));
            tell(&mut sections, key, value, 2);
        }
    }
    // A section in which nothing stands, such as of a chart alone, is none; a heading over others is one.
    let mut kept: Vec<Section> = Vec::new();
    for (at, section) in sections.iter().enumerate() {
        let over = sections.get(at + 1).is_some_and(|next| next.level > section.level);
        if over || !section.blocks.is_empty() {
            kept.push(section.clone());
        }
    }
    kept
}

/// Goes on in the last section with what stands under a key.
fn tell(sections: &mut Vec<Section>, key: &'static str, value: &Plain, level: u32) {
    if is_unread(key, value) {
        return;
    }
    match value {
        Plain::List(list) => tell_list(sections, key, list, level),
        Plain::Text(text) => say(sections, text),
        Plain::Object(_) if key == "verdict" => {
            if let Some(section) = sections.last_mut() {
                section.blocks.push(Block::verdict(text_of(value, "text")));
            }
        }
        Plain::Object(_) if is_figure(value) => say(sections, &in_words(value)),
        Plain::Object(entries) if key == "effort" && entries.contains(&("more", Plain::Truth(true))) => {
            say(sections, "More reckoning could still change this answer.");
        }
        Plain::Object(entries) => {
            for (key, value) in entries {
                tell(sections, key, value, level + 1);
            }
        }
        _ => {}
    }
}

fn tell_list(sections: &mut Vec<Section>, key: &'static str, list: &[Plain], level: u32) {
    let lead = if level > 2 { heading(key) } else { "" };
    let block = match list.first() {
        None => return,
        Some(first) if is_figure(first) => table(lead, &["noun", "text", "range"], list),
        Some(_) if key == "rows" => table(lead, &["strokes", "time", "height", "arms", "hands", "next"], list),
        Some(first)
            if level == 2 && has(first, |key, value| matches!(value, Plain::List(_)) && !is_unread(key, value)) =>
        {
            for item in list {
                sections.push(Section::of(key, text_of(item, "noun"), level + 1));
                for (key, value) in entries(item) {
                    if *key != "noun" {
                        tell(sections, key, value, level + 1);
                    }
                }
            }
            return;
        }
        Some(first) if is_row(first) => table(
            lead,
            &["noun", "load", "peak", "strength", "ratio", "against", "pull", "rope", "people", "text"],
            list,
        ),
        Some(_) => {
            let mut lines = Vec::new();
            for item in list {
                let text = in_words(item);
                let grave = has(item, |key, value| key == "grave" && *value == Plain::Truth(true));
                lines.push(if grave { worded("Warning: {}", &[&text]) } else { text });
            }
            Block::list(lead, lines)
        }
    };
    if let Some(section) = sections.last_mut() {
        section.add(block);
    }
}

/// A paragraph, once in a section.
fn say(sections: &mut [Section], text: &str) {
    if let Some(section) = sections.last_mut()
        && section.blocks.iter().all(|block| block.text != text)
    {
        section.say(text);
    }
}

/// The objects as rows.
fn table(lead: &str, keys: &[&'static str], list: &[Plain]) -> Block {
    let (mut head, mut lines) = (Vec::new(), Vec::new());
    for key in keys {
        head.push(column(key));
    }
    for item in list {
        let mut line = Vec::new();
        for key in keys {
            let found = entries(item).iter().find(|(known, _)| known == key);
            line.push(match found {
                Some((_, Plain::Number(number))) => plain(*number, 0, View::default()),
                Some((_, figure)) if is_figure(figure) => figure_text(figure),
                Some((_, Plain::Text(text))) => text.clone(),
                _ => String::new(),
            });
        }
        lines.push(line);
    }
    Block::table(lead, &head, &lines)
}

/// Anything in one line: "noun: this; that".
fn in_words(value: &Plain) -> String {
    match value {
        Plain::Text(text) => text.clone(),
        Plain::List(list) => {
            let mut text = String::new();
            for item in list {
                add(&mut text, &in_words(item), "; ");
            }
            text
        }
        Plain::Object(_) if is_figure(value) => worded("{} {}", &[text_of(value, "noun"), &figure_text(value)]),
        Plain::Object(entries) => {
            let mut text = String::new();
            let mut after = " ";
            for (key, value) in entries {
                if !is_unread(key, value) {
                    let between = if text.ends_with(['.', ':']) { " " } else { after };
                    add(&mut text, &in_words(value), between);
                    after = if *key == "noun" || *key == "how" { ": " } else { "; " };
                }
            }
            text
        }
        _ => String::new(),
    }
}

fn add(text: &mut String, more: &str, between: &str) {
    if !text.is_empty() && !more.is_empty() {
        text.push_str(between);
    }
    text.push_str(more);
}

/// "12 m", or "12 m (11 m to 13 m)".
fn figure_text(figure: &Plain) -> String {
    match text_of(figure, "range") {
        "" => text_of(figure, "text").to_owned(),
        range => worded("{} ({})", &[text_of(figure, "text"), range]),
    }
}

/// Whether it has a name and figures, and nothing that takes a list.
fn is_row(value: &Plain) -> bool {
    let simple = !has(value, |key, value| matches!(value, Plain::List(_)) && !is_unread(key, value));
    simple && !text_of(value, "noun").is_empty() && has(value, |_, value| is_figure(value))
}

/// Whether it has a noun, a value and its text: a figure, or a length of cord.
fn is_figure(value: &Plain) -> bool {
    has(value, |key, _| key == "value") && has(value, |key, _| key == "text")
}

fn has(value: &Plain, is: impl Fn(&str, &Plain) -> bool) -> bool {
    entries(value).iter().any(|(key, value)| is(key, value))
}

fn entries(value: &Plain) -> &[(&'static str, Plain)] {
    if let Plain::Object(entries) = value { entries } else { &[] }
}

fn text_of<'a>(value: &'a Plain, key: &str) -> &'a str {
    match entries(value).iter().find(|(known, _)| *known == key) {
        Some((_, Plain::Text(text))) => text,
        _ => "",
    }
}

/// Whether nothing is there to head.
fn is_bare(value: &Plain) -> bool {
    match value {
        Plain::List(list) => list.is_empty(),
        Plain::Text(text) => text.is_empty(),
        Plain::Object(_) => false,
        _ => true,
    }
}

/// What is for programs and pictures, or told elsewhere: ids, workings, charts.
fn is_unread(key: &str, value: &Plain) -> bool {
    match key {
        "id" | "kind" | "standing" | "attached" | "place" | "state" | "fields" | "workings" | "levels" | "ropes"
        | "chart" | "slip" | "glance" | "shape" => true,
        // The ids of sources; the sources themselves are told.
        "sources" => matches!(value, Plain::List(list) if matches!(list.first(), None | Some(Plain::Text(_)))),
        // What a step holds by is in its sentence.
        "rope" => matches!(value, Plain::List(_)),
        _ => false,
    }
}

/// What stands over a key's section, or leads its list in; empty where nothing need.
fn heading(key: &str) -> &'static str {
    match key {
        "missing" => "Not entered yet",
        "legs" => "By the legs",
        "figures" => "Figures",
        "going" => "How the climb goes",
        "drawing" => "The rig",
        "parts" => "Parts",
        "rigs" => "Rig by rig",
        "gear" => "What it takes",
        "states" => "State by state",
        "items" | "pieces" => "Pieces",
        "limb" => "The limb",
        "checks" => "First checks",
        "kinds" => "Cords",
        "hanks" => "Hanks and cuts",
        "shopping" => "To buy",
        "notes" => "Of the rig",
        "steps" => "Step by step",
        "ways" => "Ways to the ground",
        "stages" => "Stages",
        "unload" => "What takes the weight off a jammed hitch",
        "hauling" => "Hauled from the ground",
        "before" => "Before you go",
        "plan" => "A plan to fill in",
        "cautions" => "Cautions",
        "sources" => "Sources",
        _ => "",
    }
}

/// What stands over a column.
fn column(key: &'static str) -> &'static str {
    match key {
        "noun" => "what",
        "text" => "likely",
        "strength" => "bears",
        "ratio" => "times the peak",
        "against" => "asked of it",
        "people" => "helpers",
        key => key,
    }
}
