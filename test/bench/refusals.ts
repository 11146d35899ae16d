import { readDocument } from "../../src/core/build";
import { clocksOf } from "../../src/core/clock";
import { PlanSearch, plan } from "../../src/core/plan";
import { optionsOf } from "./options";
import { realisticDocument } from "./realistic";

/**
 * How long it takes to say why a build has no plan: of builds drawn from 1, 2 and so on the first bays must be done by a date that leaves each of them time but not all.
 * `npm run bench -- refusals [--steps N] [--builds N] [--seconds S]`: units, seconds and parts of each answer; each build is given up after so many seconds.
 */
const values = optionsOf({
  steps: { type: "string", default: "300" },
  builds: { type: "string", default: "20" },
  seconds: { type: "string", default: "60" },
});

/** The last step of one of the first bays. */
const lastOfBay = /^b[0-3]-patch$/;
const days = 7;

let total = 0;
let most = 0;
let open = 0;
for (let start = 1; start <= Number(values.builds); start++) {
  const document = realisticDocument(Number(values.steps), start);
  const { time } = clocksOf(readDocument(document).build!);
  const deadline = time.dateOf(Math.round(days * (8.4 + 0.35 * (start % 10))) as Parameters<typeof time.dateOf>[0]);
  const steps = (document.steps as { id: string }[]).map((step) => (lastOfBay.test(step.id) ? { ...step, deadline } : step));
  const build = readDocument({ ...document, steps }).build!;
  const from = performance.now();
  const { status } = plan(build);
  const search = new PlanSearch(build);
  const seconds = (): number => (performance.now() - from) / 1000;
  while (!search.done && search.sought().finish === null && seconds() < Number(values.seconds)) search.step(1);
  const { finish, ruledOut, tried } = search.sought();
  const said = ruledOut !== null ? `ruled out by ${ruledOut.because?.length} parts` : finish !== null ? "planned" : "no answer";
  console.log(`start ${start}, by ${deadline}: ${status}, then ${said} after ${tried} units, ${seconds().toFixed(1)} s`);
  total += seconds();
  most = Math.max(most, seconds());
  if (finish === null && ruledOut === null) open++;
}
console.log(`${total.toFixed(1)} s in all, ${most.toFixed(1)} s at most, ${open} without an answer`);
