import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { anyAnswers } from "../../../test/fixtures/kits/any-answers";
import { builtFrom, lookAt, type Put } from "../../../test/fixtures/kits/kit-check";
import { emptyBuild } from "../../../test/fixtures/kits/start";
import { write } from "../build";
import { apply } from "../edit";
import { answerAgain, checkAnswers, formOf, kitOf, kits, offersOf, putIn, type RawAnswers, takeOut, unknownOf } from ".";

type Member = Readonly<Record<string, unknown>> & { readonly id: string };
type Document = Readonly<Record<string, readonly Member[]>>;

const porch: readonly Put[] = [
  ["footing", "Footing"],
  ["column", "Column"],
  ["deck-slab", "Slab"],
];
const bytes = (document: unknown): string => write(document as never);
const again = (document: unknown, part: string, answers: RawAnswers) =>
  apply(document, answerAgain(document, part, answers).edits).document;
const find = (document: unknown, list: string, id: string): Member | undefined =>
  (document as Document)[list]?.find((one) => one.id === id);

/** The document with every list by ids, empty ones left out: where a member stands in its list says nothing. */
const sorted = (document: unknown): unknown =>
  Object.fromEntries(
    Object.entries(document as Document).flatMap(([key, value]) => {
      if (!Array.isArray(value)) return [[key, value]];
      return value.length === 0 ? [] : [[key, [...value].sort((a, b) => (a.id < b.id ? -1 : 1))]];
    }),
  );

describe("putting in", () => {
  test("writes every answer into the part, so that later parts change nothing in it", () => {
    const document = builtFrom("us", porch);
    const part = find(document, "parts", "column") as unknown as { answers: Record<string, unknown> };
    expect(Object.keys(part.answers)).toEqual(kitOf("column")?.asks.map(({ key }) => key));
    expect(part.answers.on).toEqual(["footing/bears", "footing/bears/2"]);
    expect(part.answers.high).toBe("7 ft 8 in");
    expect((find(builtFrom("metric", porch), "parts", "column") as unknown as typeof part).answers.high).toBe("2.3 m");
  });

  test("is one change that undo takes back to the very bytes", () => {
    const before = builtFrom("us", porch.slice(0, 2));
    const { document, inverse } = apply(before, putIn(before, "deck-slab", "Slab", {}).edits);
    expect(bytes(apply(document, inverse).document)).toBe(bytes(before));
  });

  test("joins what nothing stands on yet before what is taken", () => {
    const document = builtFrom("us", [...porch.slice(0, 2), ["footing", "More pads"]]);
    const { part } = putIn(document, "column", "More columns", {});
    expect(part.answers.on).toEqual(["more-pads/bears", "more-pads/bears/2"]);
  });

  test("gives ids that no other part's members begin with, whatever parts are called", () => {
    const names = fc.array(fc.constantFrom("A", "A b", "A-b", "a b c", "Ä", "12", "", "Column A", "Column", "Footing"), {
      minLength: 2,
      maxLength: 6,
    });
    fc.assert(
      fc.property(names, (called) => {
        const document = builtFrom(
          "us",
          called.map((name): Put => ["footing", name, { number: 1 }]),
        ) as Document;
        const parts = (document.parts ?? []).map(({ id }) => id);
        const all = Object.values(document).flatMap((list) => (Array.isArray(list) ? list.map(({ id }) => id) : []));
        expect(new Set(parts).size).toBe(called.length);
        for (const part of document.parts ?? []) {
          const own = new Set(Object.values(part.made as Record<string, readonly string[]>).flat());
          expect(all.filter((id) => id.startsWith(`${part.id}-`) && !own.has(id))).toEqual([]);
        }
      }),
      { numRuns: 40 },
    );
  });

  test("never throws, also where what a kit joins is not there", () => {
    for (const kit of kits) {
      const { edits } = putIn(emptyBuild("us"), kit.id, "Alone", {});
      expect(apply(emptyBuild("us"), edits).document, kit.id).toHaveProperty("parts");
    }
  });
});

