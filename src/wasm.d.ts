/** Metres. */
export type Metre = number;
/** Kilograms. */
export type Kilogram = number;
/** Newtons. */
export type Newton = number;
/**
 * A value in SI, whatever it measures: metres, kilograms, newtons, seconds, joules, watts, metres a second, radians, or of one;
 * of a temperature, degrees Celsius.
 */
export type Si = number;

/**
 * What has been said so far, by field id: a number in SI, or text with its unit (`"80 kg"`, `"6 ft 3 in"`), or the id
 * of an option. Leave a field out when nothing is known: `""` and `null` are errors of that field, never nought.
 */
export type Draft = { [field: string]: Si | string };

/**
 * How figures are written in the answer; what goes in is read in any unit. Anything else counts as unsaid: metric, a point.
 * Sentences that quote a publication or a label keep its figures.
 */
export interface View {
  system?: "si" | "us";
  decimal?: "." | ",";
}

/** What is wrong or missing, in one sentence, and the ids of the fields it concerns. */
export interface FieldError {
  fields: string[];
  message: string;
}

/** An answer, or every error at once. A person's mistake is data, never an exception. */
export type Reply<T> = { ok: true; answer: T } | { ok: false; errors: FieldError[] };

/** A figure; `null` stands for what has no end, such as the strokes of a climb that gains nothing. */
export interface Figure {
  id: string;
  noun: string;
  value: Si | null;
  /** The 5th percentile of the samples; of a length of rope, the sum of the low ends. */
  low: Si | null;
  /** The 95th percentile of the samples; of a length of rope, the sum of the high ends. */
  high: Si | null;
  text: string;
  /** None where it has no width. */
  range: string | null;
  workings: string[];
  /** Ids of `sources()`. */
  sources: string[];
}

export interface Level {
  id: string;
  kind: "tree" | "carriage" | "climber" | "ground";
  noun: string;
  /** How high it is above the ground, where that is known. */
  height: Metre | null;
  /** The same as people read it. */
  at: string | null;
}

export interface DrawnStop {
  kind: "tied" | "turn" | "hitch" | "hand" | "knot" | "free";
  /** A place in `levels`; none for a loose tail. */
  level: number | null;
  noun: string;
  state: "grips" | "slides" | null;
  /** Whether its failure alone drops the climber. */
  single: boolean;
}

export interface Tension {
  value: Newton;
  low: Newton;
  high: Newton;
  text: string;
}

export interface DrawnRope {
  noun: string;
  stops: DrawnStop[];
  /** Strand `i` joins stops `i` and `i + 1`; between two stops on one level it has no length. */
  strands: { tension: Tension }[];
}

/** The rig while the hands pull. */
export interface Drawing {
  /** From the highest to the lowest. */
  levels: Level[];
  ropes: DrawnRope[];
  /** The drawing in words. */
  text: string;
}

export interface Part {
  id: string;
  noun: string;
  single: boolean;
  text: string;
}

export interface Caution {
  id: string;
  grave: boolean;
  text: string;
  /** Ids of `sources()`; none where it only tells what this program does. */
  sources: string[];
}

export interface Source {
  id: string;
  text: string;
}

/** A climb by the legs, on foot loops and without mechanical advantage; no figures of it were published. */
export interface Legs {
  id: "worth-a-trial" | "find-out" | "not-likely";
  /** How it stands, and what to find out. */
  text: string;
  /** How it is done, and that nothing of it is reckoned. */
  how: string;
  /** Ids of `sources()`. */
  sources: string[];
}

/** The answer to "Can I climb this?" */
export interface CanIClimb {
  verdict: { id: "within-reach" | "at-limit" | "out-of-reach" | "none"; text: string };
  /** What decides the verdict. */
  first: string;
  /** The smallest change that would move it, or what comes next. */
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  missing: FieldError[];
  /** What the legs offer beside the arms; none where they offer nothing, or it is not said. */
  legs: Legs | null;
  figures: Figure[];
  /** How the likely climb goes, pull by pull; none where strength or strokes are not known. */
  going: Going | null;
  drawing: Drawing;
  parts: Part[];
  cautions: Caution[];
  sources: Source[];
  effort: { samples: number; more: boolean };
}

