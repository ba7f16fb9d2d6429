//! The answer to "Out of which hanks?" in words.

use super::assumed::assumed_too;
use super::cord_length::usual as usual_of;
use super::cut_caution::cut_caution;
use super::cut_cord::cord_note;
use super::cut_gear::gear_lines;
use super::cut_proof::proof;
use super::cut_rope::{rope_figures, rope_lines, rope_note};
use super::figure::figure;
use super::phrase::{listed, short};
use super::record::records;
use super::source::cited;
use super::template::{said, worded};
use super::{CautionLine, Figure, SourceLine, WorkDone};
use crate::cord::cutting::{Best, Cut};
use crate::field::Spread;
use crate::quantity::{View, joined};
use crate::question::cut_plan::{Answer, Kind, KindPlan, Outcome};
use crate::source::{GEOMETRY, JUDGED};

records! {
    /// A cord of a hank.
    pub struct CutLine {
        /// What it is for; empty where nothing is said.
        pub noun: String,
        /// Its cut length, in metres.
        pub value: f64,
        /// The same as people read it.
        pub text: String,
    }

    /// A hank, and what is cut out of it.
    pub struct HankLine {
        /// What it is.
        pub noun: String,
        /// Its length, in metres.
        pub value: f64,
        /// The cords, in the order they are cut.
        pub cuts: Vec<CutLine>,
        /// What is left of it.
        pub left: CutLine,
        /// What cuts and ends take.
        pub lost: CutLine,
    }

    /// The plan for cords of one diameter and fibre.
    pub struct CutKind {
        /// Diameter and fibre, as an id.
        pub id: String,
        /// What people call it.
        pub noun: String,
        /// What to buy; or why there is no plan, and what to do.
        pub text: String,
        /// What is proved, and how far off it is at most; empty where there is no plan.
        pub proof: String,
        /// `proved`, `not-proved` or `none`.
        pub standing: &'static str,
        /// The hanks, the longest first.
        pub hanks: Vec<HankLine>,
        /// What it comes to.
        pub figures: Vec<Figure>,
        /// What to buy, a line for each.
        pub shopping: Vec<String>,
    }

    /// The answer to "Out of which hanks?"
    pub struct CutReport {
        /// What to buy.
        pub first: String,
        /// What is proved of it.
        pub second: String,
        /// The defaults it rests on.
        pub assumed: String,
        /// What all of it comes to.
        pub figures: Vec<Figure>,
        /// The thinnest first.
        pub kinds: Vec<CutKind>,
        /// Everything to buy, a line for each.
        pub shopping: Vec<String>,
        /// What of the rig's own is on the plan without being entered, or had already; and what is missing for the rest.
        pub notes: Vec<String>,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources it rests on.
        pub sources: Vec<SourceLine>,
        /// The steps it rests on.
        pub effort: WorkDone,
    }
}

/// The answer as people read it.
///
/// # Guarantees
/// No figure is worked out here but sums of the answer's.
#[must_use]
pub fn cut_report(answer: &Answer, view: View) -> CutReport {
    let (mut kinds, mut shopping, mut cautions) = (Vec::new(), Vec::new(), Vec::new());
    let (mut all, mut open) = (Sums::default(), Vec::new());
    let mut lacking = String::new();
    for plan in &answer.kinds {
        let (line, sums) = kind(answer, plan, view);
        all.add(&sums);
        match line.standing {
            "none" if lacking.is_empty() => lacking.clone_from(&line.text),
            "not-proved" => open.push(line.noun.clone()),
            _ => {}
        }
        shopping.extend_from_slice(&line.shopping);
        kinds.push(line);
    }
    for caution in &answer.cautions {
        cautions.push(cut_caution(*caution, view));
    }
    let buy = if shopping.is_empty() { String::new() } else { worded("Buy {}.", &[&listed(&shopping)]) };
    let mut second = String::new();
    if !open.is_empty() {
        second = worded("Not proved of {}: below stands how far off it is at the most.", &[&listed(&open)]);
    } else if lacking.is_empty() {
        second = "Proved: of every cord nothing less would do.".to_owned();
    }
    let first = match (lacking.is_empty(), buy.is_empty()) {
        (true, true) => "Nothing is to buy: these cords come out of what you have.".to_owned(),
        (true, false) => buy,
        (false, true) => lacking,
        (false, false) => {
            second = worded("For the rest: {} {}", &[&buy, &second]);
            lacking
        }
    };
    if let Some(gear) = &answer.gear {
        shopping.extend(gear_lines(gear, view));
        shopping.extend(rope_lines(answer.rope.as_ref(), view));
    }
    let mut figures = all.figures(answer, view);
    let (mut notes, mut usual) = (Vec::new(), Vec::new());
    for cord in &answer.rig_cords {
        notes.push(cord_note(cord, view));
        if let Ok(told) = &cord.made {
            usual.extend(usual_of(&told.usual, &told.make, &told.cut, view));
        }
    }
    if let Some(rope) = &answer.rope {
        notes.extend(rope_note(rope, view));
        figures.extend(rope_figures(rope, view));
    }
    let mut lists = vec![figures.as_slice()];
    for kind in &kinds {
        lists.push(&kind.figures);
    }
    CutReport {
        first,
        second,
        assumed: assumed_too(&usual, &answer.assumed, view),
        sources: cited(&lists, &cautions, &[]),
        figures,
        kinds,
        shopping,
        notes,
        cautions,
        effort: WorkDone { samples: answer.steps as u32, more: answer.more },
    }
}