describe("answering again", () => {
  test("with the same answers changes nothing", () => {
    const document = builtFrom("us", porch);
    for (const part of ["footing", "column", "slab"]) expect(bytes(again(document, part, {}))).toBe(bytes(document));
  });

  test.each(["footing", "column", "wall", "ground-slab", "pier"])("%s with other answers is as if put in with them", (id) => {
    const kit = kitOf(id) as NonNullable<ReturnType<typeof kitOf>>;
    const before: readonly Put[] = id === "footing" ? [] : [["footing", "Pads"]];
    fc.assert(
      fc.property(anyAnswers(kit, "us"), anyAnswers(kit, "us"), (first, second) => {
        const usual = putIn(builtFrom("us", before), id, "It", {}).part.answers;
        const all = { ...usual, ...second };
        const changed = again(builtFrom("us", [...before, [id, "It", first]]), "it", all);
        const commons = (document: unknown) => ({ ...(sorted(document) as object), calendars: [], places: [] });
        expect(commons(changed)).toEqual(commons(builtFrom("us", [...before, [id, "It", all]])));
      }),
      { numRuns: 15 },
    );
  });

  test("keeps what the builder changed or took out, and lets the rest follow", () => {
    let document = builtFrom("us", porch);
    document = apply(document, [
      { path: ["steps", "id=column-tie", "hands"], value: 2 },
      { path: ["steps", "id=column-roughen"] },
      {
        path: ["groups", "id=column-all", "members"],
        value: (find(document, "groups", "column-all") as unknown as { members: string[] }).members.filter((id) => id !== "column-roughen"),
      },
    ]).document;
    const changed = again(document, "column", { measured: "foot", high: "9 ft 2 in", lumber: "salvaged" });
    expect(find(changed, "steps", "column-tie")?.hands).toBe(2);
    expect(find(changed, "steps", "column-roughen")).toBeUndefined();
    expect(find(changed, "steps", "column-pick")).toBeDefined();
    expect(find(changed, "deliveries", "column-lumber-comes")).toBeUndefined();
    expect(JSON.stringify(find(changed, "pours", "column-pour"))).toContain('"high":"9 ft 2 in"');
    lookAt(changed);
  });

  test("follows inside a pour of which something else was changed, or made otherwise by an older kit, and names what stays", () => {
    const document = builtFrom("us", porch);
    const pour = find(document, "pours", "column-pour") as unknown as { elements: readonly (Member & { form: Member; shape: Member })[] };
    const older = pour.elements.map((one) => ({ ...one, form: { ...one.form, weight: "111 lb" }, shape: { ...one.shape, long: "11 in" } }));
    const changed = apply(document, [{ path: ["pours", "id=column-pour", "elements"], value: older }]).document;
    const taller = answerAgain(changed, "column", { measured: "foot", high: "9 ft 2 in" });
    const after = find(apply(changed, taller.edits).document, "pours", "column-pour") as unknown as typeof pour;
    expect(after.elements[0]!.shape).toMatchObject({ long: "11 in", high: "9 ft 2 in" });
    expect(after.elements[0]!.form.weight).toBe("111 lb");
    expect(taller.stays).toEqual([{ list: "pours", id: "column-pour", keys: ["elements"] }]);
    expect(answerAgain(document, "column", { measured: "foot", high: "9 ft 2 in" }).stays).toEqual([]);
    expect(answerAgain(changed, "column", { inspected: false }).stays).toEqual([]);
  });

  test("what stands on it follows", () => {
    const document = builtFrom("us", porch);
    const z = (of: unknown) => (find(of, "solids", "slab-solid") as unknown as { at: { z: string } }).at.z;
    const changed = again(document, "column", { head: "8 ft 2 in" });
    expect([z(document), z(changed)]).toEqual(["7 ft 6 in", "8 ft 2 in"]);
    lookAt(changed);
  });
});

describe("taking out", () => {
  test("names what others lose, and leaves only what kits share", () => {
    const document = builtFrom("us", porch);
    const { edits, lost } = takeOut(document, "column");
    expect(lost.map(({ list, id }) => `${list}/${id}`)).toContain("pieces/slab-concrete");
    expect(lost.every(({ id }) => !id.startsWith("column"))).toBe(true);
    const left = apply(document, edits).document;
    expect(JSON.stringify({ ...(left as object), parts: [] })).not.toContain("column");
    const all = ["slab", "column", "footing"].reduce((now, part) => apply(now, takeOut(now, part).edits).document, document) as Document;
    expect(all.steps).toEqual([]);
    expect(all.places?.map(({ id }) => id).sort()).toEqual(["dig", "ground", "store"]);
    expect(apply(document, takeOut(document, "no-such").edits).document).toBe(document);
  });
});