/** An axis of a chart, in the shown unit. */
export interface Axis {
  noun: string;
  unit: string;
  least: number;
  most: number;
}

/** A chart, in the shown units: lines over bands (what somebody has) and marks (limits). */
export interface Chart {
  noun: string;
  /** What it shows, in words. */
  text: string;
  x: Axis;
  y: Axis;
  lines: { id: string; noun: string; points: { x: number; y: number }[] }[];
  bands: { noun: string; low: number; high: number }[];
  marks: { noun: string; y: number }[];
  /** Where this person stands, across. */
  you: number | null;
}

/** How the climb goes at the likely value of everything: a chart, and some of its strokes as a table. */
export interface Going {
  /** The height, and what is left of arms and hands, against time. */
  chart: Chart;
  rows: { strokes: number; time: string; height: string; arms: string; hands: string; next: string }[];
}

/** A rig beside the others. */
export interface RigLine {
  id: string;
  noun: string;
  /** Whether a helper on the ground pulls. */
  hauled: boolean;
  /** Whether it is the rig that was said. */
  chosen: boolean;
  /** How often one pull comes off, whatever else the plan lacks. */
  standing: "works" | "at-limit" | "not-known" | "out";
  verdict: { id: "within-reach" | "at-limit" | "out-of-reach" | "none"; text: string };
  /** What decides it. */
  first: string;
  /** Whether it is the least kit that works without a helper; true of one at most. */
  least: boolean;
  figures: Figure[];
  /** What it takes beyond rope, harness and the hitch that holds the climber. */
  gear: string[];
  /** What to be careful about on this rig. */
  cautions: Caution[];
  drawing: Drawing;
}

/** The answer to "Which advantage?" */
export interface Advantage {
  /** Which rig is the least that works. */
  first: string;
  /** What a lesser one lacks, or what it would take. */
  second: string;
  assumed: string;
  missing: FieldError[];
  /** What is the same on every rig. */
  figures: Figure[];
  chart: Chart;
  /** In the order of what this person can do with least kit. */
  rigs: RigLine[];
  cautions: Caution[];
  sources: Source[];
  effort: { samples: number; more: boolean };
}

/** What a climb comes to with one thing otherwise, or as it is. */
export interface HelpLine {
  id: string;
  noun: string;
  /** The chance, from 0 to 1. */
  value: number;
  chance: string;
  share: string;
  strokes: string | null;
  time: string | null;
  cost: string;
}

/** What would help most. */
export interface WhatHelps {
  first: string;
  of: string;
  /** As it is. */
  now: HelpLine | null;
  /** The most helpful first. */
  changes: HelpLine[];
  sources: Source[];
  effort: { samples: number; more: boolean };
}

/** The least rig that works, at likely values, for every weight and pull. */
export interface FeasibilityMap {
  noun: string;
  text: string;
  /** The middles of the first and the last column. */
  x: Axis;
  /** The middles of the first and the last row. */
  y: Axis;
  /** The least kit first. */
  rigs: { id: string; noun: string; letter: string }[];
  /** From the weakest pull up, a letter a column: a rig's, or `.` where none works. */
  rows: string[];
  you: { x: number; y: number; text: string } | null;
  sources: Source[];
}

/** What a part carries in a state, and what it is held against. */
export interface PartLoad {
  id: string;
  kind:
    | "rope" | "haul-cord" | "hitch-cord" | "connector" | "pulley" | "ring" | "anchor" | "knot" | "crotch" | "redirect"
    | "harness";
  noun: string;
  /** While nothing jerks. */
  load: Figure;
  peak: Figure;
  /** What it bears as it is rigged; `null` where that is not known. */
  strength: Figure | null;
  /** Strength over peak. */
  ratio: Figure | null;
  /** The least that is asked of it, and by whom; empty where nothing is. */
  against: string;
  standing: "short" | "under-minimum" | "not-known" | "over";
  text: string;
  /** Whether its failure alone drops the climber. */
  single: boolean;
}

