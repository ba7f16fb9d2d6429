// The plans of plans.tsv, asked of the shipped module.
import { readFileSync } from "node:fs";
import * as boughline from "boughline";

const asks = {
  "can-i-climb": boughline.canIClimb,
  advantage: boughline.advantage,
  map: (draft, view, side) => boughline.feasibilityMap(draft, view, side, side),
  loads: boughline.loads,
  "rope-length": boughline.ropeLength,
  "cut-length": boughline.cutLength,
  "cut-plan": boughline.cutPlan,
  "coming-down": boughline.comingDown,
  rescue: boughline.rescue,
};

/** `{ name, question, effort, draft }` of every line. */
export const plans = readFileSync(new URL("plans.tsv", import.meta.url), "utf8").trimEnd().split("\n").map((line) => {
  const [name, question, effort, typed] = line.split("\t");
  const { draft, notices } = boughline.readLink(typed);
  if (notices.length > 0) throw new Error(`${name}: ${notices.join(" ")}`);
  return { name, question, effort: Number(effort), draft };
});

/** The draft of the first plan that asks a question. */
export const draftFor = (question) => plans.find((plan) => plan.question === question).draft;

/**
 * What asks a question of a draft. Every other time ten grams heavier: the module goes on where it stopped with the plan
 * it was asked last.
 */
export function asking(question, draft, effort) {
  const mass = Number.parseFloat(draft.bodyMass);
  const drafts = Number.isNaN(mass) ? [draft] : [draft, { ...draft, bodyMass: `${mass + 0.01} kg` }];
  let turn = 0;
  return () => asks[question](drafts[turn++ % drafts.length], null, effort);
}
