import { expect, test } from "vitest";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { apply } from "../edit";
import { putIn } from ".";
import { holidaysAt } from "./holidays";

const at = (zone: string): unknown => ({ ...(emptyBuild("us") as object), site: { zone } });
const calendars = (document: unknown) =>
  (apply(document, putIn(document, "footing", "Footing", {}).edits).document as { calendars: { id: string; holidays?: string }[] })
    .calendars;

test("offices, yards and pours keep the holidays of the place; the builder's own weekends are the builder's", () => {
  const made = calendars(emptyBuild("us"));
  expect(made.filter(({ holidays }) => holidays === "us-federal").map(({ id }) => id)).toEqual([
    "steel-yard",
    "inspector",
    "plant",
    "pour-days",
  ]);
  expect(made.find(({ id }) => id === "weekends")?.holidays).toBeUndefined();
});

test("a zone without a table has none, and holidays of the usual calendar go over those of the place", () => {
  expect(holidaysAt(at("UTC"))).toEqual({});
  expect(holidaysAt(at("Europe/Berlin"))).toEqual({ holidays: "de" });
  expect(holidaysAt(null)).toEqual({});
  const document = emptyBuild("us") as { calendars: { id: string }[] };
  const own = { ...document, calendars: document.calendars.map((one) => ({ ...one, holidays: "ca" })) };
  expect(calendars(own).find(({ id }) => id === "pour-days")?.holidays).toBe("ca");
});