/** A state of the rig, and what its parts carry in it. */
export interface LoadState {
  id: "climbing" | "resting" | "hand-off" | "slipping" | "caught" | "lowered" | "hauled";
  noun: string;
  /** Whether the rig can be in it, and it is reckoned. */
  possible: boolean;
  /** What it is; or why it cannot be, and what would make it possible. */
  text: string;
  /** The single parts in words. */
  singles: string;
  parts: PartLoad[];
  drawing: Drawing | null;
}

/** The answer to "What does each part carry?" */
export interface Loads {
  /** What stands worst. */
  first: string;
  /** The same in a few words. */
  glance: string;
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  figures: Figure[];
  states: LoadState[];
  /** What stops somebody who slips, at each height; `null` where it is not reckoned. */
  slip: Chart | null;
  limb: {
    id: "dead-wood" | "too-thin" | "ruled-out" | "not-ruled-out" | "not-known";
    text: string;
    checks: string[];
    figures: Figure[];
  };
  cautions: Caution[];
  sources: Source[];
  effort: { samples: number; more: boolean };
}

/** What a rope must do for, and the rope that takes. */
export interface RopeState {
  /** `lowered` only where somebody on the ground can let the climber down. */
  id: "set" | "start" | "top" | "down" | "lowered" | "retrieve";
  noun: string;
  /** Whether it takes most; true of one of them. */
  decides: boolean;
  /** The sum of the items, also as they are shown; low and high are the sums of theirs. */
  total: Figure;
  /** The pieces of the rope. */
  items: Figure[];
}

/** The answer to "How much rope?" */
export interface RopeLength {
  /** How much to buy, rounded up; where only `ropeOwned` and no height was said, how high that rope goes. */
  first: string;
  /** Which state decides, and what that means. */
  second: string;
  /** Which length of `ropeStock` to buy, and what is left of it; empty where no height was said. */
  buy: string;
  /** How high the rope goes that somebody has, and whether it reaches; empty where `first` tells it, or none was said. */
  owned: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  /** `ropeNeeded` first, then what to buy, the rope somebody has, and the thin lines. */
  figures: Figure[];
  /** In the order they come. */
  states: RopeState[];
  cautions: Caution[];
  sources: Source[];
}

/** A cord of a hank, or what is left or lost of it. */
export interface CutLine {
  /** What it is for; empty where nothing is said. */
  noun: string;
  value: Metre;
  text: string;
}

/** The plan for cords of one diameter and fibre, which never mix with others. */
export interface CutKind {
  /** Diameter and fibre: `6mm-nylon`. */
  id: string;
  noun: string;
  /** What to buy; or why there is no plan, and what to do. */
  text: string;
  /** What is proved, and how far off it is at the most; empty where there is no plan. */
  proof: string;
  /** Whether price or length bought, and then the number of hanks, are proved to be the least. */
  standing: "proved" | "not-proved" | "none";
  hanks: { noun: string; value: Metre; cuts: CutLine[]; left: CutLine; lost: CutLine }[];
  figures: Figure[];
  shopping: string[];
}

/** The answer to "Out of which hanks?" */
export interface CutPlan {
  first: string;
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  /** What all of it comes to; `cordPrice` where every hank has a price; `ropeToBuy`, `retrievalCord` where they are known. */
  figures: Figure[];
  /** The thinnest first. */
  kinds: CutKind[];
  /** Everything to buy, a line for each. */
  shopping: string[];
  /** Of the rig's own: what is on the plan without being entered, what is had already, and what is missing for the rest. */
  notes: string[];
  cautions: Caution[];
  sources: Source[];
  /** Steps of the search, and whether more could change anything. */
  effort: { samples: number; more: boolean };
}

/** A piece of a cord. */
export interface CordPiece {
  kind: "tail" | "knot" | "eye" | "leg" | "coils" | "crossings" | "span" | "hand-end";
  /** On which side of the middle it lies, from the end that the tying begins with. */
  place: "first" | "middle" | "second";
  /** As their texts say, the pieces add up to the whole. */
  length: Figure;
}

