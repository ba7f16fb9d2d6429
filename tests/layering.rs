//! The storeys of the house: each uses only those below it, question files never use each other, and inside a storey
//! files use each other without a cycle.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, reason = "a file that cannot be read fails the test")]

use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// From the ground floor up. A storey uses itself and whatever stands before it.
const STOREYS: &[&str] = &[
    "told", "float", "quantity", "source", "field", "chance", "gear", "hitch", "reeving", "error", "draft", "climber",
    "tree", "rope", "cord", "descent", "ascent", "question", "link", "method", "words", "wasm",
];

fn sources() -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join("src")];
    while let Some(folder) = folders.pop() {
        for entry in std::fs::read_dir(folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|ending| ending == "rs") {
                found.push(path);
            }
        }
    }
    found.sort();
    found
}

/// The path inside `src/`, without the ending: `["reeving", "linear"]`.
fn place(path: &Path) -> Vec<String> {
    let inside = path.strip_prefix(Path::new(env!("CARGO_MANIFEST_DIR")).join("src")).unwrap().with_extension("");
    inside.iter().map(|part| part.to_str().unwrap().to_owned()).collect()
}

/// The code without comments, strings left as they are, and without its tests.
fn code(path: &Path) -> String {
    let text = std::fs::read_to_string(path).unwrap();
    let text = text.split("#[cfg(test)]").next().unwrap();
    text.lines().map(|line| line.split("//").next().unwrap()).collect::<Vec<_>>().join("\n")
}

/// What follows each `root::` in the code: first names, with groups opened.
fn uses(code: &str, root: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    for (at, _) in code.match_indices(root) {
        let before = code[..at].chars().next_back();
        if before.is_some_and(|c| c.is_alphanumeric() || c == '_' || c == ':') {
            continue;
        }
        let rest = &code[at + root.len()..];
        if let Some(group) = rest.strip_prefix('{') {
            let (mut depth, mut name) = (0, String::new());
            for c in group.chars() {
                match c {
                    '}' if depth == 0 => break,
                    '{' => depth += 1,
                    '}' => depth -= 1,
                    ',' if depth == 0 => names.extend(first_name(&std::mem::take(&mut name))),
                    _ if depth == 0 => name.push(c),
                    _ => {}
                }
            }
            names.extend(first_name(&name));
        } else {
            names.extend(first_name(rest));
        }
    }
    names
}

fn first_name(text: &str) -> Option<String> {
    let name: String = text.trim_start().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect();
    (!name.is_empty()).then_some(name)
}

fn floor(storey: &str) -> Option<usize> {
    STOREYS.iter().position(|floor| *floor == storey)
}

#[test]
fn every_storey_has_its_floor_and_uses_none_above_it() {
    let mut seen = 0;
    for path in sources() {
        let place = place(&path);
        if place == ["lib"] {
            continue;
        }
        let own = floor(&place[0]).unwrap_or_else(|| panic!("{} has no floor", place[0]));
        for name in uses(&code(&path), "crate::") {
            // Re-exports of the crate itself, and its macros.
            let name = if name == "Draft" { "draft".to_owned() } else { name };
            let other = floor(&name).unwrap_or_else(|| panic!("{place:?} uses {name}, which has no floor"));
            assert!(other <= own, "{place:?} uses {name}, which stands above it");
            seen += usize::from(other < own);
        }
    }
    assert!(seen > 50, "the test sees uses at all: {seen}");
}

#[test]
fn only_float_names_libm_and_only_wasm_names_the_boundary() {
    for path in sources() {
        let (place, code) = (place(&path), code(&path));
        let only = |word: &str, home: &str| assert!(!code.contains(word) || place[0] == home, "{place:?} names {word}");
        only("libm::", "float");
        only("wasm_bindgen", "wasm");
        only("js_sys", "wasm");
    }
}

#[test]
fn question_files_never_use_each_other() {
    let questions: BTreeSet<String> = sources()
        .iter()
        .map(|path| place(path))
        .filter(|p| p.len() == 3 && p[0] == "question")
        .map(|p| p[1].clone())
        .collect();
    assert!(questions.contains("can_i_climb"));
    for path in sources() {
        let place = place(&path);
        if place.len() == 3 && place[0] == "question" {
            let code = code(&path);
            for other in questions.iter().filter(|other| **other != place[1]) {
                assert!(!code.contains(&format!("question::{other}")), "{place:?} uses {other}");
            }
        }
    }
}

#[test]
fn files_of_a_storey_use_each_other_without_a_cycle() {
    let mut folders: BTreeMap<Vec<String>, Vec<PathBuf>> = BTreeMap::new();
    for path in sources() {
        let place = place(&path);
        folders.entry(place[..place.len() - 1].to_vec()).or_default().push(path);
    }
    let mut edges = 0;
    for (folder, files) in folders.into_iter().filter(|(folder, _)| !folder.is_empty()) {
        let contents = files.iter().find(|path| path.ends_with("mod.rs")).map(|path| code(path)).unwrap();
        let names: Vec<String> = files.iter().map(|path| place(path).pop().unwrap()).collect();
        // Which file a re-exported name comes from.
        let mut homes: BTreeMap<String, String> = BTreeMap::new();
        for name in names.iter().filter(|name| *name != "mod") {
            for exported in uses(&contents, &format!("{name}::")) {
                homes.insert(exported, name.clone());
            }
        }
        let mut graph: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
        for (name, path) in names.iter().zip(&files).filter(|(name, _)| *name != "mod") {
            let used = uses(&code(path), "super::").into_iter().filter_map(|used| {
                let file = if names.contains(&used) { Some(used) } else { homes.get(&used).cloned() };
                file.filter(|file| file != name)
            });
            graph.insert(name.clone(), used.collect());
        }
        edges += graph.values().map(BTreeSet::len).sum::<usize>();
        // Files that use nothing left are taken away; what remains goes round in a circle.
        while let Some(free) = graph.iter().find(|(_, used)| used.iter().all(|u| !graph.contains_key(u))) {
            let free = free.0.clone();
            graph.remove(&free);
        }
        assert!(graph.is_empty(), "{folder:?} goes round: {graph:?}");
    }
    assert!(edges > 40, "the test sees uses at all: {edges}");
}
