import type { Build } from "../../src/core/build";
import { pourSheets } from "../../src/core/pour";
import { columnOf, deckOf, formDocument, readForms, wallOf } from "../fixtures/form-documents";

/**
 * A full evaluation of all pours of a build: pressure, every member, what would make it hold, and the pour day. Nothing is kept from run to run: every build is read
 * anew. Median of 40 after 40 unmeasured, in this process; the first of all is told apart.
 */
const document = formDocument([
  columnOf(),
  columnOf({ id: "thin" }, { bands: { stuff: { size: "2x4", grade: "DF-L No 2", wet: true }, at: ["6 in", "30 in", "60 in"] } }),
  wallOf(),
  wallOf({ batter: "1:8" }, {}, { id: "battered" }),
  wallOf({}, { ties: undefined }, { id: "one-sided", faces: [{ face: "b", against: "earth" }] }),
  deckOf(),
]);

const fresh = (): Build => readForms(structuredClone(document));

function timed(build: Build): number {
  const from = performance.now();
  pourSheets(build);
  return performance.now() - from;
}

const first = timed(fresh());
for (let i = 0; i < 40; i += 1) timed(fresh());
const times = Array.from({ length: 40 }, () => timed(fresh())).sort((a, b) => a - b);
const build = fresh();
const sheets = pourSheets(build);
const members = sheets.flatMap(({ elements }) => elements.flatMap(({ form }) => form?.members ?? [])).length;
const fixes = sheets.flatMap(({ elements }) => elements.flatMap((element) => element.fixes)).length;
const from = performance.now();
const again = pourSheets(build);
const kept = performance.now() - from;
console.log(`${build.pours.length} pour, ${build.pours[0]?.elements.length} elements, ${members} members, ${fixes} changes offered`);
console.log(`first in a fresh process ${first.toFixed(1)} ms, then ${times[20]?.toFixed(2)} ms (median of ${times.length})`);
console.log(
  `asked again of the same build ${kept.toFixed(3)} ms, ${again.every((sheet, i) => sheet === sheets[i]) ? "the same" : "other"} sheets`,
);