/** What a finished cord looks like. */
export interface CordShape {
  ends: "double-fisherman" | "scaffold" | "double-overhand" | "sewn" | "button";
  /** Whether it is one closed loop. */
  closed: boolean;
  /** Nought where it goes round no rope. */
  coils: number;
  /** The strands of each coil. */
  strands: number;
  crossings: number;
  /** The strands that hang from it. */
  legs: number;
  /** The ends that have an eye, where ends have eyes. */
  eyes: number;
}

/** The answer to "What length of cord?" */
export interface CutLength {
  /** What to cut or to buy, or what a cut leaves. */
  first: string;
  /** What it comes out at, and how to begin. */
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  /** `cutLength` first. */
  figures: Figure[];
  /** From the end that the tying begins with to the other. */
  pieces: CordPiece[];
  /** What they add up to. */
  total: Figure;
  shape: CordShape;
  cautions: Caution[];
  sources: Source[];
}

/** A step of the change-over, and what holds the climber while it is made. */
export interface Step {
  id: "rest" | "back-up" | "take-off" | "set-brake" | "weigh-brake" | "free-brake" | "move-knot";
  noun: string;
  how: string;
  /** What holds meanwhile, in a sentence. */
  held: string;
  /** How many things hold, of which one may fail. */
  attached: "none" | "one" | "two";
  /** Whether two things hold, or one while nothing is moved. */
  sound: boolean;
  /** The climber's rope, from the anchor down; what is moved or opened in this step holds nobody. */
  rope: { kind: "tied" | "turn" | "hitch" | "knot" | "hand"; noun: string; moved: boolean }[];
}

/** The answer to "Can I get down again?" */
export interface ComingDown {
  /** Whether the hand holds it. */
  first: string;
  /** The same in a few words. */
  glance: string;
  /** How fast at the most, and why. */
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  figures: Figure[];
  /** In order; none where nobody changes over on the rig. */
  steps: Step[];
  /** Why there are no steps; empty where there are. */
  none: string;
  cautions: Caution[];
  sources: Source[];
  effort: { samples: number; more: boolean };
}

/** A way to the ground for somebody who is stuck. */
export interface Way {
  id: "oneself" | "let-down" | "lifted-off" | "second-rope";
  noun: string;
  possible: boolean;
  /** Whether it is the quickest that does not count on the climber. */
  best: boolean;
  /** What it is, or why it is none. */
  text: string;
  /** How long it takes; `null` where it is none. */
  total: Figure | null;
  /** In order, with likely seconds from when the climber hangs still. */
  stages: { id: string; how: string; time: string; from: Si; to: Si }[];
}

/** The answer to "What if I am stuck?" */
export interface Rescue {
  /** Whether the plan has the climber on the ground in time. */
  first: string;
  /** By which way, or what would. */
  second: string;
  /** The defaults it rests on; empty where all was said. */
  assumed: string;
  figures: Figure[];
  ways: Way[];
  /** What takes the weight off a jammed hitch. */
  unload: string[];
  /** Whether this plan's rope can be hauled from the ground. */
  hauling: string;
  hauls: { id: string; noun: string; pull: Figure; rope: string; people: Figure }[];
  /** What to see to before going, made from this plan's weak points. */
  before: { id: string; text: string }[];
  /** A plan to print and fill in, a line each. */
  plan: string[];
  cautions: Caution[];
  sources: Source[];
}

/** A piece of a sheet. */
export interface SheetBlock {
  kind: "verdict" | "paragraph" | "list" | "steps" | "blanks" | "table";
  /** The verdict, the paragraph, or what leads in; may be empty. */
  text: string;
  /** Of a list; steps in order; or lines whose blanks (`____________`) are to be filled in. */
  items: string[];
  /** Of a table; the first is its head. */
  rows: string[][];
}

/** A part of a sheet. */
export interface SheetSection {
  id: string;
  /** Empty for what stands right under the title. */
  heading: string;
  /** 2 under the title, 3 under the section before it. */
  level: number;
  /** What is still to be entered before it can be answered, each by its noun; empty where it is answered. */
  needs: FieldError[];
  /** What is wrong, in sentences; empty where it is answered. */
  wrong: FieldError[];
  blocks: SheetBlock[];
  /** The rig, for whoever can draw it; its words are in the blocks. */
  drawing: Drawing | null;
}

