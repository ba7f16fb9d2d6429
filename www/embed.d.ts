// The types of `<boughline-question>`. Those of the answers are the npm package's.
import type { Advantage, CanIClimb, ComingDown, CutLength, CutPlan, FieldError, Loads, Rescue, RopeLength } from "boughline";

/** What each question answers, by its name. */
export interface Answers {
  "can-i-climb": CanIClimb;
  advantage: Advantage;
  loads: Loads;
  "rope-length": RopeLength;
  "cut-length": CutLength;
  "cut-plan": CutPlan;
  "coming-down": ComingDown;
  rescue: Rescue;
}

/** What was said, by field, as text. */
export type Said = { [field: string]: string };

interface Told<Question> {
  question: Question;
  draft: Said;
  /** The plan from `v=1` on; empty while something cannot be read. */
  link: string;
}

/** The detail of `boughline-answer`; `question` tells which answer it is. */
export type AnswerDetail = { [Question in keyof Answers]: Told<Question> & { answer: Answers[Question] } }[keyof Answers];

/** The detail of `boughline-errors`. */
export type ErrorsDetail = Told<keyof Answers> & { errors: FieldError[] };

export interface BoughlineQuestion extends HTMLElement {
  /** None while there is no answer. */
  readonly answer: Answers[keyof Answers] | null;
  readonly draft: Said;
}

declare global {
  interface HTMLElementTagNameMap {
    "boughline-question": BoughlineQuestion;
  }
  interface HTMLElementEventMap {
    "boughline-answer": CustomEvent<AnswerDetail>;
    "boughline-errors": CustomEvent<ErrorsDetail>;
  }
}
