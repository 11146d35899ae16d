import { waysOut, why, withWaysOut } from "../core/access";
import type { DocumentEdit } from "../core/base";
import { type Build, readDocument } from "../core/build";
import { apply } from "../core/edit";
import { asDone, asDoneAfter, type Plan, plan, planMay, withEffects } from "../core/plan";
import { aim } from "./aim";
import { oneMore } from "./one-more";
import type { Answers, Ask, Question, Questions } from "./protocol";
import { rehearse, rehearsed } from "./rehearse";
import { search } from "./search";
import { Server } from "./server";

interface Read {
  readonly build: Build;
  /** The build after edits of the document; null where it is none then. */
  edited(edits: readonly DocumentEdit[]): Build | null;
  /** Made when first asked for. */
  plan(): Plan;
}

function readOf(document: unknown): Read | null {
  const { build } = readDocument(document);
  let made: Plan | null = null;
  return (
    build && {
      build,
      edited: (edits) => readDocument(apply(document, edits).document).build,
      plan: () => {
        made ??= plan(build);
        return made;
      },
    }
  );
}

const at = (build: Build, id: string): number => {
  const position = build.at.step.get(id);
  if (position === undefined) throw new Error(`no step ${id}`);
  return position;
};

const answers: { readonly [Q in Question]: (read: Read, more: Questions[Q]) => Answers[Q] | Promise<Answers[Q]> } = {
  plan: (read) => ({ plan: read.plan() }),
  trial: (read) => ({ plan: read.plan() }),
  ways: ({ build, edited, plan }, { findings }: Questions["ways"]) => ({
    findings: withEffects(build, withWaysOut(asDone(build), findings, asDoneAfter(edited)), edited, plan),
  }),
  may: ({ build, edited, plan }, { before, after }: Questions["may"]) => {
    const may = planMay(build, at(build, before), at(build, after));
    if (may.verdict !== "no" || !may.finding.because) return { may };
    const found = { ...may.finding, waysOut: may.finding.waysOut ?? waysOut(asDone(build), may.finding, asDoneAfter(edited)) };
    return { may: { ...may, finding: withEffects(build, [found], edited, plan)[0] ?? found } };
  },
  why: ({ build, plan }, { before, after }: Questions["why"]) => ({ why: why(build, plan().access, at(build, before), at(build, after)) }),
  aim: ({ build }, asked: Questions["aim"]) => ({ aimed: aim(build, asked) }),
  oneMore: ({ build, edited }, asked: Questions["oneMore"]) => ({ table: oneMore(build, edited, asked, () => performance.now()) }),
  search: ({ build, edited }, asked: Questions["search"]) => search(build, edited, asked, () => performance.now()),
  // The packages that lay it out are as large as all the rest: a plan does not wait for them.
  layout: async ({ build, plan }, { text }: Questions["layout"]) => {
    const { orderDrawing } = await import("./layout");
    return { drawing: orderDrawing(build, plan().access, { text }) };
  },
};

const later = (work: () => void, wait_ms = 0): void => void setTimeout(work, wait_ms);

const server = new Server<Read>({
  edited: (document, change) => apply(document, change).document,
  read: readOf,
  answer: (ask, read, more) => answers[ask](read, more as never),
  reply: (reply) => postMessage(reply),
  later,
});

let asked = false;
addEventListener("message", ({ data }: MessageEvent<Ask>) => {
  asked = true;
  server.hear(data);
});

void rehearse({ builds: rehearsed, asked: () => asked, later, now: () => performance.now() });
