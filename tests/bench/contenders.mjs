// The shipped module beside a native build, and a climb beside its twin in plain JavaScript.
import * as twin from "../../pkg-config/twin.mjs";
import { natively } from "./native.mjs";
import { asking, plans } from "./plans.mjs";
import { inTurn, middle } from "./times.mjs";

const TURNS = 5;
/** Rounds, in each of which a plan's contenders come one after another: more where a ratio was asked for. */
const rounds = (at) => (at === 0 ? 7 : 3);

/** How many samples an answer rests on, as the native side counts them. */
const samplesOf = ({ answer }) => answer.effort?.samples ?? 1;

/**
 * For each plan its times in ms and, for each round, the module's time over the native one; with `twin` the first, which is
 * the twin's climb.
 */
export const contenders = (home) => plans.map(({ name, question, draft, effort }, at) => {
  const call = asking(question, draft, effort);
  const calls = at === 0 ? [call, () => twin.canIClimb(draft, null, effort)] : [call];
  const each = Array.from({ length: rounds(at) }, () => {
    const native = natively(home, name);
    const [wasm, twin] = inTurn(calls, TURNS).map(middle);
    return { native, wasm, twin };
  });
  if (each[0].native.samples !== samplesOf(call())) {
    throw new Error(`${name}: native build and module are not of the same sources. Run pkg-config/build.`);
  }
  return {
    name, each, ratios: each.map(({ native, wasm }) => wasm / native.ms),
    native: middle(each.map(({ native }) => native.ms)), wasm: middle(each.map(({ wasm }) => wasm)),
  };
});
