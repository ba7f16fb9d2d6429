import assert from "node:assert/strict";
import { test } from "node:test";
import { effortText, glanceText } from "../../www/js/can-i-climb.js";

test("ranges are said to come from sums, and no sums are said of none", () => {
  assert.equal(effortText({ samples: 0, more: false }), "");
  assert.equal(
    effortText({ samples: 4000, more: false }),
    "The ranges come from doing the sum 4000 times with the uncertain figures varied; nobody made these climbs.");
  assert.ok(effortText({ samples: 200, more: true }).length > effortText({ samples: 200, more: false }).length);
});

test("the short answer holds the pull only while there is no verdict", () => {
  const figures = [{ id: "other", text: "3" }, { id: "pullNeeded", text: "328 N" }];
  const none = { id: "none", text: "No verdict yet" };
  assert.equal(glanceText({ verdict: none, figures }), "No verdict yet: one pull takes about 328 N");
  assert.equal(glanceText({ verdict: none, figures: [] }), "No verdict yet");
  assert.equal(glanceText({ verdict: { id: "at-limit", text: "At your limit" }, figures }), "At your limit");
});