/** The whole plan in short, in the order in which somebody at the tree needs it. */
export interface TripSheet {
  title: string;
  sections: SheetSection[];
  /** The fragment of its link, without `#`; empty while anything in the draft cannot be read. */
  link: string;
  /** The versions of program and figures, in a sentence. */
  version: string;
}

export interface Choice {
  id: string;
  noun: string;
  hint: string;
}

/** A stop of somebody's own rig, in the words of `rigWords()`: `{ does: "turn", on: "upper", with: "carabiner" }`. */
export interface RigRow {
  does: string;
  on: string;
  /** A turn's kind or the share it keeps, a knot's slack, a helper's pull; empty where there is nothing to say. */
  with: string;
}

/** What a text says of somebody's own rig: a list of stops for each rope, and the text as it should stand in its box. */
export type OwnRig = { ok: true; ropes: RigRow[][]; text: string } | { ok: false; errors: FieldError[] };

/** A field as a form shows it. */
export interface Field {
  id: string;
  noun: string;
  hint: string;
  kind: "quantity" | "choice" | "text";
  /** The unit that a bare number gets from `tidy`. */
  unit: string | null;
  /** What is taken when nothing is said: the id of an option, or a figure with its range. */
  likely: string | null;
  /** The least and the most that is accepted. */
  range: string | null;
  /** Why this default and these limits. */
  why: string;
  options: Choice[] | null;
  /** Whether it tells of somebody's body, so that a shared link may leave it out. */
  private: boolean;
  /** The ids of the questions that read it, in a draft and in a link: `"can-i-climb"` … A trip sheet asks them all. */
  questions: string[];
  example: string | null;
}

export interface Link {
  question: string | null;
  draft: { [field: string]: string };
  view: Required<View>;
  notices: string[];
}

/**
 * Can I climb this? One pull, how many of them, and whether arms and hands last to the height.
 *
 * Units: in the draft as `Draft` says; `value`, `low` and `high` of a figure are SI, `text` and `range` those of the view.
 * Errors: needed are `bodyMass` and `climbHeight`. Everything that is wrong or missing at once, as data.
 * Source: each figure, caution and the legs name theirs.
 * @param effort Sampled climbs, 50 to 20000, beyond which the nearer counts; 20000 unless said. If the very next call asks more of
 * the same draft, only what is missing is reckoned.
 * @example canIClimb({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", measuredPull: "520 N" })
 */
export function canIClimb(draft: Draft, view?: View | null, effort?: number | null): Reply<CanIClimb>;
/**
 * What would help most? Up to ten things that could be otherwise, each alone and on the very same sampled climbs, ranked.
 *
 * Units: as for `canIClimb`.
 * Errors: needed are `bodyMass` and `climbHeight`; without a known strength the list is empty.
 * Source: judged changes say so in their words.
 * @param effort As for `canIClimb`, of each change; 1000 is plenty.
 * @example whatHelps({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", measuredPull: "400 N" }, null, 1000)
 */
export function whatHelps(draft: Draft, view?: View | null, effort?: number | null): Reply<WhatHelps>;
/**
 * What does each part carry? Every part in every state the rig can be in, against what it bears as it is rigged.
 *
 * Units: as for `canIClimb`; loads are forces in newtons, never masses.
 * Errors: needed are `bodyMass` and `rig`, and `anchor` where the rope is made fast.
 * Source: each figure and caution names its own.
 * @param effort As for `canIClimb`, 4000 at the most.
 * @example loads({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", anchor: "canopy", hitchCord: "8 mm" })
 */
export function loads(draft: Draft, view?: View | null, effort?: number | null): Reply<Loads>;
/**
 * Which advantage? Every rig side by side for one person, in the order of what they can do with least kit.
 *
 * Units: as for `canIClimb`; the chart is in the units of the view.
 * Errors: needed are `bodyMass` and `climbHeight`.
 * Source: each figure and caution names its own.
 * @param effort As for `canIClimb`, of each rig, and 4000 at the most.
 * @example advantage({ bodyMass: "80 kg", climbHeight: "11 m", measuredPull: "520 N" }, { system: "us" })
 */
