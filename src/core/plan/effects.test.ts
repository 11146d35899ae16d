import { expect, test } from "vitest";
import { aloneOnWeekends } from "../../../test/fixtures/alone";
import { withWaysOut } from "../access";
import type { DocumentEdit } from "../base";
import { readDocument } from "../build";
import { apply } from "../edit";
import { withEffect, withEffects } from "./effects";
import { plan } from "./plan-of";

const written = aloneOnWeekends({
  people: [],
  places: [{ id: "bars", name: "Bars", ways: [{ id: "north", name: "from the north", passes: ["person"] }] }],
  pieces: [{ id: "form", name: "Form", closes: ["bars.north"] }],
  steps: [
    { id: "tie", name: "Tie", work: "6 h", reaches: [{ place: "bars", need: "person" }] },
    { id: "set", name: "Set", work: "6 h", puts: ["form"] },
  ],
});
const edited = (document: unknown) => (edits: readonly DocumentEdit[]) => readDocument(apply(document, edits).document).build;
const late: DocumentEdit[] = [{ path: ["steps", "id=set", "notBefore"], value: "2027-03-13" }];

test("a change of a build with dates tells the finish it leads to, the one there was, and the site days between", () => {
  const build = readDocument(written).build!;
  const now = plan(build);
  const { detail } = withEffect({ kind: "later", detail: { piece: "form" }, edits: late }, now, edited(written));
  const then = plan(edited(written)(late)!);
  expect(then.finish).toBeGreaterThan(now.finish);
  expect(detail).toEqual({ piece: "form", leads: "planned", finishAt: then.finish, finishWas: now.finish, siteDays: 1 });
});

test("each way out of a block leads to dates, or to what stays wrong; one that cannot be applied stays as it was", () => {
  const blocked = { ...written, waits: [{ id: "wrong", from: "set", to: "tie" }] };
  const build = readDocument(blocked).build!;
  const now = plan(build);
  expect(now.status).toBe("no-order");
  const found = withEffects(build, withWaysOut(build, now.findings, edited(blocked)), edited(blocked));
  const ways = found.flatMap(({ waysOut }) => waysOut ?? []);
  expect(ways.length).toBeGreaterThan(0);
  for (const way of ways) {
    const after = plan(edited(blocked)(way.edits)!);
    expect(way.detail.leads).toBe(after.status);
    expect(way.detail.finishAt).toBe(after.status === "planned" ? after.finish : undefined);
    expect(way.detail.finishWas).toBeUndefined();
  }
  const broken = { kind: "later", detail: {}, edits: [{ path: ["steps"], value: 3 }] } as const;
  expect(withEffect(broken, now, edited(blocked))).toBe(broken);
  const nothing = withEffect({ kind: "later", detail: {}, edits: [] }, now, edited(blocked));
  expect(nothing.detail).toEqual({ leads: "no-order" });
});
