//! An answer as people read it: what crosses the boundary, and what a sheet prints.

use super::chart::Chart;
use super::going::GoingReport;
use super::record::records;

records! {
    /// What is wrong, or missing, in one sentence.
    pub struct ErrorLine {
        /// The ids of the fields it concerns.
        pub fields: Vec<String>,
        /// The sentence.
        pub message: String,
    }

    /// The verdict in words.
    pub struct VerdictLine {
        /// `within-reach`, `at-limit`, `out-of-reach`, or `none`.
        pub id: &'static str,
        /// The words.
        pub text: &'static str,
    }

    /// A figure, its range, and how it comes about.
    pub struct Figure {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// The likely value, in SI; none where it is endless.
        pub value: Option<f64>,
        /// The low end, in SI; none where it is endless.
        pub low: Option<f64>,
        /// The high end, in SI; none where it is endless.
        pub high: Option<f64>,
        /// The likely value as people read it.
        pub text: String,
        /// The range as people read it; none where it has no width.
        pub range: Option<String>,
        /// How it comes about, a line a step.
        pub workings: Vec<String>,
        /// The ids of the sources it rests on.
        pub sources: Vec<&'static str>,
    }

    /// A stop of somebody's own rig, in the words of the notation.
    pub struct RigRow {
        /// What the rope does there.
        pub does: &'static str,
        /// Where.
        pub on: &'static str,
        /// With what; empty where there is nothing to say.
        pub with: String,
    }

    /// A tension.
    pub struct Tension {
        /// The likely value, in newtons.
        pub value: f64,
        /// The low end.
        pub low: f64,
        /// The high end.
        pub high: f64,
        /// As people read it.
        pub text: String,
    }

    /// A strand of a drawn rope.
    pub struct Strand {
        /// Its tension while pulling.
        pub tension: Tension,
    }

    /// A body in the drawing.
    pub struct Level {
        /// Its place, as an id.
        pub id: String,
        /// `tree`, `carriage`, `climber` or `ground`.
        pub kind: &'static str,
        /// What people call it.
        pub noun: String,
        /// How high it is above the ground in metres, where that is known.
        pub height: Option<f64>,
        /// The same as people read it.
        pub at: Option<String>,
    }

    /// A stop of a drawn rope.
    pub struct DrawnStop {
        /// `tied`, `turn`, `hitch`, `hand`, `knot` or `free`.
        pub kind: &'static str,
        /// The place of its body among the levels; none for a loose tail.
        pub level: Option<usize>,
        /// What people call it.
        pub noun: String,
        /// `grips` or `slides` while pulling; none for what is no hitch.
        pub state: Option<&'static str>,
        /// Whether its failure alone drops the climber.
        pub single: bool,
    }

    /// A drawn rope.
    pub struct DrawnRope {
        /// What people call it.
        pub noun: String,
        /// Its stops.
        pub stops: Vec<DrawnStop>,
        /// Its strands; strand `i` joins stops `i` and `i + 1`.
        pub strands: Vec<Strand>,
    }

    /// What a drawing of the rig needs.
    pub struct Drawing {
        /// The bodies, from the highest to the lowest.
        pub levels: Vec<Level>,
        /// The ropes.
        pub ropes: Vec<DrawnRope>,
        /// The drawing in words.
        pub text: String,
    }

    /// A part of the rig and what happens when it fails.
    pub struct PartLine {
        /// Its id in this answer.
        pub id: String,
        /// What people call it.
        pub noun: String,
        /// Whether its failure alone drops the climber.
        pub single: bool,
        /// What happens when it fails.
        pub text: String,
    }

    /// Something to be careful about.
    pub struct CautionLine {
        /// Its id.
        pub id: &'static str,
        /// Whether it can kill.
        pub grave: bool,
        /// The sentence.
        pub text: String,
        /// The ids of the sources it rests on; none where it only tells what this program does.
        pub sources: Vec<&'static str>,
    }

    /// A climb by the legs, beside the arms'.
    pub struct LegLine {
        /// `worth-a-trial`, `find-out` or `not-likely`.
        pub id: &'static str,
        /// How it stands, and what to find out.
        pub text: String,
        /// How it is done, and that nothing of it is reckoned.
        pub how: &'static str,
        /// The ids of the sources it rests on.
        pub sources: Vec<&'static str>,
    }

    /// A source.
    pub struct SourceLine {
        /// Its id.
        pub id: &'static str,
        /// Author, title, and how the figure was obtained.
        pub text: String,
    }

    /// The effort an answer rests on.
    pub struct WorkDone {
        /// Sampled climbs.
        pub samples: u32,
        /// Whether more could still change the answer.
        pub more: bool,
    }

    /// An answer as people read it.
    pub struct Report {
        /// The verdict.
        pub verdict: VerdictLine,
        /// What decides it.
        pub first: String,
        /// The smallest change that would move it, or what comes next.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// What has not been entered yet.
        pub missing: Vec<ErrorLine>,
        /// What the legs offer beside; none where they offer nothing, or it is not said.
        pub legs: Option<LegLine>,
        /// The figures, in the order to show them.
        pub figures: Vec<Figure>,
        /// How the likely climb goes, pull by pull; none where that is not known.
        pub going: Option<GoingReport>,
        /// The rig.
        pub drawing: Drawing,
        /// Whose failure drops the climber.
        pub parts: Vec<PartLine>,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
        /// The effort it rests on.
        pub effort: WorkDone,
    }

    /// A rig beside the others.
    pub struct RigLine {
        /// Its id in links.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// Whether a helper on the ground pulls.
        pub hauled: bool,
        /// Whether it is the rig that was said.
        pub chosen: bool,
        /// `works`, `at-limit`, `out` or `not-known`: how often one pull comes off, whatever else the plan lacks.
        pub standing: &'static str,
        /// The verdict on a climb with it.
        pub verdict: VerdictLine,
        /// What decides it.
        pub first: String,
        /// Whether it is the least kit that works without a helper.
        pub least: bool,
        /// The figures, in the order to show them.
        pub figures: Vec<Figure>,
        /// What it takes beyond rope, harness and the hitch that holds the climber.
        pub gear: Vec<String>,
        /// What to be careful about on this rig.
        pub cautions: Vec<CautionLine>,
        /// The rig.
        pub drawing: Drawing,
    }

    /// The answer to "Which advantage?" as people read it.
    pub struct AdvantageReport {
        /// Which rig is the least that works.
        pub first: String,
        /// What a lesser one lacks, or what it would take.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// What has not been entered yet.
        pub missing: Vec<ErrorLine>,
        /// The figures that are the same on every rig.
        pub figures: Vec<Figure>,
        /// The pull that each rig takes, against the weight.
        pub chart: Chart,
        /// The rigs, in the order of what this person can do with least kit.
        pub rigs: Vec<RigLine>,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
        /// The effort it rests on.
        pub effort: WorkDone,
    }

    /// What a part carries in a state, and what it is held against.
    pub struct LoadLine {
        /// Its id in this answer.
        pub id: String,
        /// `rope`, `haul-cord`, `hitch-cord`, `connector`, `pulley`, `ring`, `anchor`, `knot`, `crotch`, `redirect` or
        /// `harness`.
        pub kind: &'static str,
        /// What people call it.
        pub noun: String,
        /// What it carries while nothing jerks.
        pub load: Figure,
        /// What it carries at the peak.
        pub peak: Figure,
        /// What it bears as it is rigged; none where that is not known.
        pub strength: Option<Figure>,
        /// How many times the peak that is; none where it is not known.
        pub ratio: Option<Figure>,
        /// The least that is asked of it, and by whom; empty where nothing is.
        pub against: String,
        /// `short`, `under-minimum`, `not-known` or `over`.
        pub standing: &'static str,
        /// How it stands, in words.
        pub text: String,
        /// Whether its failure alone drops the climber.
        pub single: bool,
    }

    /// A state of the rig, and what its parts carry in it.
    pub struct LoadState {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// Whether the rig can be in it, and it is reckoned.
        pub possible: bool,
        /// What it is; or why it cannot be, and what would make it possible.
        pub text: String,
        /// The single parts, in words; empty where it cannot be.
        pub singles: String,
        /// The parts, in the order of the ropes.
        pub parts: Vec<LoadLine>,
        /// The rig in this state; none where it cannot be.
        pub drawing: Option<Drawing>,
    }

    /// What bending says of the limb.
    pub struct LimbLine {
        /// `dead-wood`, `ruled-out`, `not-ruled-out` or `not-known`.
        pub id: &'static str,
        /// What it says.
        pub text: String,
        /// The first checks, in words.
        pub checks: Vec<String>,
        /// What it is reckoned with.
        pub figures: Vec<Figure>,
    }

    /// The answer to "What does each part carry?" as people read it.
    pub struct LoadsReport {
        /// What stands worst.
        pub first: String,
        /// The same in a few words.
        pub glance: String,
        /// What to do about it, or what is not known.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// The figures of the climber and of a slip.
        pub figures: Vec<Figure>,
        /// The states.
        pub states: Vec<LoadState>,
        /// What a slip comes to at each height; none where it is not reckoned.
        pub slip: Option<Chart>,
        /// What bending says of the limb.
        pub limb: LimbLine,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
        /// The effort it rests on.
        pub effort: WorkDone,
    }

    /// What a rope must do for, and the rope it takes.
    pub struct RopeState {
        /// Its id, which never changes.
        pub id: &'static str,
        /// What people call it.
        pub noun: &'static str,
        /// Whether it takes most.
        pub decides: bool,
        /// The sum of its items.
        pub total: Figure,
        /// The pieces of the rope.
        pub items: Vec<Figure>,
    }

    /// The answer to "How much rope?" as people read it.
    pub struct RopeReport {
        /// How much to buy.
        pub first: String,
        /// Which state decides.
        pub second: String,
        /// Which length to buy, and what is left of it; empty where no height was said.
        pub buy: String,
        /// How high the rope goes that somebody has, and whether it reaches; empty where `first` tells it, or none was said.
        pub owned: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// The figures, in the order to show them.
        pub figures: Vec<Figure>,
        /// The states, in the order they come.
        pub states: Vec<RopeState>,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
    }

    /// A piece of a cord.
    pub struct CordPiece {
        /// `tail`, `knot`, `eye`, `leg`, `coils`, `crossings`, `span` or `hand-end`.
        pub kind: &'static str,
        /// `first`, `middle` or `second`: on which side of the middle it lies.
        pub place: &'static str,
        /// Its length; as it is written, the pieces add up to the whole.
        pub length: Figure,
    }

    /// What the finished cord looks like.
    pub struct CordShape {
        /// `double-fisherman`, `scaffold`, `double-overhand`, `sewn` or `button`.
        pub ends: &'static str,
        /// Whether it is closed.
        pub closed: bool,
        /// The coils; nought where it goes round no rope.
        pub coils: f64,
        /// The strands of each.
        pub strands: u32,
        /// The crossings.
        pub crossings: f64,
        /// The strands that hang.
        pub legs: u32,
        /// The ends that have an eye, where ends have eyes.
        pub eyes: u32,
    }

    /// The answer to "What length of cord?" as people read it.
    pub struct CordReport {
        /// What to cut, what to buy, or what a cut leaves.
        pub first: String,
        /// What it comes out at, and how to begin.
        pub second: String,
        /// The defaults it rests on; empty where all was said.
        pub assumed: String,
        /// The figures, in the order to show them.
        pub figures: Vec<Figure>,
        /// The pieces from one end of the cord to the other.
        pub pieces: Vec<CordPiece>,
        /// What they add up to.
        pub total: Figure,
        /// What the finished cord looks like.
        pub shape: CordShape,
        /// What to be careful about.
        pub cautions: Vec<CautionLine>,
        /// The sources that the figures and cautions rest on.
        pub sources: Vec<SourceLine>,
    }
}
