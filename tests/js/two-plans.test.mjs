import assert from "node:assert/strict";
import { test } from "node:test";
import { askedIn, bothIn, cautionsApart, figureRows, linkPasted, linksIn, saidOtherwise } from "../../www/js/two-plans.js";

test("two links make one fragment, and come out of it as they were", () => {
  const links = ["v=1&q=loads&bodyMass=80kg", "v=1&q=loads&bodyMass=90kg&cords=2~6mm~1.8m"];
  assert.deepEqual(linksIn(`#${bothIn(links)}`), links);
  assert.equal(bothIn([`https://somewhere/loads.html#${links[0]}`, ` #${links[1]} `]), links.join("&"));
  assert.deepEqual(linksIn(""), []);
  assert.deepEqual(linksIn("#v=1&q=loads"), ["v=1&q=loads"]);
});

test("two plans whose link went through HTML are found in it all the same", () => {
  const links = ["v=1&amp;q=loads&amp;bodyMass=80kg", "v=1&amp;q=loads"];
  assert.deepEqual(linksIn(`#${links.join("&amp;")}`), links);
  assert.deepEqual(linksIn(`#${links.join("&amp;amp;")}`), links);
});

test("a plan's link takes the question and the units that are chosen, in the order links are written in", () => {
  const si = { system: "si", decimal: "." };
  assert.equal(askedIn("https://somewhere/loads.html#v=1&q=loads&f=1&u=us&d=comma&bodyMass=80kg", "rescue", si), "v=1&q=rescue&f=1&u=si&bodyMass=80kg");
  assert.equal(askedIn("v=1&amp;q=loads&amp;f=1&amp;bodyMass=80kg", "loads", { system: "us", decimal: "," }), "v=1&q=loads&f=1&u=us&d=comma&bodyMass=80kg");
  assert.equal(askedIn("hello", "loads", si), "hello");
});

test("a link is found in what somebody pasted", () => {
  const link = "https://example.org/loads.html#v=1&q=loads&bodyMass=80kg";
  for (const text of [link, ` ${link}\n`, `Here is my plan: ${link}, what do you think?`, `<${link}>.`]) assert.equal(linkPasted(text), link);
  assert.equal(linkPasted("#loads/v=1&q=loads"), "#loads/v=1&q=loads");
  assert.equal(linkPasted("hello"), "hello");
});

test("what one link says and the other leaves to be taken for granted is not otherwise", () => {
  const field = { id: "gloves", noun: "gloves", likely: "none", options: [{ id: "none", noun: "none" }, { id: "thin", noun: "thin" }] };
  assert.deepEqual(saidOtherwise([{ gloves: "none" }, {}], [field]), []);
  assert.deepEqual(saidOtherwise([{ gloves: "thin" }, {}], [field]), [["gloves", "thin", ""]]);
});

test("only what is said otherwise is listed, a choice by its noun, and what is not said is empty", () => {
  const fields = [
    { id: "bodyMass", noun: "body mass", options: null },
    { id: "rig", noun: "rig", options: [{ id: "tail-3", noun: "3:1" }, { id: "tail-5", noun: "5:1" }] },
    { id: "kitMass", noun: "kit", options: null, unit: "kg" },
    { id: "stature", noun: "height", options: null, unit: "cm" },
    { id: "ownRig", noun: "own rig", options: null, unit: null },
  ];
  const rows = saidOtherwise([{ bodyMass: "80kg", rig: "tail-3" }, { bodyMass: "80kg", rig: "tail-5", kitMass: "-6.5kg", stature: "6ft3.5in", ownRig: "tied.upper-2" }], fields);
  assert.deepEqual(rows, [["rig", "3:1", "5:1"], ["kit", "", "-6.5 kg"], ["height", "", "6 ft 3.5 in"], ["own rig", "", "tied.upper-2"]]);
});

test("a figure that one plan lacks or that has no end is not called more or less", () => {
  const figure = (id, value, text = `${value} N`, range = null) => ({ id, noun: `the ${id}`, value, text, range });
  const rows = figureRows([
    [figure("pull", 300, "300 N", "250 to 350 N"), figure("strokes", 40), figure("gain", 0.2), figure("alone", 1)],
    [figure("pull", 200), figure("strokes", null, "no end"), figure("gain", 0.2001, "0.2 N")],
  ]);
  assert.deepEqual(rows, [
    ["the pull", "300 N, 250 to 350 N", "200 N", "▼ less"],
    ["the strokes", "40 N", "no end", ""],
    ["the gain", "0.2 N", "0.2 N", "the same"],
    ["the alone", "1 N", "—", ""],
  ]);
});

test("no caution of either plan is lost", () => {
  const caution = (text) => ({ text });
  const apart = cautionsApart([["a", "b"].map(caution), ["b", "c"].map(caution)]);
  assert.deepEqual(apart, { both: [caution("b")], first: [caution("a")], second: [caution("c")] });
});
