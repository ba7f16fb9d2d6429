import assert from "node:assert/strict";
import { test } from "node:test";
import { edgesOf } from "../../www/js/scroll-box.js";

test("a box goes on at the edges beyond which there is more of it", () => {
  const at = (scrollLeft, scrollWidth = 500) => edgesOf({ scrollLeft, scrollWidth, clientWidth: 300 });
  assert.deepEqual([at(0), at(100), at(200), at(199.5), at(0, 300)], ["end", "start end", "start", "start", ""]);
});
