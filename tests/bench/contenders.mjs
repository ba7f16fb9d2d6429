// The shipped module beside a native build, and a climb beside its twin in plain JavaScript.
import { isDeepStrictEqual } from "node:util";
import * as twin from "../../pkg-config/twin.mjs";
import { nativeAnswers, natively } from "./native.mjs";
import { asking, plans } from "./plans.mjs";
import { inTurn, middle } from "./times.mjs";

const TURNS = 5;
/** Rounds, in each of which a plan's contenders come one after another: more where a ratio was asked for. */
const rounds = (at) => (at === 0 ? 7 : 3);

/** Two builds of the same sources answer the same to the last letter and bit; to time others beside each other says nothing. */
function sameSources(home) {
  const answers = nativeAnswers(home);
  const other = plans.filter(({ question, draft, effort }, at) => !isDeepStrictEqual(asking(question, draft, effort)().answer, answers[at]));
  if (other.length === 0) return;
  throw new Error(`The module in dist/ answers otherwise than a native build (${other.map(({ name }) => name).join("; ")}): it is of other sources. Run pkg-config/build, then measure.`);
}

/**
 * For each plan its times in ms and, for each round, the module's time over the native one; with `twin` the first, which is
 * the twin's climb.
 */
export function contenders(home) {
  sameSources(home);
  return plans.map(({ name, question, draft, effort }, at) => {
    const call = asking(question, draft, effort);
    const calls = at === 0 ? [call, () => twin.canIClimb(draft, null, effort)] : [call];
    const each = Array.from({ length: rounds(at) }, () => {
      const native = natively(home, name);
      const [wasm, twin] = inTurn(calls, TURNS).map(middle);
      return { native, wasm, twin };
    });
    return {
      name, each, ratios: each.map(({ native, wasm }) => wasm / native.ms),
      native: middle(each.map(({ native }) => native.ms)), wasm: middle(each.map(({ wasm }) => wasm)),
    };
  });
}
