import assert from "node:assert/strict";
import { test } from "node:test";
import { fileName, pocketWith } from "../../www/js/keep.js";

test("a plan goes into its slot as text, once", () => {
  const html = '<head><meta name="plan" content=""></head><p><meta name="plan" content=""></p>';
  const filled = pocketWith(html, 'v=1&q=x&ownRig="$&');
  assert.equal(filled, '<head><meta name="plan" content="v=1&amp;q=x&amp;ownRig=&quot;$&amp;"></head><p><meta name="plan" content=""></p>');
});

test("a file without a slot in its head is not handed over as if it held the plan", () => {
  assert.equal(pocketWith("<head></head>", "v=1"), null);
  assert.equal(pocketWith('<head></head><script>const SLOT = \'<meta name="plan" content="">\';</script>', "v=1"), null);
});

test("a file is named by its day", () => assert.equal(fileName(new Date(2027, 2, 5)), "boughline-plan-2027-03-05.html"));
