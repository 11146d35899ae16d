import { writeFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { examples } from "../../src/examples";
import type { Ask, Question, Reply } from "../../src/worker/protocol";
import { protocolVersion } from "../../src/worker/protocol";
import { spread, withApp } from "./app";
import { optionsOf } from "./options";
import { realisticDocument } from "./realistic";

// Plans as a page hears them from the worker, in a browser: from the question, with the whole document, to the answer that has come back; reading the document and
// both messages are in it. Each first one is that of a new worker, at once or after it was left alone for a while, in which it rehearses; the others change one name in the document.
// `npm run bench -- worker [--steps N] [--start N] [--runs N] [--json OUT] [--as-built]`: the bank cellar, and a build of so many steps drawn from a number.

const values = optionsOf({
  steps: { type: "string", default: "300" },
  start: { type: "string", default: "1" },
  runs: { type: "string", default: "9" },
  json: { type: "string" },
  "as-built": { type: "boolean", default: false },
});
const alone_ms = 6000;

const cellar = await examples.find(({ id }) => id === "bank-cellar")!.load();
const documents: readonly (readonly [name: string, document: unknown])[] = [
  ["bank cellar", cellar],
  [`drawn, ${values.steps} steps, start ${values.start}`, realisticDocument(Number(values.steps), Number(values.start))],
];

/** Medians. */
export interface Heard {
  readonly build: string;
  readonly firstMs: number;
  readonly atOnceMs: number;
  readonly againMs: number;
}

const median = (times: readonly number[]): number => Number([...times].sort((a, b) => a - b)[times.length >> 1]!.toFixed(1));
const results: Heard[] = [];
await withApp(async (page) => {
  const started = page.workers()[0] ?? (await page.waitForEvent("worker"));
  const url = started.url();
  // Away from the app, whose own work would stand in the way: only its worker is looked at.
  await page.goto(new URL("/icon.svg", url).href);
  for (const [name, document] of documents) {
    const firsts: number[] = [];
    const atOnce: number[] = [];
    const again: number[] = [];
    for (let run = 0; run < Number(values.runs); run++) {
      const [first, ...others] = await asked(page, url, document, alone_ms, 10);
      firsts.push(first!);
      again.push(...others.slice(-5));
      atOnce.push(...(await asked(page, url, document, 0, 1)));
    }
    results.push({ build: name, firstMs: median(firsts), atOnceMs: median(atOnce), againMs: median(again) });
    console.log(`${name}: first ${spread(firsts)}`);
    console.log(`  asked at once, with the loading of the worker: ${spread(atOnce)}`);
    console.log(`  again: ${spread(again)}`);
  }
});

if (values.json !== undefined) writeFileSync(values.json, `${JSON.stringify(results, null, 1)}\n`);

/** Milliseconds to each of so many plans from a new worker. */
function asked(page: Page, url: string, document: unknown, alone: number, times: number): Promise<number[]> {
  return page.evaluate(
    async ({ url, document, alone, times, protocol }) => {
      const worker = new Worker(url, { type: "module" });
      await new Promise((resume) => setTimeout(resume, alone));
      const taken: number[] = [];
      for (let revision = 1; revision <= times; revision++) {
        const build = { ...(document as object), name: `${revision}` };
        const ask: Ask = { protocol, revision, ask: "plan" as Question, about: { build }, with: {} };
        const from = performance.now();
        const reply = await new Promise<Reply>((resolve, reject) => {
          worker.onmessage = ({ data }: MessageEvent<Reply>) => resolve(data);
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.postMessage(ask);
        });
        taken.push(performance.now() - from);
        if (!("answer" in reply)) throw new Error(`refused: ${reply.refused}`);
      }
      worker.terminate();
      return taken;
    },
    { url, document, alone, times, protocol: protocolVersion },
  );
}