describe("what is asked and what is not known", () => {
  test("answers that cannot be read are named one by one and count as usual", () => {
    const document = builtFrom("us", porch.slice(0, 1));
    const wrong: RawAnswers = {
      measured: "foot",
      high: "tall",
      long: "9 ft",
      open: "door",
      people: 2.5,
      on: ["nothing/bears"],
      trial: "yes",
      colour: "red",
      "rate.tie-bars": "soon",
    };
    const faults = checkAnswers(document, "column", wrong);
    expect(faults.map(({ code, where }) => [where.key, code]).sort()).toEqual(
      [
        ["on", "kit.joins-gone"],
        ["long", "kit.range"],
        ["high", "kit.quantity"],
        ["open", "kit.not-one-of"],
        ["trial", "kit.quantity"],
        ["people", "kit.whole"],
        ["colour", "kit.not-asked"],
        ["rate.tie-bars", "kit.rate"],
      ].sort(),
    );
    const usual = putIn(document, "column", "Column", {});
    expect(putIn(document, "column", "Column", { head: "tall", open: "door" }).part.answers).toEqual(usual.part.answers);
    expect(checkAnswers(document, "no-kit", {})[0]?.code).toBe("kit.unknown");
    expect(checkAnswers(emptyBuild("us"), "column", {})[0]?.code).toBe("kit.joins-few");
  });

  test("a rate that is answered replaces the stated one in proportion", () => {
    const work = (answers: RawAnswers) =>
      find(builtFrom("us", [["footing", "Footing", answers]]), "steps", "footing-dig")?.work as Record<string, string>;
    expect(work({})).toEqual({ low: "30 min", likely: "45 min", high: "1 h", from: "common practice, no source" });
    expect(work({ "rate.dig": "6 h" })).toEqual({ low: "1 h", likely: "1 h 15 min", high: "2 h 15 min", from: "own guess" });
  });

  test("stays listed until an answer or the document itself says it", () => {
    const document = builtFrom("us", porch);
    const codes = (of: unknown) => unknownOf(of).map(({ code, part }) => `${part} ${code}`);
    expect(codes(document)).toEqual([
      "footing ground",
      "footing frost",
      "footing bars",
      "column bars",
      "column structure",
      "slab bars",
      "slab structure",
      "slab tipping",
      "slab shore-ground",
      "slab soffit",
    ]);
    expect(codes(again(document, "footing", { ground: "2000 psf, soil report" }))).not.toContain("footing ground");
    const shown = apply(document, [
      { path: ["pours", "id=slab-pour", "breaks"], value: [{ at: "2027-07-01", strength: "3400 psi", by: "laboratory" }] },
    ]).document;
    expect(codes(shown)).not.toContain("slab soffit");
    expect(codes(shown)).toContain("slab shore-ground");
  });

  test("unasked, no wall holds earth on a slab up in the air and no stair begins there", () => {
    const document = builtFrom("us", porch);
    const usual = (kit: string, key: string) => formOf(document, kit, {}).find(({ ask }) => ask.key === key)?.value;
    expect(usual("wall", "on")).toEqual(["slab/bears"]);
    expect(usual("retaining-wall", "on")).toEqual([]);
    expect(usual("stair", "to")).toEqual([]);
    const few = checkAnswers(document, "retaining-wall", {});
    expect(few.map(({ code }) => code)).toEqual(["kit.joins-few"]);
    const strip = apply(document, putIn(document, "footing", "Strip", { sort: "strip", number: 1 }).edits).document;
    expect(formOf(strip, "retaining-wall", {}).find(({ ask }) => ask.key === "on")?.value).toEqual(["strip/bears"]);
  });

  test("unasked, no roof stands on a flight of steps", () => {
    const base = (parts: readonly Put[]) => formOf(builtFrom("us", parts), "post-roof", {}).find(({ ask }) => ask.key === "base");
    const onSteps = base([["stair", "Steps"]]);
    expect(onSteps?.choices.map(({ key }) => key)).toEqual(["steps/walks"]);
    expect(onSteps?.value).toEqual([]);
    expect(base([...porch, ["stair", "Steps"]])?.value).toEqual(["slab/walks"]);
  });

  test("offers are found under their keys, oldest first", () => {
    expect(offersOf(builtFrom("us", porch)).map(({ key }) => key)).toEqual([
      "footing/bears",
      "footing/bears/2",
      "column/top",
      "column/top/2",
      "slab/bears",
      "slab/walks",
      "slab/cast",
    ]);
  });
});