export function advantage(draft: Draft, view?: View | null, effort?: number | null): Reply<Advantage>;
/**
 * The least rig for every weight and pull, as a map.
 *
 * Units: axes and the person's own place are in the units of the view.
 * Errors: needed are `bodyMass` and `climbHeight`.
 * Source: likely values of one pull, and the kinder of two published edges of what lasts; the map says so.
 * @param columns Of weight, 2 to 200; 60 unless said.
 * @param rows Of pull, 2 to 200; 40 unless said.
 * @example feasibilityMap({ bodyMass: "80 kg", climbHeight: "11 m" }, null, 30, 20)
 */
export function feasibilityMap(draft: Draft, view?: View | null, columns?: number | null, rows?: number | null): Reply<FeasibilityMap>;
/**
 * Can I get down again? The hand, the heat of the hitch's cord, the speed it allows, the rope's end, the change-over.
 *
 * Units: as for `canIClimb`; the `value` of a temperature is in degrees Celsius, whatever the view.
 * Errors: needed are `bodyMass`, `climbHeight` and `rig`.
 * Source: each figure and caution names its own.
 * @param effort As for `canIClimb`, 4000 at the most.
 * @example comingDown({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", gripRight: "390 N", brake: "munter" })
 */
export function comingDown(draft: Draft, view?: View | null, effort?: number | null): Reply<ComingDown>;
/**
 * What if I am stuck? Every way to the ground, stage by stage, against the minutes that count.
 *
 * Units: as for `canIClimb`; `from` and `to` of a stage are seconds.
 * Errors: needed are `bodyMass`, `climbHeight` and `rig`, and `anchor` where the rope is made fast.
 * Source: the times of stages are judged, and say so; figures and cautions name theirs.
 * @example rescue({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", anchor: "base-lowerable", secondPerson: "rescuer" })
 */
export function rescue(draft: Draft, view?: View | null): Reply<Rescue>;
/**
 * How much rope? Item by item in every state, the length to buy, and how high the rope goes that somebody has.
 *
 * Units: as for `canIClimb`; items are rounded up as shown, and a total is the sum of what is shown.
 * Errors: needed are `anchor`, and `crotchHeight` or `ropeOwned`.
 * Source: geometry, and what each item says.
 * @example ropeLength({ crotchHeight: "12 m", anchor: "canopy", rig: "tail-3", ropeOwned: "45 m" })
 */
export function ropeLength(draft: Draft, view?: View | null): Reply<RopeLength>;
/**
 * Out of which hanks are cords cut? The least price where every hank has one, else the least length bought; then the
 * fewest hanks; then the longest single remainder. Exact up to 12 cords of a kind and 6 hanks; beyond, the best within
 * the effort, with what no plan can be less than.
 *
 * Units: as for `canIClimb`; prices have the unit they were given in.
 * Errors: needed is `cords`, or a rig and what its cords are for.
 * Source: arithmetic; lengths of cords are those of `cutLength`.
 * @param effort Of search, as for `canIClimb`.
 * @example cutPlan({ cords: "2~6mm~1.8m,1~7mm~2.1m", hanks: "any~10m" })
 */
export function cutPlan(draft: Draft, view?: View | null, effort?: number | null): Reply<CutPlan>;
/**
 * What length of cord? What to cut for a hitch, a loop, a lanyard or a haul cord, piece by piece.
 *
 * Units: as for `canIClimb`.
 * Errors: needed is `cordUse`, and the diameters that this use asks for (`ropeDiameter`, `hitchCord`, `slingCord`, `haulCord`).
 * Source: the geometry of coils; what a knot takes, each piece names.
 * @example cutLength({ cordUse: "distel", ropeDiameter: "11 mm", hitchCord: "8 mm" })
 */
export function cutLength(draft: Draft, view?: View | null): Reply<CutLength>;
/**
 * The whole plan in short; what cannot be answered yet says what it needs, and what is against the plan stands by its verdict.
 *
 * Units: all is text, in the units of the view.
 * Errors: only a draft that is no plain object is refused.
 * Source: on the pages its link leads to.
 * @param effort As for `canIClimb`.
 * @example tripSheet({ bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-3", crotchHeight: "13 m", anchor: "canopy" })
 */
