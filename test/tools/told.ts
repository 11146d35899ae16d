import { expect } from "vitest";
import { run } from "../../src/cli/run";
import { type Raw, wall } from "../../src/words/wall.testing";
import { realisticDocument } from "../bench/realistic";

const steel = (promised: string) => ({ id: "steel", name: "Bars", calendar: "yard", promised });
export const files: Record<string, string> = {
  "wall.json": JSON.stringify(
    wall({
      steps: [
        { id: "trial", name: "Cast a block", work: "1 h", trial: { rounds: 2, gap: "6 d", decides: ["pour"], what: "the mix" } },
        {
          id: "photo",
          name: "Photograph the bars",
          sort: "photograph",
          work: "15 min",
          reaches: [{ place: "bars", need: "person" }],
          after: ["tie"],
        },
        { id: "sweep", name: "Sweep up", work: "1 h" },
      ],
      deliveries: [{ id: "lumber", name: "Form lumber", calendar: "yard", lead: { is: "3 days of yard" }, ordered: false }],
    }),
  ),
  "plain.json": JSON.stringify(wall()),
  "friday.json": JSON.stringify(wall({ over: { deliveries: [steel("2027-03-12")] } })),
  "week.json": JSON.stringify(wall({ over: { deliveries: [steel("2027-03-15")] } })),
  "blocked.json": JSON.stringify(wall({ waits: [{ id: "wrong", name: "", from: "form", to: "tie" } as Raw] })),
  "no-dates.json": JSON.stringify(
    wall({ steps: [{ id: "early", name: "Show the bars", work: "1 h", after: ["tie"], deadline: "2027-03-08" }] }),
  ),
  "crowded.json": JSON.stringify(
    wall({
      steps: ["north", "south"].map((side) => ({ id: side, name: `Dig ${side}`, work: "7 h", hands: 1, deadline: "2027-03-06" })),
    }),
  ),
  "wet.json": JSON.stringify(
    wall({
      steps: [
        { id: "test", name: "Cast a block", work: "1 h", fixed: "2027-03-06T08:00" },
        { id: "break", name: "Break it", work: "1 h" },
      ],
      waits: [
        {
          id: "wet",
          from: "test",
          to: "break",
          least: "7 d",
          visits: { every: "1 d", lasts: "30 min", who: "Ruth", for: "keep it wet" },
        },
      ],
    }),
  ),
  "empty.json": JSON.stringify({ ...wall(), places: [], pieces: [], steps: [], waits: [], deliveries: [], bookings: [] }),
  "bays.json": JSON.stringify(realisticDocument(60, 1)),
  "broken.json": '{ "batterboard": 1, }',
};

/** Runs one command with the files in memory. */
export async function told(...words: string[]) {
  const written = new Map<string, string>();
  let [out, err] = ["", ""];
  const code = await run(words, {
    readText: (path) => {
      const text = files[path];
      if (text === undefined) throw Object.assign(new Error("missing"), { code: "ENOENT" });
      return text;
    },
    writeText: (path, text) => {
      if (path.startsWith("/nowhere/")) throw new Error("no such folder");
      written.set(path, text);
    },
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  });
  return { code, out, err, written };
}

export const lines = (text: string) => text.trimEnd().split("\n");

/** One sentence, and nothing else, on the error output. */
export async function refused(...words: string[]) {
  const { code, out, err } = await told(...words);
  expect([code, out]).toEqual([2, ""]);
  expect(lines(err)).toHaveLength(1);
  expect(err).toMatch(/^[A-Z“].*[.?]\n$/);
  return err.trimEnd();
}
