// The library's functions over an instance that can be replaced.
import { lists, told } from "./told.js";

/**
 * Every function that `makeGlue()` has, each starting an instance of `compiled()` when there is none.
 *
 * The library answers mistakes with data and never throws, so whatever is thrown (a trap, a full stack)
 * leaves an instance that cannot be trusted: it is dropped, and the call, which has no effects,
 * is made once more in a fresh one. What throws twice is thrown to the caller.
 */
export function makeCalls(makeGlue, compiled) {
  let glue = null;
  const started = () => {
    if (!glue) {
      const fresh = makeGlue();
      fresh.initSync({ module: compiled() });
      glue = fresh;
    }
    return glue;
  };
  const once = (name, args) => {
    const instance = started();
    try {
      return told(name, instance[name](...args));
    } catch (thrown) {
      glue = null;
      throw thrown;
    }
  };
  const call = (name) => (...args) => {
    started(); // outside the try: a module that is not there yet is not a trap
    try {
      return once(name, args);
    } catch {
      return once(name, args);
    }
  };
  const calls = Object.fromEntries(Object.keys(makeGlue()).map((name) => [name, call(name)]));
  for (const [name, list] of Object.entries(lists)) {
    calls[name] = (...args) => {
      started(); // not ready is not ready, whatever is asked
      return list(...args);
    };
  }
  return calls;
}