export function tripSheet(draft: Draft, view?: View | null, effort?: number | null): Reply<TripSheet>;
/**
 * The answer to a question (`"can-i-climb"` …), or the `"trip-sheet"`, as text to read or to post: everything it says,
 * what was entered, and the link, behind `address` where one is given.
 *
 * Units: those of the view.
 * Errors: told in the text. Empty for a question or a format that nobody knows, and for a draft that is no plain object.
 * Source: those of the answer stand in the text; the trip sheet leads to the pages that have them.
 * @param address That of the page the link is for; without one the text ends with the bare fragment, `#` before it.
 * @param effort As for `canIClimb`.
 * @example asText("rope-length", { crotchHeight: "12 m", anchor: "canopy" }, null, "markdown")
 */
export function asText(
  question: string, draft: Draft, view: View | null | undefined, format: "text" | "markdown",
  address?: string | null, effort?: number | null,
): string;
/**
 * Every field, in the order people are asked. Each says which questions read it: the form of one question is those of its
 * fields, and nothing said in another changes its answer.
 *
 * Units: `unit` is what a bare number typed by a person gets from `tidy`; a number in a draft is SI whatever the view.
 * @example fields({ system: "us" }).filter((field) => field.questions.includes("rope-length"))
 */
export function fields(view?: View | null): Field[];
/**
 * The rigs, and what their ropes can turn round: ids for `rig`, `topTurn` and the like.
 * @example catalogue().rigs.map((rig) => rig.id)
 */
export function catalogue(): { rigs: Choice[]; turns: Choice[] };
/**
 * Every publication cited, and how its figures were obtained.
 * @example sources().find((source) => source.id === "delaney-88")
 */
export function sources(): Source[];
/**
 * What a text says of somebody's own rig (the field `ownRig`), in either of its forms.
 *
 * Errors: each names the rope and the stop. Whether such a rig moves and balances is for the question that is asked of it.
 * @example readRig("tied tree, hitch upper, hitch climber, turn climber, turn upper carabiner, hand climber")
 */
export function readRig(text: string, view?: View | null): OwnRig;
/**
 * The text of such rows, right or wrong: `readRig` says which.
 * @example writeRig([[{ does: "tied", on: "tree", with: "" }, { does: "hand", on: "climber", with: "" }]])
 */
export function writeRig(ropes: readonly (readonly RigRow[])[]): string;
/**
 * What a rope can do at a stop, where, and what it can turn round.
 * @example rigWords().does.map((word) => word.id)
 */
export function rigWords(): { does: Choice[]; on: Choice[]; with: Choice[] };
/**
 * The rows of what was said in `cords` or `hanks`, right or wrong, part by part; what is wrong with them `cutPlan` says.
 * @example readRows("cords", "2~6mm~1.8m~foot%20loop")
 */
export function readRows(field: "cords" | "hanks", text: string): { [part: string]: string }[];
/**
 * What a link says: a fragment with or without `#`, or a whole address, of the pocket edition too.
 *
 * Errors: whatever was not understood is left out and told in `notices`; values are checked when a question is asked.
 * @example readLink("https://example.org/#v=1&q=rope-length&crotchHeight=12m&anchor=canopy")
 */
export function readLink(text: string): Link;
/**
 * The fragment for a draft, without `#`, to a question or the `"trip-sheet"`.
 *
 * Errors: empty for a question that nobody knows, and while anything in the draft cannot be read, so that a link never carries
 * another plan than the one that was entered.
 * @example writeLink("rope-length", { crotchHeight: "12 m", anchor: "canopy" })
 */
export function writeLink(question: string, draft: Draft, view?: View | null): string;
/**
 * What a box should hold once it is left: a bare number gets the unit of its field, anything else is unchanged.
 * @example tidy("bodyMass", "80")
 */
export function tidy(field: string, text: string, view?: View | null): string;
/**
 * The version of this program and that of its figures, which links carry as `f`.
 * @example version().figures
 */
export function version(): { version: string; figures: number };
