import { readFileSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { waysOut } from "../core/access";
import type { DocumentEdit, Finding, Statement } from "../core/base";
import { type Build, read, readDocument, write } from "../core/build";
import { siteTime } from "../core/clock";
import { apply } from "../core/edit";
import { compare, type Plan, plan } from "../core/plan";

/**
 * What the examples are expected to say stands in test/fixtures/examples/*.expected.json and is looked at by people when it changes.
 * It is written anew only by: EXPECTED=write npx vitest run --project rooms src/examples/expected.test.ts
 */
const folder = "test/fixtures/examples";
const isWriting = process.env.EXPECTED === "write";

function compareWithFixture(name: string, found: unknown): void {
  const path = `${folder}/${name}.expected.json`;
  if (isWriting) writeFileSync(path, `${JSON.stringify(found, null, 2)}\n`);
  expect(found).toEqual(JSON.parse(readFileSync(path, "utf8")));
}

const documentOf = (file: string) => read(readFileSync(`src/examples/${file}.json`, "utf8")).document;
const editsOf = (name: string) => JSON.parse(readFileSync(`${folder}/${name}.json`, "utf8")) as DocumentEdit[];

/** A statement as one line: its rule and every id it names. */
const line = (s: Statement) =>
  [s.rule, s.step, s.other, s.piece, ...(s.pieces ?? []), s.way ?? s.place, s.need, s.id].filter((part) => part !== undefined).join(" ");
const block = (f: Finding) => ({ code: f.code, at: f.where.id ?? "", because: (f.because ?? []).map(line).sort() });
const stops = (p: Plan) => p.findings.filter((f) => f.severity === "stop");

function said(build: Build, p: Plan) {
  const time = siteTime(build.site.zone, build.start);
  const name = (job: number) => (job < build.steps.length ? build.steps[job]!.id : build.deliveries[job - build.steps.length]!.id);
  const order = [...p.steps.keys()].sort(
    (a, b) => p.steps[a]!.start - p.steps[b]!.start || p.steps[a]!.finish - p.steps[b]!.finish || a - b,
  );
  return {
    finish: time.momentOf(p.finish),
    handHours: p.handMinutes / 60,
    siteDays: p.days.filter((d) => d.site).length,
    visits: p.visits.length,
    starts: order.map((s) => `${time.momentOf(p.steps[s]!.start)} ${name(s)}`),
    chain: p.chain.map((link) => name(link.job)),
    closings: p.closings.map((c) => ({
      piece: build.pieces[c.piece]!.id,
      at: time.momentOf(c.at),
      forGood: c.forGood,
      before: c.before.map((b) => `${b.what} ${name(b.step)}${b.forced ? "" : ", or after"}`),
    })),
  };
}

describe("expected answers", () => {
  test.each(["bank-cellar", "garden-wall"])("%s: order, finish, chain and closings", (file) => {
    const build = readDocument(documentOf(file)).build!;
    const planned = plan(build);
    expect(planned.status).toBe("planned");
    compareWithFixture(file, said(build, planned));
  });

  test("the build that cannot be built: its blocks, each with the statements that cannot hold together", () => {
    compareWithFixture("impossible", stops(plan(readDocument(documentOf("impossible")).build!)).map(block));
  });
});

describe("edits of the bank cellar", () => {
  const document = documentOf("bank-cellar");
  const kept = plan(readDocument(document).build!);
  const edited = (edits: string) => {
    const applied = apply(document, editsOf(edits));
    const build = readDocument(applied.document).build!;
    return { applied, build, now: plan(build) };
  };

  test("the last face of a column before its bars are tied is refused, with the reasons that forbid it", () => {
    const { now } = edited("bank-cellar.last-face-first");
    expect(now.status).toBe("no-order");
    compareWithFixture("bank-cellar.last-face-first", stops(now).map(block));
  });

  test("each column has ways out, the bench among them, and every one of them leads to a plan", () => {
    const { applied, build, now } = edited("bank-cellar.last-face-first");
    const read = (edits: readonly DocumentEdit[]) => readDocument(apply(applied.document, edits).document).build;
    for (const finding of stops(now)) {
      const ways = waysOut(build, finding, read);
      expect(ways.length).toBeGreaterThanOrEqual(2);
      const bench = ways.find((way) => way.kind === "bench");
      expect(bench?.detail.piece, finding.where.id).toMatch(/^column-cage#/);
      for (const way of ways) expect(plan(read(way.edits)!).status, `${finding.where.id} ${way.kind}`).toBe("planned");
    }
  });

  test("the shed timber three days late costs nothing, and nothing moves", () => {
    const { build, now } = edited("bank-cellar.shed-timber-three-days-late");
    const c = compare(kept, now, build);
    expect(c.finishAfter).toBe(c.finishBefore);
    expect(c.siteDaysLost).toBe(0);
    expect(c.moved).toEqual([]);
    expect(c.stayed).toBe(build.steps.length);
    expect(c.findings.map((f) => f.code)).toContain("compare.before-next-site-day");
  });

  test("the shed timber two weeks late costs a weekend, from sills to last inspection; the concrete stays", () => {
    const { build, now } = edited("bank-cellar.shed-timber-two-weeks-late");
    const c = compare(kept, now, build);
    expect(c.siteDaysLost).toBe(2);
    const moved = new Set(c.moved.map((m) => m.step));
    for (const id of ["bolt-sills", "frame-walls", "set-rafters", "nail-siding", "inspect-final"]) expect(moved.has(id), id).toBe(true);
    for (const id of ["pour-footing", "pour-walls", "pour-vault", "pour-porch", "strip-column#1"]) expect(moved.has(id), id).toBe(false);
    expect(c.moved.length + c.stayed).toBe(build.steps.length);
    const through = c.through.map((link) => (build.steps[link.job] ?? build.deliveries[link.job - build.steps.length])!.id as string);
    expect(through[0]).toBe("shed-timber");
    expect(through[1]).toBe("bolt-sills");
    expect(through.at(-1)).toBe("inspect-final");
  });

  test.each(["last-face-first", "shed-timber-three-days-late", "shed-timber-two-weeks-late"])(
    "%s taken back leaves every byte as it was",
    (name) => {
      const { applied } = edited(`bank-cellar.${name}`);
      expect(write(applied.document as never)).not.toBe(write(document as never));
      const back = apply(applied.document, applied.inverse).document;
      expect(write(back as never)).toBe(write(document as never));
      expect(JSON.stringify(plan(readDocument(back).build!).steps)).toBe(JSON.stringify(kept.steps));
    },
  );
});
