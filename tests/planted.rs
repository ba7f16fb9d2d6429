//! Single wrong figures, each of which a test is to catch: a check that never failed is none.
//!
//! `data/planted.tsv`: the file, what stands there, what is planted instead, the test that is to fail, and what it holds
//! the figure against. Quick: every row still stands in its file, and its test is there. Long: each is planted by turn in
//! a copy of the crate, and its test must fail, and by its own words.
#![cfg(not(target_arch = "wasm32"))]
#![allow(clippy::expect_used, clippy::panic, reason = "what is missing fails the test")]

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

const COLUMNS: &str = "file\tstands\tplanted\ttest\tagainst";

/// A wrong figure.
struct Row {
    file: &'static str,
    stands: &'static str,
    planted: &'static str,
    /// As cargo is asked: `--lib` or `--test FILE`, then the test.
    test: &'static str,
    against: &'static str,
}

fn rows() -> Vec<Row> {
    let table = include_str!("data/planted.tsv");
    assert!(table.starts_with(&format!("{COLUMNS}\n")));
    let row = |line: &'static str| match line.split('\t').collect::<Vec<_>>().as_slice() {
        &[file, stands, planted, test, against] => Row { file, stands, planted, test, against },
        _ => panic!("five columns are wanted: {line}"),
    };
    table.lines().skip(1).map(row).collect()
}

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn text_of(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|why| panic!("{}: {why}", path.display()))
}

/// The name of a row's test, without the modules it is in.
fn name(row: &Row) -> &'static str {
    row.test.rsplit([' ', ':']).next().unwrap_or_default()
}

#[test]
fn every_planted_figure_still_stands_once_and_its_test_is_there() {
    let rows = rows();
    assert!(rows.len() >= 10, "{}", rows.len());
    for row in &rows {
        let text = text_of(&root().join(row.file));
        assert_eq!(text.matches(row.stands).count(), 1, "{}: {}", row.file, row.stands);
        assert!(row.stands != row.planted && !row.against.is_empty(), "{}", row.file);
        let of = |kind: &str| row.test.strip_prefix(kind);
        let tests = match (
            of("--test ").and_then(|test| test.split_once(' ')),
            of("--lib ").and_then(|test| test.split_once("::tests::")),
        ) {
            (Some((test, _)), _) => files(&["tests", &format!("tests/{test}")]),
            (_, Some((module, _))) => vec![format!("src/{}.rs", module.replace("::", "/")).into()],
            _ => Vec::new(),
        };
        let is_there = |file: &PathBuf| text_of(&root().join(file)).contains(&format!("fn {}(", name(row)));
        assert!(tests.iter().any(is_there), "{}", row.test);
    }
}

/// The Rust files right in these folders, if there are any.
fn files(folders: &[&str]) -> Vec<PathBuf> {
    let entries = folders.iter().filter_map(|folder| fs::read_dir(root().join(folder)).ok()).flatten();
    entries
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|end| end == "rs"))
        .collect()
}

fn copy(from: &Path, to: &Path) {
    if from.is_dir() {
        fs::create_dir_all(to).expect("a folder");
        for entry in fs::read_dir(from).expect("a folder") {
            let entry = entry.expect("an entry");
            copy(&entry.path(), &to.join(entry.file_name()));
        }
    } else {
        fs::copy(from, to).expect("a copy");
    }
}

/// Whether a test holds in the copy, and what it says where it does not.
fn holds(tree: &Path, target: &Path, test: &str) -> Result<(), String> {
    let cargo = std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into());
    let (of, test) = test.rsplit_once(' ').expect("where it is, and its name");
    let run = Command::new(cargo)
        .args(["test", "--quiet", "--locked", "--offline", "--config", "profile.test.opt-level=1"])
        .args(of.split(' '))
        .args(["--", "--exact", test])
        .env("CARGO_TARGET_DIR", target)
        .env("RUST_BACKTRACE", "0")
        .current_dir(tree)
        .output()
        .expect("cargo runs");
    let told = String::from_utf8_lossy(&run.stdout).into_owned() + &String::from_utf8_lossy(&run.stderr);
    let is_the_one = |passed: u32, failed: u32| told.contains(&format!("{passed} passed; {failed} failed;"));
    match run.status.success() {
        true if is_the_one(1, 0) => Ok(()),
        false if is_the_one(0, 1) => Err(words(&told)),
        _ => panic!("{test} did not run: {told}"),
    }
}

/// What a test said when it failed, in a line.
fn words(told: &str) -> String {
    let behind = told.split("panicked at ").nth(1).unwrap_or_default();
    let lines = behind.lines().skip(1).take_while(|line| !line.is_empty() && !line.starts_with("note:"));
    let line = lines.collect::<Vec<_>>().join(" ");
    line.chars().take(200).collect::<String>().replace('|', "/")
}

#[test]
#[ignore = "long: pkg-config/prove planted"]
fn prove_planted() {
    let target = PathBuf::from(std::env::var_os("CARGO_TARGET_DIR").unwrap_or_else(|| root().join("target").into()));
    let (tree, built) = (target.join("planted/tree"), target.join("planted/built"));
    if tree.exists() {
        fs::remove_dir_all(&tree).expect("an old copy goes");
    }
    fs::create_dir_all(&tree).expect("a folder");
    for part in ["src", "tests", "examples", "Cargo.toml", "Cargo.lock", "README.md", "rust-toolchain.toml"] {
        copy(&root().join(part), &tree.join(part));
    }
    let rows = rows();
    let mut tests: Vec<&str> = rows.iter().map(|row| row.test).collect();
    tests.sort_unstable();
    tests.dedup();
    for test in tests {
        holds(&tree, &built, test).unwrap_or_else(|said| panic!("{test} fails as it is: {said}"));
    }
    let columns = "| file | stands | planted | test | held against | what it says |";
    let mut table = format!("{columns}\n|---|---|---|---|---|---|\n");
    let mut missed = Vec::new();
    for row in rows {
        let (file, text) = (tree.join(row.file), text_of(&root().join(row.file)));
        fs::write(&file, text.replace(row.stands, row.planted)).expect("planted");
        let found = holds(&tree, &built, row.test);
        fs::write(&file, text).expect("taken out again");
        let Row { file, stands, planted, test, against } = row;
        let said = found.err().filter(|said| !said.is_empty());
        if said.is_none() {
            missed.push(format!("{file}: {planted}"));
        }
        let said = said.unwrap_or_else(|| "not caught".to_owned());
        println!("{file}: {planted}: {said}");
        table += &format!("| {file} | `{stands}` | `{planted}` | `{test}` | {against} | {said} |\n");
        fs::write(target.join("planted.md"), &table).expect("the table");
    }
    assert!(missed.is_empty(), "not caught: {missed:?}");
}
