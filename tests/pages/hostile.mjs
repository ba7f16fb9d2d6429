// Links that nobody means well with, made of real ones by chance from a seed.
import { fields, writeLink } from "boughline";
import { exampleDraft } from "../../www/js/example.js";

const QUESTIONS = [...new Set(fields().flatMap(({ questions }) => questions)), "trip-sheet"];
if (!QUESTIONS.every((question) => typeof question === "string")) throw new Error("dist/ is of an older library: run pkg-config/build.");
const PLANS = [
  exampleDraft("si"),
  exampleDraft("us"),
  { bodyMass: "80 kg", climbHeight: "11 m", rig: "tail-5", measuredPull: "520 N", setback: "3 cm" },
  { bodyMass: "64 kg", climbHeight: "9 m", rig: "own", ownRig: "tied tree, hitch upper, hitch climber, turn climber bearing-pulley, turn upper bearing-pulley, hand climber" },
  { cords: "2 x 6 mm 1.8 m foot loop", hanks: "any 5 m", cordUse: "prusik", ropeDiameter: "11 mm" },
];
const VIEWS = [{ system: "si", decimal: "." }, { system: "us", decimal: "." }, { system: "si", decimal: "," }];
const LINKS = PLANS.flatMap((plan) => VIEWS.flatMap((view) => QUESTIONS.map((question) => writeLink(question, plan, view)))).filter(Boolean);

const IDS = fields().map(({ id }) => id);
const NAMES = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty", "__defineGetter__", "valueOf", "then", "length", "", "v", "q", "f", "u", "d", "<b id=pwned>"];
const VALUES = [
  "<script>globalThis.pwned=1</script>", "<img src=x onerror=globalThis.pwned=1>", '"><svg onload=globalThis.pwned=1>', "javascript:globalThis.pwned=1",
  "<b id=pwned>x</b>", "<iframe srcdoc='<script>parent.pwned=1</script>'>", "'-alert(1)-'", "${alert(1)}", "{{constructor.constructor('alert(1)')()}}",
  "%3Cscript%3Ealert(1)%3C/script%3E", "&lt;b&gt;", "//other.invalid/x", "https://other.invalid/", "data:text/html,<script>alert(1)</script>",
  ...NAMES, "NaN", "Infinity", "-Infinity", "-0", "0", "1e999", "1e-999", "1e308kg", "-80kg", "0x50", "8_0", "9".repeat(400), "0.".padEnd(400, "0"), "x".repeat(5000),
  "80kg80kg", "80,5,5kg", "1.234.567", "١٢", "８０kg", "80\u00a0kg", "\u0000", "80\u0000kg", "\u202e80kg", "\u2066m\u2069", "\u2028", "\ud800", "\u{1f332}", "\ufeff80kg",
  "%", "%zz", "%E0%A4", "%00", "%2526", "~", "~~~", ",", ",,", "--", "..", "null", "undefined", "true", "[object Object]", "tied.tree--hand.climber", "own", "tail-99",
];
const LETTERS = ["&", "=", "~", "%", ".", "-", ",", "#", "?", ";", "+", "<", "\"", "'", "\u0000", "\u202e", "\ud83c", "9", "e", "kg", " "];

/** A function that makes one hostile fragment after another. */
export function hostileLinks(draw) {
  const one = (list) => list[Math.floor(draw() * list.length)];
  const at = (text) => Math.floor(draw() * (text.length + 1));
  const key = () => (draw() < 0.7 ? one(IDS) : one(NAMES));
  const parts = (link, change) => { const list = link.split("&"); change(list); return list.join("&"); };
  const ways = [
    (link) => parts(link, (list) => { const i = Math.floor(draw() * list.length); list[i] = `${list[i].split("=")[0]}=${one(VALUES)}`; }),
    (link) => `${link}&${key()}=${one(VALUES)}`,
    (link) => parts(link, (list) => list.splice(at(list), 0, `${one(list).split("=")[0]}=${one(VALUES)}`)),
    (link) => parts(link, (list) => list.splice(at(list), 0, one(list))),
    (link) => link.replace(/^v=[^&]*/u, `v=${one(["", "0", "2", "-1", "1e9", "1.0", "one", ...VALUES])}`),
    (link) => link.replace(/&f=[^&]*/u, `&f=${one(["", "0", "2", "99", "1e9", ...VALUES])}`),
    (link) => link.replace(/&q=[^&]*/u, `&q=${one([...QUESTIONS, "climb", ...NAMES, ...VALUES])}`),
    (link) => link.replace(/&u=[^&]*/u, `&u=${one(["us", "si", "us-c", ...VALUES])}`),
    (link) => { const i = at(link); return link.slice(0, i) + one(LETTERS) + link.slice(i + Math.floor(draw() * 3)); },
    (link) => { const i = at(link); return link.slice(0, i) + [...link.slice(i, i + 4)].map((letter) => `%${letter.codePointAt(0).toString(16).padStart(2, "0")}`).join("") + link.slice(i + 4); },
    (link) => link.slice(0, at(link)),
    (link) => parts(link, (list) => list.splice(Math.floor(draw() * list.length), 1)),
    (link) => parts(link, (list) => list.sort(() => draw() - 0.5)),
    (link) => link.replace(/=(\d+)/u, (_, digits) => `=${digits}${"0".repeat(Math.floor(draw() * 30))}`),
    () => `v=1&${Array.from({ length: 5 }, () => `${key()}=${one(VALUES)}`).join("&")}`,
  ];
  return () => {
    let link = one(LINKS);
    for (let i = Math.floor(draw() * 3); i >= 0; i -= 1) link = one(ways)(link);
    return link;
  };
}
