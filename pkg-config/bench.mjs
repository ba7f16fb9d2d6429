// Measures everything, a part at a time: `node bench.mjs CRITERION TABLE`, the folder for criterion's estimates and the
// file of all tables. What is measured is in tests/bench/.
import { contenders } from "../tests/bench/contenders.mjs";
import { cutting } from "../tests/bench/cutting.mjs";
import { growth } from "../tests/bench/growth.mjs";
import { onPhones } from "../tests/bench/pages.mjs";
import { sizes } from "../tests/bench/sizes.mjs";
import { tables } from "../tests/bench/tables.mjs";
import { report } from "../tests/prove/lib/table.mjs";

const [criterion, path] = process.argv.slice(2);

async function measured(what, measure) {
  console.log(`-- measuring ${what}`);
  return measure();
}

const found = {
  sizes: await measured("sizes", sizes),
  plans: await measured("the module beside a native build and plain JavaScript", () => contenders(criterion)),
  cutting: await measured("cutting plans", cutting),
};
found.growth = await measured("growth", () => growth(found.cutting));
found.pages = await measured("pages in Chromium", onPhones);
await report(path, ...tables(found));
