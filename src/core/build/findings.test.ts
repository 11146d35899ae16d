import { describe, expect, test } from "vitest";
import { documentOf } from "../../../test/fixtures/make";
import { readWrong, wrongs } from "../../../test/fixtures/wrong";
import { oneStep, piece } from "../../../test/fixtures/wrong/wrong";
import { examples } from "../../examples";
import { bars, codes, readDocument } from ".";

describe("what is wrong is said", () => {
  test.each(wrongs)("%s", (...wrong) => {
    const [code, , where, detail] = wrong;
    const { findings, build } = readWrong(wrong);
    const said = findings.filter((finding) => finding.code === code);
    expect(said, JSON.stringify(findings)).toHaveLength(1);
    expect(said[0]).toMatchObject({ code, severity: codes[code].severity, detail });
    expect(said[0]?.where).toEqual(where);
    if (code !== "build.more" && code !== "build.unknown-id") expect(Object.keys(detail).sort()).toEqual([...codes[code].detail].sort());
    expect(build === null).toBe(findings.some(bars));
  });

  test("every code has its case", () => {
    const missing = Object.keys(codes).filter((code) => !wrongs.some(([tried]) => tried === code));
    expect(missing).toEqual([]);
  });
});

describe("nothing is said without need", () => {
  test.each(["steps", "people", "calendars", "groups", "places", "pieces", "stock", "equipment", "deliveries", "bookings", "pours"])(
    "%s that are no list: of what refers to its members nothing",
    async (list) => {
      const written = (await examples.find((e) => e.id === "bank-cellar")!.load()) as Readonly<Record<string, unknown>>;
      const { findings, build } = readDocument({ ...written, [list]: "none" });
      expect(build).toBeNull();
      expect(findings.filter(bars).map(({ code, where }) => [code, where])).toEqual([["build.type", { list }]]);
    },
  );

  test("of what waits for the strength of a pour that cannot be read", async () => {
    const written = (await examples.find((e) => e.id === "bank-cellar")!.load()) as { readonly pours: readonly { readonly id: string }[] };
    const pours = written.pours.map((pour) => (pour.id === "vault" ? { ...pour, mix: "strong" } : pour));
    const { findings } = readDocument({ ...written, pours });
    expect(findings.filter(bars).map(({ where }) => where.list)).toEqual(["pours"]);
  });

  test("a piece that is held by one of the ring's neighbours on firm ground", () => {
    const { findings } = readDocument(
      documentOf({
        pieces: [piece("p", { heldBy: [["q"], ["ground"]] }), piece("q", { heldBy: [["p"]] }), piece("ground", { fromStart: true })],
        ...oneStep({ puts: ["p", "q"] }),
      }),
    );
    expect(findings).toEqual([]);
  });

  test("ways through each other with one way in from outside", () => {
    const places = [
      { id: "in", ways: [{ id: "w", through: "out" }] },
      { id: "out", ways: [{ id: "w", through: "in" }, { id: "door" }] },
    ];
    expect(readDocument(documentOf({ places })).findings).toEqual([]);
  });

  test("an upper wait and a wait between starts are no order", () => {
    const waits = [
      { id: "v", from: "b", to: "a", most: "7 d" },
      { id: "w", from: "b", to: "a", fromEnd: "start", least: "0 h" },
    ];
    expect(readDocument(documentOf({ steps: [{ id: "a" }, { id: "b", after: ["a"] }], waits })).findings).toEqual([]);
  });

  test("a finding that all copies of a group share is said once", () => {
    const wrong = { groups: [{ id: "g", count: 9, members: ["a"] }], ...oneStep({ reaches: [{ place: "nowhere" }] }) };
    expect(readDocument(documentOf(wrong)).findings).toHaveLength(1);
  });
});
