// The table of grip recomputed from the survey a second time: another language, and by bisection over readings instead
// of sorting people. `tests/people/norms.rs` proves that the table in this file is the one in the library.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

const folder = new URL("../data/people/", import.meta.url);

/** The rows of a table by the names of its columns. */
function rows(name, between) {
  const [head, ...lines] = readFileSync(new URL(name, folder), "utf8").trimEnd().split("\n");
  const names = head.split(between);
  return lines.map((line) => {
    const cells = line.split(between);
    assert.equal(cells.length, names.length, line);
    return Object.fromEntries(names.map((name, at) => [name, cells[at]]));
  });
}

// In whole tenths, so that sums are exact.
const people = rows("nhanes_grip_micro_18plus.csv", ",").map((row) => ({
  year: row.year,
  sex: row.sex,
  age: Number(row.age),
  grip: Math.round(Number(row.grip_combo_kg) * 10),
  weight: Math.round(Number(row.weight4yr) * 10),
}));

const weightOf = (some) => some.reduce((sum, person) => sum + person.weight, 0);

/** The least reading, in tenths, at or below which at least that share of the weight lies. */
function percentile(some, percent) {
  const wanted = weightOf(some) * percent;
  let [tooLow, enough] = [0, 2000];
  while (enough - tooLow > 1) {
    const reading = Math.floor((tooLow + enough) / 2);
    if (weightOf(some.filter((person) => person.grip <= reading)) * 100 >= wanted) enough = reading;
    else tooLow = reading;
  }
  return enough;
}

const columns = { p5_kg: 5, p20_kg: 20, p50_kg: 50, p80_kg: 80, p95_kg: 95 };
const norms = rows("norms.tsv", "\t");

test("the table has every sex and age once", () => {
  assert.deepEqual(
    norms.map((row) => row.sex + row.from),
    ["F", "M"].flatMap((sex) => [18, 20, 30, 40, 50, 60, 70, 80].map((from) => sex + from)),
  );
  assert.equal(norms.reduce((sum, row) => sum + Number(row.n), 0), people.length);
});

for (const row of norms) {
  test(`percentiles of ${row.sex} from ${row.from} on are those of the survey`, () => {
    const to = row.to === "" ? Infinity : Number(row.to);
    const some = people.filter(({ sex, age }) => sex === row.sex && age >= Number(row.from) && age <= to);
    assert.equal(some.length, Number(row.n));
    for (const [column, percent] of Object.entries(columns)) {
      assert.equal((percentile(some, percent) / 10).toFixed(1), row[column], column);
    }
  });
}

// Perna and others (J Strength Cond Res 30:867, 2016) print 216.4 and 136.5 lb; the microdata give 0.2 lb less of each.
// Which people the authors left out is not in what we have read.
for (const [sex, printed, here] of [["M", 216.4, "216.2"], ["F", 136.5, "136.3"]]) {
  test(`the mean of ${sex} from 30 to 39 is a fifth of a pound under the printed one`, () => {
    const some = people.filter((person) => person.year === "2011" && person.sex === sex && person.age >= 30 && person.age < 40);
    const tenths = some.reduce((sum, person) => sum + person.weight * person.grip, 0) / weightOf(some);
    const pounds = tenths / 10 / 0.45359237; // by definition
    assert.equal(pounds.toFixed(1), here);
    assert.equal((printed - pounds).toFixed(1), "0.2");
  });
}