/// What plans come to together, in metres.
#[derive(Default)]
struct Sums {
    wanted: f64,
    bought: f64,
    had: f64,
    left: f64,
    lost: f64,
    hanks: usize,
    /// In hundredths; none where anything has no price.
    price: Option<u64>,
    priced: usize,
    kinds: usize,
}

impl Sums {
    fn add(&mut self, other: &Self) {
        self.wanted += other.wanted;
        self.bought += other.bought;
        self.had += other.had;
        self.left += other.left;
        self.lost += other.lost;
        self.hanks += other.hanks;
        self.price = Some(self.price.unwrap_or(0) + other.price.unwrap_or(0));
        self.priced += other.priced;
        self.kinds += other.kinds;
    }

    fn figures(&self, answer: &Answer, view: View) -> Vec<Figure> {
        if self.kinds == 0 {
            return Vec::new();
        }
        let one = |id, noun, value: f64, slot| figure(id, noun, &Spread::point(value), slot, view, &[GEOMETRY, JUDGED]);
        let mut bought = one("cordBought", "cord to buy", self.bought, "{M}");
        let point = Spread::point;
        let sum = [&point(self.wanted), &point(self.left), &point(self.lost)];
        let sum = said("cords {M} + left over {M} + cuts and ends {M}", &sum, &[], view);
        bought.workings.push(if self.had > 0.0 {
            said("{M} and what you have, {M} = {}", &[&point(self.bought), &point(self.had)], &[&sum], view)
        } else {
            said("{M} = {}", &[&point(self.bought)], &[&sum], view)
        });
        bought.workings.push(said(
            "A cut takes {c1}, a hank loses {c1}.",
            &[&point(answer.kerf), &point(answer.end)],
            &[],
            view,
        ));
        let mut wanted = one("cordWanted", "cut lengths of all cords", self.wanted, "{M}");
        wanted.workings.push("Each as long as was said, added up.".to_owned());
        let mut left = one("cordLeft", "left over in all", self.left, "{M}");
        left.workings.push("What is behind the last cut of every hank.".to_owned());
        let mut figures = vec![bought, wanted, left];
        if self.priced == self.kinds {
            let mut price = one("cordPrice", "price in all", self.price.unwrap_or(0) as f64 / 100.0, "{2}");
            price.workings.push("The prices that were said, added up, in whatever they were said in.".to_owned());
            figures.push(price);
        }
        figures
    }
}

/// Diameter and fibre.
fn kind_noun(kind: &Kind, view: View) -> String {
    worded("{} mm {} cord", &[&short(f64::from(kind.diameter) / 10.0, view), kind.fibre.named().noun])
}

