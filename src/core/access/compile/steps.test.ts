import { expect, test } from "vitest";
import { say } from "../../../../test/fixtures/say";
import { place, small, smallCase, step } from "../../../../test/fixtures/small";
import type { Statement } from "../../base";
import { compile } from "./compile";
import { reachesOf } from "./steps";

const slit = (id: string) => place(id, { id: "slit", passes: ["sight"] });
const [cage, yard] = [{ place: "cage" }, { place: "yard", need: "arm", depth: "300 mm" }];
const partial = {
  places: [slit("cage"), slit("yard")],
  pieces: [
    { id: "panel", off: [yard, { any: [cage, yard] }] },
    { id: "prop", off: [cage] },
  ],
  steps: [step("set", { puts: ["panel", "prop"] }), step("strip", { reaches: [{ any: [yard, cage] }, cage], takes: ["panel", "prop"] })],
};

test("a step must get to its own places, then to those of each piece that it takes down", () => {
  const { build, at } = smallCase(partial);
  expect(reachesOf(build, at("strip")).map(({ any }) => any.map((a) => a.place))).toEqual([
    ["yard", "cage"],
    ["cage"],
    ["yard"],
    ["cage", "yard"],
    ["cage"],
  ]);
  expect(reachesOf(build, at("set"))).toEqual([]);
});

test("each is said as it is written: whose it is, which of them, what must get where", () => {
  const said = small(partial).result.findings.flatMap((f) => (f.because ?? []).filter(({ rule }) => rule === "reach" || rule === "off"));
  const name = ({ rule, piece = "", id = "" }: Statement) => `${rule} ${piece} ${id}`;
  expect(said.sort((a, b) => (name(a) < name(b) ? -1 : 1))).toEqual([
    {
      rule: "off",
      step: "strip",
      piece: "panel",
      id: "1",
      place: "yard",
      need: "arm",
      detail: { places: ["yard"], needs: ["arm"], depth_mm: 300 },
    },
    { rule: "off", step: "strip", piece: "panel", id: "2", detail: { places: ["cage", "yard"], needs: ["person", "arm"] } },
    { rule: "off", step: "strip", piece: "prop", id: "1", place: "cage", need: "person", detail: { places: ["cage"], needs: ["person"] } },
    { rule: "reach", step: "strip", id: "1", detail: { places: ["yard", "cage"], needs: ["arm", "person"] } },
    { rule: "reach", step: "strip", id: "2", place: "cage", need: "person", detail: { places: ["cage"], needs: ["person"] } },
  ]);
});

test("steps are told one after the other: where they must get to as it is written, then what they lean on as it is written", () => {
  const pieces = [{ id: "prop" }, { id: "deck" }];
  const leans = { leansOn: [{ piece: "prop" }, { piece: "deck" }] };
  const steps = [
    step("lay", { reaches: [cage, yard], ...leans }),
    step("pour", { reaches: [cage, { place: "yard" }], ...leans }),
    step("trowel", { reaches: [cage], leansOn: [{ piece: "deck" }] }),
  ];
  const program = compile(smallCase({ ...partial, pieces, steps }).build);
  const facts = Array.from({ length: program.facts.count }, (_, fact) => fact).reverse();
  const told = program.facts.inOrder(facts).map((fact) => program.facts.statement(fact));
  expect(told.filter(({ rule }) => rule === "reach" || rule === "leans").map(say)).toEqual([
    "reach(lay cage person)",
    "reach(lay yard arm)",
    "leans(lay prop)",
    "leans(lay deck)",
    "reach(pour cage person)",
    "reach(pour yard person)",
    "leans(pour prop)",
    "leans(pour deck)",
    "reach(trowel cage person)",
    "leans(trowel deck)",
  ]);
});
