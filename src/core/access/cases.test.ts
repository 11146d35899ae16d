import { describe, expect, test } from "vitest";
import { caseOf, linksOf, orderOf, rowsOf, sayAll } from "../../../test/fixtures/say";
import { access, lastChances, may, refuteWithTimes, type TimeBounds, waysOut, why, withWaysOut } from "./index";

const kinds = (list: readonly { readonly kind: string }[] | undefined) => list?.map(({ kind }) => kind);

describe("cases of the trade, each drawn", () => {
  test("an arm from the top does not reach a joint at the foot of a tall form", () => {
    const { build, apply } = caseOf("arm-from-the-top");
    const { possible, findings } = access(build);
    expect(possible).toBe(false);
    expect(findings).toHaveLength(1);
    expect(sayAll(findings[0])).toEqual([
      "ways(inside arm)",
      "closes(last-face inside.open-face)",
      "reach(seal-foot inside arm)",
      "wait(close-form seal-foot close-form>seal-foot)",
    ]);
    expect(findings[0]).toMatchObject({
      code: "access.blocked",
      severity: "stop",
      where: { list: "steps", id: "seal-foot" },
      detail: { steps: ["close-form", "seal-foot"] },
    });
    expect(findings[0]?.because?.[0]?.detail).toMatchObject({ passing: ["inside.open-face"], narrow: ["inside.top"] });
    expect(findings[0]?.because?.[0]?.detail?.depth_mm).toBeCloseTo(58 * 25.4);
    expect(kinds(withWaysOut(build, findings, apply)[0]?.waysOut)).toEqual(["leave-face-off", "clean-out", "later", "drop-wait"]);
  });

  test("a deck cannot be unscrewed while standing on it", () => {
    const { build, apply } = caseOf("deck-from-above");
    const { findings } = access(build);
    expect(findings.map((f) => f.code)).toEqual(["access.trapped"]);
    expect(sayAll(findings[0])).toEqual(["ways(deck-top arm)", "makes(deck deck-top.ladder)", "off(lift-deck deck deck-top arm)"]);
    expect(kinds(withWaysOut(build, findings, apply)[0]?.waysOut)).toEqual(["clean-out"]);
  });

  test("a bench-built unit goes in as one", () => {
    const { build } = caseOf("bench-built-unit");
    const result = access(build);
    expect(orderOf(build, result)).toEqual(["tape-corners", "set-box", "pour-wall"]);
    expect(rowsOf(build, result)).toContain("tape-corners < set-box: closes(tape-corners set-box box corners.front arm) must");
    expect(rowsOf(build, result).filter((row) => row.includes("held"))).toEqual([]);
  });

  test("one size too large does not go in", () => {
    const document = structuredClone(caseOf("bench-built-unit").document) as { pieces: { size?: object }[] };
    document.pieces[0] = { ...document.pieces[0], size: { long: "24 in", wide: "21 in", thick: "14 in" } };
    const { build, apply } = caseOf(document);
    const { findings } = access(build);
    expect(sayAll(findings[0])).toEqual(["ways(recess unit)", "reach(set-box recess unit)"]);
    const [smaller, ...others] = waysOut(build, findings[0] as never, apply);
    expect(others).toEqual([]);
    expect(smaller).toMatchObject({
      kind: "split",
      detail: { step: "set-box", piece: "box", place: "recess", way: "recess.hatch", parts: 2 },
    });
    const inTwo = apply(smaller?.edits ?? []);
    const half = { size_mm: { long: 609.6, wide: 266.7, thick: 355.6 } };
    expect(inTwo?.pieces.filter(({ id }) => id.startsWith("box"))).toMatchObject([half, half]);
  });

  test("guys hand a cage over to the form, and only to the whole of it", () => {
    const { build } = caseOf("guys-hand-over");
    const result = access(build);
    expect(orderOf(build, result)).toEqual(["hang-last", "set-guys", "stand-cage", "set-back", "tie-back", "drop-guys"]);
    const held = rowsOf(build, result).filter((row) => row.includes("held("));
    expect(held).toEqual([
      "set-guys < stand-cage: held(stand-cage set-guys cage) must",
      "stand-cage < drop-guys: held(stand-cage drop-guys cage) must redundant",
      "set-back < drop-guys: held(drop-guys set-back cage) must redundant",
      "tie-back < drop-guys: held(drop-guys tie-back cage) must",
    ]);
    expect(rowsOf(build, result)).toContain("hang-last < set-guys: closes(hang-last set-guys guys panel-side.front person) chosen");
  });

  test("needles take over under an old wall, until the footing does", () => {
    const { build, at } = caseOf("needles-under-wall");
    const result = access(build);
    expect(orderOf(build, result)).toEqual(["set-needles", "dig-under", "pour-footing", "drop-needles"]);
    expect(why(build, result, at("set-needles"), at("dig-under")).verdict).toBe("must");
    expect(linksOf(why(build, result, at("set-needles"), at("drop-needles")))).toEqual(["up-down(set-needles drop-needles needles)"]);
    const no = may(build, at("drop-needles"), at("pour-footing"));
    expect(no.verdict).toBe("no");
  });

  test("a slab closes its top until it may be walked on", () => {
    const { build } = caseOf("green-slab");
    const rows = rowsOf(build, access(build));
    expect(rows).toContain("pour-slab + 12 h < set-posts: closes(set-posts pour-slab green-slab slab-top.edge person) must");
    expect(rows).toContain("pour-slab + 12 h < look-over: closes(look-over pour-slab green-slab slab-top.edge sight) chosen");
  });

  test("a cold joint is either fresh on fresh or prepared after a day", () => {
    const { build, at } = caseOf("cold-joint");
    const result = access(build);
    expect(rowsOf(build, result)).toContain("pour-wall within 1 h < pour-vault: choice(pour-wall pour-vault joint) chosen time");
    const pairs = [
      [at("pour-wall"), at("roughen")],
      [at("roughen"), at("pour-vault")],
    ];
    expect(result.choices).toHaveLength(1);
    expect(result.choices[0]).toMatchObject({ chosen: 0, options: [{ arcs: [] }, { arcs: pairs }] });
    expect(result.statements[result.choices[0]?.statement ?? -1]).toMatchObject({ rule: "choice", id: "joint" });
  });

  test("a place behind two closings is reached before either", () => {
    const { build, at } = caseOf("behind-two-closings");
    const result = access(build);
    expect(orderOf(build, result)).toEqual(["set-anchor", "line-chamber", "shut-door"]);
    const closings = lastChances(build, result).map(({ piece, before }) => [piece, before.map((b) => [b.step, b.forced])]);
    expect(closings).toEqual([
      [0, [[at("set-anchor"), true]]],
      [
        1,
        [
          [at("set-anchor"), true],
          [at("line-chamber"), true],
        ],
      ],
    ]);
  });

  test("access through a place that is itself cut off", () => {
    const { build, apply } = caseOf("through-cut-off");
    const { findings } = access(build);
    expect(sayAll(findings[0])).toEqual([
      "ways(back-face person)",
      "through(back-face.from-trench)",
      "fills(backfill trench)",
      "reach(coat-back back-face person)",
      "wait(backfill-trench coat-back backfill-trench>coat-back)",
    ]);
    expect(kinds(withWaysOut(build, findings, apply)[0]?.waysOut)).toEqual(["later", "drop-wait"]);
  });

  test("shores, deck, slab: without an amount nothing holds itself", () => {
    const { build, at } = caseOf("shores-deck-slab");
    const result = access(build);
    expect(result.findings.map((f) => [f.code, f.severity])).toEqual([["access.holds-itself", "look"]]);
    expect(orderOf(build, result)).toEqual(["set-shores", "lay-deck", "pour-slab", "drop-deck", "drop-shores"]);
    const refused = may(build, at("drop-shores"), at("drop-deck"));
    expect(refused.verdict === "no" && sayAll(refused.finding)).toEqual(["held(deck)", "asked(drop-shores drop-deck)"]);
  });
});

