import { plan } from "../../src/core/plan";
import { pourSheets } from "../../src/core/pour";
import cellar from "../../src/examples/bank-cellar.json";
import { columnOf, deckOf, formDocument, readForms, wallOf } from "../fixtures/form-documents";

/**
 * A full evaluation of all pours of a build: pressure, every member, what would make it hold, and the pour day, beside its plan. Nothing is kept from run to run: every
 * build is read anew. Medians of 40 after 40 unmeasured, in this process; the first of all is told apart. Time on the clock, and of the processor.
 */
const failing = formDocument([
  columnOf(),
  columnOf({ id: "thin" }, { bands: { stuff: { size: "2x4", grade: "DF-L No 2", wet: true }, at: ["6 in", "30 in", "60 in"] } }),
  wallOf(),
  wallOf({ batter: "1:8" }, {}, { id: "battered" }),
  wallOf({}, { ties: undefined }, { id: "one-sided", faces: [{ face: "b", against: "earth" }] }),
  deckOf(),
]);

interface Timed {
  readonly clock_ms: number;
  readonly processor_ms: number;
}

function timed(run: () => unknown): Timed {
  const busy = process.cpuUsage();
  const from = performance.now();
  run();
  const clock_ms = performance.now() - from;
  return { clock_ms, processor_ms: process.cpuUsage(busy).user / 1000 };
}

const middle = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1] ?? 0;

function median(document: unknown, run: (build: ReturnType<typeof readForms>) => unknown): string {
  const once = (): Timed => {
    const build = readForms(structuredClone(document));
    return timed(() => run(build));
  };
  for (let i = 0; i < 40; i += 1) once();
  const all = Array.from({ length: 40 }, once);
  return `${middle(all.map((one) => one.clock_ms)).toFixed(2)} ms (${middle(all.map((one) => one.processor_ms)).toFixed(2)} ms of the processor)`;
}

const fresh = readForms(structuredClone(cellar));
console.log(`first pours in a fresh process: ${timed(() => pourSheets(fresh)).clock_ms.toFixed(0)} ms`);

for (const [name, document] of [
  ["the bank cellar", cellar],
  ["six forms, most of them over", failing],
] as const) {
  const build = readForms(structuredClone(document));
  const elements = pourSheets(build).flatMap((sheet) => sheet.elements);
  const members = elements.reduce((sum, { form }) => sum + (form?.members.length ?? 0), 0);
  const fixes = elements.reduce((sum, element) => sum + element.fixes.length, 0);
  console.log(`\n${name}: ${build.pours.length} pours, ${elements.length} elements, ${members} members, ${fixes} changes offered`);
  console.log(`  all pours      ${median(document, pourSheets)}`);
  console.log(`  its plan       ${median(document, plan)}`);
  console.log(`  asked again    ${timed(() => pourSheets(build)).clock_ms.toFixed(3)} ms`);
}
