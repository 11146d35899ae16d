import { expect, test } from "vitest";
import { type Build, readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { putIn } from "../../core/kits";
import { newBuild } from "../start/new-build";
import { kitsOffering, suggestions } from "./suggest";

const empty = newBuild({
  name: "Deck",
  first: "",
  start: "2027-03-06",
  hands: "2",
  latitude: "40",
  longitude: "-75",
  zone: "America/New_York",
  units: "us",
});
const withPart = (document: unknown, kit: string, name: string): unknown => apply(document, putIn(document, kit, name, {}).edits).document;
const buildOf = (document: unknown): Build => readDocument(document).build as Build;
const footing = withPart(empty, "footing", "Footing A");
const columns = withPart(footing, "column", "Columns A");

test("a column is suggested on a footing, a slab on the columns, and neither on what carries one already", () => {
  const names = (document: unknown, of?: string) =>
    suggestions(document, buildOf(document).parts, of).map(({ kit, where }) => `${kit.id} ${where}`);
  expect(names(empty)).toEqual([]);
  expect(names(footing)).toContain("column on Footing A");
  expect(names(columns)).toContain("deck-slab on Columns A");
  expect(names(columns).filter((name) => name.startsWith("column on Footing"))).toEqual([]);
  expect(names(columns, buildOf(columns).parts[0]?.id)).toEqual([]);
});

test("what stands on a part comes before what is cast into it, and what the build has already comes later", () => {
  const slab = withPart(columns, "deck-slab", "Slab A");
  const of = buildOf(slab).parts.at(-1)?.id;
  const ids = suggestions(slab, buildOf(slab).parts, of).map(({ kit }) => kit.id);
  expect(ids.indexOf("post-roof")).toBeGreaterThanOrEqual(0);
  expect(ids.indexOf("post-roof")).toBeLessThan(ids.indexOf("column"));
  expect(ids.indexOf("column")).toBeLessThan(ids.indexOf("house-trench"));
});

test("a suggestion names the offers that it joins, by question, and they can be put in as they are", () => {
  const [first] = suggestions(columns, buildOf(columns).parts).filter(({ kit }) => kit.id === "deck-slab");
  expect(first).toBeDefined();
  const made = apply(columns, putIn(columns, "deck-slab", "Deck A", first?.joins ?? {}).edits).document;
  expect(buildOf(made).parts.at(-1)?.answers).toMatchObject(first?.joins ?? {});
});

test("for want of a head to stand on, kits that have one are named", () => {
  expect(kitsOffering(["top"]).map(({ id }) => id)).toContain("column");
  expect(kitsOffering(["top"]).map(({ id }) => id)).not.toContain("footing");
  expect(kitsOffering([])).toEqual([]);
});
