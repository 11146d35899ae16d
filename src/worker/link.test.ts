import fc from "fast-check";
import { expect, test, vi } from "vitest";
import type { DocumentEdit } from "../core/base";
import { hangsAfter_ms, Link, type WorkerLike } from "./link";
import { type Ask, protocolVersion, type Reply } from "./protocol";
import { Server } from "./server";

const gone = {} as ErrorEvent;
type Words = readonly string[];
const edited = (document: unknown, change: readonly DocumentEdit[]): unknown => [
  ...(document as Words),
  ...change.map((edit) => edit.value as string),
];

/** A worker in this thread: messages are copied and arrive when `post` lets them. Answers a plan with the document it was made from. */
function workerOn(post: (deliver: () => void) => void, seen: Ask[] = [], version = protocolVersion): WorkerLike {
  const worker: WorkerLike & { alive: boolean } = {
    alive: true,
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    terminate() {
      worker.alive = false;
    },
    postMessage(message) {
      const copy = structuredClone(message) as Ask;
      post(() => {
        if (!worker.alive) return;
        seen.push(copy);
        server.hear(copy);
      });
    },
  };
  const server = new Server<Words>({
    edited,
    read: (document) => (Array.isArray(document) ? (document as Words) : null),
    answer: (_ask, read) => ({ plan: { engine: read.join(" ") } }) as never,
    reply: (reply: Reply) => {
      const copy = structuredClone({ ...reply, protocol: version });
      post(() => worker.onmessage?.({ data: copy } as MessageEvent));
    },
    later: (work) => post(work),
  });
  return worker;
}

const soon = (deliver: () => void): void => queueMicrotask(deliver);
const engineOf = (answer: unknown): string => (answer as { plan: { engine: string } }).plan.engine;

test("sends the document once, then only what changed", async () => {
  const seen: Ask[] = [];
  const link = new Link(() => workerOn(soon, seen));
  const first = ["dig"];
  const second = ["dig", "form"];
  expect(engineOf(await link.ask("plan", { document: first }, {}))).toBe("dig");
  const change = [{ path: ["x"], value: "form" }];
  expect(engineOf(await link.ask("plan", { document: second, from: { document: first, change } }, {}))).toBe("dig form");
  expect(engineOf(await link.ask("plan", { document: second }, {}))).toBe("dig form");
  expect(seen.map((ask) => Object.keys(ask.about)[0])).toEqual(["build", "base", "base"]);
});

test("a worker begun ahead is the one that is asked, and one lost before that is replaced", async () => {
  const made: WorkerLike[] = [];
  const link = new Link(() => {
    const worker = workerOn(soon);
    made.push(worker);
    return worker;
  });
  link.begin();
  link.begin();
  expect(engineOf(await link.ask("plan", { document: ["dig"] }, {}))).toBe("dig");
  expect(made.length).toBe(1);
  const other = new Link(() => {
    const worker = workerOn(soon);
    made.push(worker);
    return worker;
  });
  other.begin();
  made[1]?.onerror?.(gone);
  expect(engineOf(await other.ask("plan", { document: ["form"] }, {}))).toBe("form");
  expect(made.length).toBe(3);
});

test("a lost worker is replaced and gets the last document whole", async () => {
  const workers: WorkerLike[] = [];
  const seen: Ask[] = [];
  const link = new Link(() => {
    const worker = workers.length === 0 ? workerOn(() => undefined) : workerOn(soon, seen);
    workers.push(worker);
    return worker;
  });
  const answer = link.ask("plan", { document: ["dig", "form"] }, {});
  workers[0]?.onerror?.(gone);
  expect(engineOf(await answer)).toBe("dig form");
  expect(seen[0]?.about).toEqual({ build: ["dig", "form"] });
});

test("a worker that is lost again and again is given up, without hanging", async () => {
  let made = 0;
  const link = new Link(() => {
    made += 1;
    const worker = workerOn(() => undefined);
    queueMicrotask(() => worker.onerror?.(gone));
    return worker;
  });
  expect(await link.ask("plan", { document: [] }, {})).toBeNull();
  expect(made).toBe(4);
});

test("a worker that hangs is replaced after its time, however often it is asked meanwhile, and gets the last document whole", async () => {
  vi.useFakeTimers();
  try {
    const seen: Ask[] = [];
    let made = 0;
    const link = new Link(() => {
      made += 1;
      return made === 1 ? workerOn(() => undefined) : workerOn(soon, seen);
    });
    const first = link.ask("plan", { document: ["dig"] }, {});
    await vi.advanceTimersByTimeAsync(hangsAfter_ms - 1);
    const second = link.ask("plan", { document: ["dig", "form"] }, {});
    expect(await first).toBeNull();
    expect(made).toBe(1);
    await vi.advanceTimersByTimeAsync(1);
    expect(engineOf(await second)).toBe("dig form");
    expect(made).toBe(2);
    expect(seen[0]?.about).toEqual({ build: ["dig", "form"] });
    // Nothing is waited for now, so nothing is found to hang.
    await vi.advanceTimersByTimeAsync(3 * hangsAfter_ms);
    expect(made).toBe(2);
  } finally {
    vi.useRealTimers();
  }
});

test("a worker of another version is not believed", async () => {
  let made = 0;
  const link = new Link(() => {
    made += 1;
    return workerOn(soon, [], made === 1 ? protocolVersion + 1 : protocolVersion);
  });
  expect(engineOf(await link.ask("plan", { document: ["dig"] }, {}))).toBe("dig");
  expect(made).toBe(2);
});

test("a document that cannot be read is answered, not left open", async () => {
  const link = new Link(() => workerOn(soon));
  expect(await link.ask("plan", { document: "no build" }, {})).toBeNull();
});

test("however messages are delayed, the last question is answered about the last document, and every other is settled", async () => {
  await fc.assert(
    fc.asyncProperty(fc.scheduler(), fc.array(fc.boolean(), { minLength: 1, maxLength: 10 }), async (scheduler, losses) => {
      const workers: WorkerLike[] = [];
      // Messages to one worker keep their order, as they do in a browser.
      const make = (): WorkerLike => {
        let line: Promise<unknown> = Promise.resolve();
        const worker = workerOn((deliver) => {
          line = line.then(() => scheduler.schedule(Promise.resolve())).then(deliver);
        });
        workers.push(worker);
        return worker;
      };
      const link = new Link(make);
      let document: Words = [];
      const answers: Promise<unknown>[] = [];
      for (const loses of losses) {
        const before = document;
        document = [...document, `step${document.length}`];
        answers.push(link.ask("plan", { document, from: { document: before, change: [{ path: ["x"], value: document.at(-1) }] } }, {}));
        if (loses && workers.length < 3) workers.at(-1)?.onerror?.(gone);
      }
      const all = await scheduler.waitFor(Promise.all(answers));
      expect(engineOf(all.at(-1))).toBe(document.join(" "));
      for (const [index, answer] of all.entries()) {
        if (answer !== null) expect(engineOf(answer).split(" ").length).toBe(index + 1);
      }
    }),
    { numRuns: 300 },
  );
});
