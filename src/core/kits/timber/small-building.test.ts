import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { oneAtItsEnd, someAnswers } from "../../../../test/fixtures/kits/ends-of-answers";
import { builtFrom, holds, lookAt, type Put } from "../../../../test/fixtures/kits/kit-check";
import { emptyBuild } from "../../../../test/fixtures/kits/start";
import { sectionsOf } from "./shell";

const shed = (answers = {}): readonly Put[] => [["small-building", "Shed", answers]];

/** With six more people, as `crew` may ask for eight. */
const crowd = (units: "us" | "metric"): unknown => {
  const start = emptyBuild(units) as { readonly people: readonly object[] };
  const more = ["cy", "di", "ed", "flo", "gus", "hal"].map((id) => ({ id, name: id, calendar: "there" }));
  return { ...start, people: [...start.people, ...more] };
};

describe.each(["us", "metric"] as const)("a small building in %s", (units) => {
  test("rises in the order in which each piece lets the next be done", () => {
    const { build, plan } = holds(units, shed({ insulation: "batts", lining: true }));
    const at = (id: string) => plan.steps[build.at.step.get(`shed-${id}`)!]!;
    const goes = (a: string, b: string) => expect(at(a).finish, `${a} before ${b}`).toBeLessThanOrEqual(at(b).start);
    goes("set-sills", "frame-walls");
    goes("frame-walls", "tip-walls");
    goes("tip-walls", "sheathe");
    goes("set-rafters", "take-braces");
    goes("sheathe", "take-braces");
    goes("board-roof", "inspect-frame");
    goes("inspect-frame", "hang-wrap");
    goes("inspect-frame", "lay-underlay");
    goes("hang-wrap", "set-joinery");
    goes("set-joinery", "photo-flashings");
    goes("photo-flashings", "nail-siding");
    goes("wire", "inspect-wires");
    goes("photo-wires", "insulate");
    goes("inspect-wires", "insulate");
    goes("insulate", "line-walls");
    goes("line-walls", "fit-out");
    goes("nail-siding", "paint-1");
    expect(at("paint-2").start - at("paint-1").finish).toBeGreaterThanOrEqual(16 * 60);
    expect(build.waits.filter(({ plain }) => plain)).toEqual([]);
  });

  test("with openings boarded up the rough wiring does not wait for the windows", () => {
    const finish = (boarded: boolean) => {
      const { build, plan } = holds(units, shed({ boarded, lead: 12 }));
      return [plan.steps[build.at.step.get("shed-wire")!]!.finish, plan.steps[build.at.step.get("shed-set-joinery")!]!.start] as const;
    };
    const [wired, windows] = finish(true);
    expect(wired).toBeLessThan(windows);
    const [waited, set] = finish(false);
    expect(waited).toBeGreaterThan(set);
  });

  test("windows in hand wait for no delivery; those to be ordered take their weeks", () => {
    const inHand = holds(units, shed({ joinery: "in hand" }));
    expect(inHand.build.deliveries.some(({ id }) => id === "shed-joinery-comes")).toBe(false);
    const { build, plan } = holds(units, shed({ lead: 20 }));
    expect(plan.steps[build.at.step.get("shed-set-joinery")!]!.start).toBeGreaterThanOrEqual(20 * 7 * 1440);
  });

  test("walls go up in sections that the hands there can tip", () => {
    const { build } = holds(units, shed());
    expect(build.steps[build.at.step.get("shed-tip-walls")!]!.hands).toEqual([{ role: "hands", number: 2 }]);
    const many = lookAt(builtFrom(units, shed({ crew: 8 }), crowd(units)));
    expect(many.build.steps[many.build.at.step.get("shed-tip-walls")!]!.hands[0]!.number).toBe(8);
  });

  test("stands with any answers", () => {
    fc.assert(
      fc.property(someAnswers("small-building", units), (answers) => {
        lookAt(builtFrom(units, shed(answers), crowd(units)));
      }),
      { numRuns: 12 },
    );
  });
});

test("every answer at its ends stands, in one system or the other", () => {
  const all = { us: oneAtItsEnd("small-building", "us", ["crew"]), metric: oneAtItsEnd("small-building", "metric", ["crew"]) };
  all.us.forEach((_, i) => {
    const units = i % 2 === 0 ? "us" : "metric";
    holds(units, shed(all[units][i]));
  });
});

test("no section weighs more at its lifted end than its hands may lift", () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 1200, max: 12_000 }),
      fc.integer({ min: 1500, max: 4000 }),
      fc.constantFrom("2x4", "2x6"),
      fc.integer({ min: 2, max: 8 }),
      (long, high, studs, hands) => {
        const { number, mass_kg } = sectionsOf(long, high, studs, hands);
        // Half the section is on the ground; 23 kg each is the load constant of the revised NIOSH lifting equation.
        expect(mass_kg / 2).toBeLessThanOrEqual(23 * hands + 1e-9);
        // With one section fewer it would be too much, unless there is only one.
        if (number > 1) expect((mass_kg * number) / (number - 1) / 2).toBeGreaterThan(23 * hands);
      },
    ),
  );
});
