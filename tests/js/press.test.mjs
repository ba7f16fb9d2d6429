import assert from "node:assert/strict";
import { test } from "node:test";
import { afterPress, watchPresses } from "../../www/js/press.js";

const root = new EventTarget();
watchPresses(root);
const soon = () => new Promise((done) => setTimeout(done, 5));

test("with nothing pressed it runs at once", () => {
  let runs = 0;
  afterPress(() => { runs += 1; });
  assert.equal(runs, 1);
});

for (const end of ["pointerup", "pointercancel"]) {
  test(`while something is pressed it waits for ${end}, and runs once`, async () => {
    let runs = 0;
    root.dispatchEvent(new Event("pointerdown"));
    afterPress(() => { runs += 1; });
    await soon();
    assert.equal(runs, 0);
    root.dispatchEvent(new Event(end));
    await soon();
    root.dispatchEvent(new Event(end));
    await soon();
    assert.equal(runs, 1);
  });
}
