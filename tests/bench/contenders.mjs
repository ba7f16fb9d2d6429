// The shipped module beside a native build, and a climb beside its twin in plain JavaScript.
import * as twin from "../../pkg-config/twin.mjs";
import { natively } from "./native.mjs";
import { asking, plans } from "./plans.mjs";
import { inTurn, middle } from "./times.mjs";

const ROUNDS = 3; // in each of them all contenders, one after another
const TURNS = 5;

/** How many samples an answer rests on, as the native side counts them. */
const samplesOf = ({ answer }) => answer.effort?.samples ?? 1;

/** For each plan its times in ms and, for each round, the module's time over the native one; `twin` for the first. */
export function contenders(home) {
  const calls = plans.map(({ question, draft, effort }) => asking(question, draft, effort));
  const [climb] = plans;
  const rounds = Array.from({ length: ROUNDS }, () => {
    const native = natively(home, plans.map(({ name }) => name));
    const times = inTurn([...calls, () => twin.canIClimb(climb.draft, null, climb.effort)], TURNS).map(middle);
    return { native, wasm: times.slice(0, -1), twin: times.at(-1) };
  });
  for (const [at, { name }] of plans.entries()) {
    if (rounds[0].native.get(name).samples === samplesOf(calls[at]())) continue;
    throw new Error(`${name}: native build and module are not of the same sources. Run pkg-config/build.`);
  }
  return plans.map(({ name }, at) => {
    const each = rounds.map(({ native, wasm, twin }) => ({ native: native.get(name), wasm: wasm[at], twin: at === 0 ? twin : undefined }));
    return {
      name, each, ratios: each.map(({ native, wasm }) => wasm / native.ms),
      native: middle(each.map(({ native }) => native.ms)), wasm: middle(each.map(({ wasm }) => wasm)),
    };
  });
}
