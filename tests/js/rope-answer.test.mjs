import assert from "node:assert/strict";
import { test } from "node:test";
import { ropeLength as question } from "../../www/js/rope-answer.js";
import { ropeLength } from "./rope-engine.mjs";

const { answer } = ropeLength({ crotchHeight: 11, anchor: "base" });

test("the short answer is the headline, and no shorter sum of its own", () => {
  assert.equal(question.glance(answer), answer.first);
});
