import type { CDPSession, Page } from "playwright-core";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** µs: when it began, how long it took, and how long its thread was running meanwhile. */
  readonly ts: number;
  readonly dur?: number;
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

const task = "ThreadControllerImpl::RunTask";
/** What the browser does last on the page's thread for a frame: hands what is to be drawn to another thread. */
const handedOver = "Layerize";

/** A frame with less than this only kept the screen as it was; it would flatter the rest. ms */
const idle_ms = 2;

/**
 * What the page's main thread works from an act until the page has been still for `still_ms`, frame by frame, ms of its own running time: all it runs up to
 * where a frame is handed over to be drawn is of that frame, and what it runs after the last is one more. Frames in which next to nothing was done are left out.
 */
export async function framesOf(page: Page, act: () => Promise<unknown>, still_ms = 500): Promise<number[]> {
  const session = await page.context().newCDPSession(page);
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { includedCategories: ["toplevel", "devtools.timeline", "__metadata"] },
  });
  await act();
  await page.waitForTimeout(still_ms);
  await ended(session);
  await session.detach();
  return inFrames(events);
}

async function ended(session: CDPSession): Promise<void> {
  const complete = new Promise<void>((done) => session.once("Tracing.tracingComplete", () => done()));
  await session.send("Tracing.end");
  await complete;
}

function inFrames(events: readonly TraceEvent[]): number[] {
  const of = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const mains = new Set(events.filter(({ name, args }) => name === "thread_name" && args?.name === "CrRendererMain").map(of));
  const commits = events.filter((event) => event.name === handedOver && mains.has(of(event)));
  const main = of(commits[0] ?? events.find((event) => mains.has(of(event)))!);
  const tasks = events.filter((event) => event.name === task && event.ph === "X" && of(event) === main).sort((a, b) => a.ts - b.ts);
  const ends = commits.filter((event) => of(event) === main).map(({ ts }) => ts);
  const frames: number[] = [];
  let worked = 0;
  for (const { ts, dur = 0, tdur = dur } of tasks) {
    worked += tdur / 1000;
    if (!ends.some((at) => at >= ts && at <= ts + dur)) continue;
    frames.push(worked);
    worked = 0;
  }
  return [...frames, worked].filter((time) => time >= idle_ms);
}