fn kind(answer: &Answer, plan: &KindPlan, view: View) -> (CutKind, Sums) {
    let KindPlan { kind, outcome, .. } = plan;
    let noun = kind_noun(kind, view);
    let id = joined(&[&short(f64::from(kind.diameter) / 10.0, View::default()), "mm-", kind.fibre.named().id]);
    let mut line = CutKind {
        id,
        noun,
        text: String::new(),
        proof: String::new(),
        standing: "none",
        hanks: Vec::new(),
        figures: Vec::new(),
        shopping: Vec::new(),
    };
    let Outcome::Plan(best) = outcome else {
        line.text = no_plan(kind, outcome, &line.noun, view);
        return (line, Sums::default());
    };
    let mut sums = Sums { kinds: 1, priced: usize::from(plan.is_priced), ..Sums::default() };
    let mut same: Vec<(usize, usize)> = Vec::new();
    for cut in &best.plan.hanks {
        line.hanks.extend(hank(answer, kind, cut, &mut sums, view));
        match same.iter_mut().find(|(stock, _)| *stock == cut.stock) {
            Some((_, count)) => *count += 1,
            None => same.push((cut.stock, 1)),
        }
    }
    sums.hanks = line.hanks.len();
    let mut had = Vec::new();
    for (stock, count) in same {
        let Some(hank) = kind.hanks.get(stock) else { continue };
        let numbers = [&Spread::point(count as f64), &Spread::point(hank.length)];
        let hanks = if count == 1 { "{0} hank of {M} of {}" } else { "{0} hanks of {M} of {}" };
        let text = said(hanks, &numbers, &[&line.noun], view);
        if hank.price == Some(0) { had.push(text) } else { line.shopping.push(text) }
    }
    line.text = match (line.shopping.is_empty(), had.is_empty()) {
        (false, true) => worded("Buy {}.", &[&listed(&line.shopping)]),
        (false, false) => worded("Buy {}, and cut what you have: {}.", &[&listed(&line.shopping), &listed(&had)]),
        _ => worded("Cut what you have: {}.", &[&listed(&had)]),
    };
    line.proof = proof(plan, best, view);
    line.standing = if best.proved { "proved" } else { "not-proved" };
    line.figures = sums.figures(answer, view);
    line.figures.push(longest_left(best, view));
    (line, sums)
}

/// The longest single piece that is left.
fn longest_left(best: &Best, view: View) -> Figure {
    let mut longest = 0;
    for cut in &best.plan.hanks {
        longest = longest.max(cut.left);
    }
    let mut figure =
        figure("longestLeft", "longest piece left over", &Spread::point(tenths(longest)), "{M}", view, &[GEOMETRY]);
    figure.workings.push("Behind the last cut of one hank, without what is lost of it.".to_owned());
    figure
}

fn tenths(length: u32) -> f64 {
    f64::from(length) / 10_000.0
}

/// A hank, and what is cut out of it; what it comes to is added up.
fn hank(answer: &Answer, kind: &Kind, cut: &Cut, sums: &mut Sums, view: View) -> Option<HankLine> {
    let hank = kind.hanks.get(cut.stock)?;
    let line = |noun: &str, value: f64| CutLine {
        noun: noun.to_owned(),
        value,
        text: said("{M}", &[&Spread::point(value)], &[], view),
    };
    let (mut cuts, mut wanted) = (Vec::new(), 0.0);
    for cord in &cut.cords {
        let cord = kind.cords.get(*cord)?;
        wanted += cord.length;
        cuts.push(line(&cord.name, cord.length));
    }
    let left = tenths(cut.left);
    let lost = (hank.length - wanted - left).max(0.0);
    sums.wanted += wanted;
    sums.left += left;
    sums.lost += lost;
    if hank.price == Some(0) {
        sums.had += hank.length;
    } else {
        sums.bought += hank.length;
    }
    sums.price = Some(sums.price.unwrap_or(0) + u64::from(hank.price.unwrap_or(0)));
    let noun = said("hank of {M}", &[&Spread::point(hank.length)], &[], view);
    let lost = line(if answer.kerf > 0.0 { "cuts and ends" } else { "ends" }, lost);
    Some(HankLine { noun, value: hank.length, cuts, left: line("left over", left), lost })
}

/// Why there is no plan, and what to do.
fn no_plan(kind: &Kind, outcome: &Outcome, noun: &str, view: View) -> String {
    match outcome {
        Outcome::TooLong { cord, most } => {
            let cord = kind.cords.get(*cord);
            let name = cord.map(|cord| cord.name.as_str()).filter(|name| !name.is_empty()).unwrap_or("longest cord");
            let length = Spread::point(cord.map_or(0.0, |cord| cord.length));
            said(
                "No plan for the {}: the {} of {M} is longer than any hank gives, {M}. Add a longer hank.",
                &[&length, &Spread::point(*most)],
                &[noun, name],
                view,
            )
        }
        Outcome::RunsOut { proved: true } => worded(
            "No plan for the {}: the hanks there are do not do for these cords. Add hanks, or more of one.",
            &[noun],
        ),
        Outcome::RunsOut { proved: false } => worded(
            "No plan for the {} was found with the hanks there are, and whether there is one is not known. Add hanks, or more of one.",
            &[noun],
        ),
        _ => {
            worded("No plan for the {}: more than 200 cords are too many for one plan. Cut them in two plans.", &[noun])
        }
    }
}