describe("order and windows refuted together", () => {
  const { build, at } = caseOf("cleaning-window");
  const bounds: TimeBounds = {
    work: () => ({ least: 60, most: Number.POSITIVE_INFINITY }),
    least: ({ amount }) => amount,
    most: ({ amount }) => amount,
    notBefore: () => null,
    deadline: () => null,
    fixed: () => null,
  };

  test("a foot to be cleaned within a day of the pour, when the form needs three", () => {
    expect(access(build).possible).toBe(true);
    const refuted = refuteWithTimes(build, bounds);
    expect(refuted.verdict).toBe("refuted");
    const findings = refuted.verdict === "refuted" ? refuted.findings : [];
    expect(findings.map((f) => f.code)).toEqual(["access.late"]);
    expect(sayAll(findings[0])).toEqual([
      "ways(foot person)",
      "closes(side-form foot.side)",
      "reach(clean-foot foot person)",
      "leans(pour-wall side-form)",
      "wait(clean-foot pour-wall still-clean)",
    ]);
  });

  test("with four days for it there is no objection, and the starts given keep every amount", () => {
    const eased = refuteWithTimes(build, { ...bounds, most: ({ amount }) => 4 * amount });
    expect(eased.verdict).toBe("possible");
    const start = eased.verdict === "possible" ? eased.start : new Float64Array();
    const gap = (start[at("pour-wall")] ?? 0) - (start[at("set-side")] ?? 0);
    expect(gap).toBeGreaterThanOrEqual(60 + 3 * 1440);
  });
});
