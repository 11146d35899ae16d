import { describe, expect, it } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { buildClocks } from "../pour";
import { plan, verifyPlan } from ".";

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "2 h", hands: 1, ...rest });
const pour = (rest: Record<string, unknown> = {}) => row("pour", { sort: "pour", pour: { strength: "3000 psi" }, ...rest });

/** The plan of one document looked at by what another says. */
function second(planned: PartialDocument, said: PartialDocument) {
  return verifyPlan(buildOf(said), plan(buildOf(planned))).map((f) => [f.rule, f.of ?? f.piece]);
}

describe("a strength counts from the pour it names", () => {
  it("in a wait from another step", () => {
    const waits = (wait: Record<string, unknown>) => ({
      steps: [row("cure"), pour(), row("strip")],
      waits: [{ id: "wait", from: "cure", to: "strip", ...wait }],
    });
    const early = { ...waits({}), steps: [row("cure"), pour({ notBefore: "2027-03-20" }), row("strip", { notBefore: "2027-03-21" })] };
    const late = { ...early, steps: [row("cure"), pour({ notBefore: "2027-03-20" }), row("strip", { notBefore: "2027-04-17" })] };
    expect(second(early, waits({ least: "70 % of pour" }))).toEqual([["least", "wait"]]);
    expect(second(late, waits({ least: "70 % of pour" }))).toEqual([]);
    expect(second(late, waits({ most: "70 % of pour" }))).toEqual([["most", "wait"]]);
    expect(second(early, waits({ most: "70 % of pour" }))).toEqual([]);
  });

  it("in a piece that another step puts up, and that holds itself by it", () => {
    const build = (holdsItself: string | undefined, strip: string): PartialDocument => ({
      pieces: [
        { id: "props", name: "Props", sort: "shore" },
        { id: "fill", name: "Fill", heldBy: [["props"]], holdsItself },
        { id: "vault", name: "Vault", sort: "concrete" },
      ],
      steps: [
        row("set-props", { puts: ["props"] }),
        row("fill", { puts: ["fill"], after: ["set-props"] }),
        pour({ puts: ["vault"], notBefore: "2027-03-20" }),
        row("take-props", { takes: ["props"], after: ["fill"], notBefore: strip }),
      ],
    });
    expect(second(build("3 h", "2027-03-20"), build("75 % of pour", "2027-03-20"))).toEqual([["held", "fill"]]);
    expect(second(build("3 h", "2027-04-03"), build("75 % of pour", "2027-03-20"))).toEqual([]);
  });

  it("in the table of what stands", () => {
    const build = buildOf({
      places: [{ id: "top", name: "Top", ways: [{ id: "walk", name: "walk", passes: ["person"] }] }],
      pieces: [{ id: "wet", name: "Wet top", goesAfter: "500 psi of pour", closes: ["top.walk"] }],
      steps: [pour({ notBefore: "2027-03-20" }), row("rope", { puts: ["wet"] })],
    });
    const made = plan(build);
    const clock = buildClocks(build).of({ kind: "strength", pour: build.steps[0]!.id });
    expect(made.steps[1]!.finish).toBeLessThan(made.steps[0]!.start);
    expect(made.stands.pieces[0]!.gone).toBe(clock.advance(made.steps[0]!.finish, 167));
    expect(made.stands.places[0]!.map((s) => s.state)).toEqual(["open", "closed", "open"]);
    expect(verifyPlan(build, made)).toEqual([]);
  });

  it("and so does warm time, which stands still in the cold", () => {
    const usualTemperatures = new Array(12).fill({ low: "40 °F", high: "60 °F" });
    const build = buildOf({
      site: { zone: "America/New_York", latitude: 42.4, longitude: -76.5, units: "us", usualTemperatures },
      places: [{ id: "top", name: "Top", ways: [{ id: "walk", name: "walk", passes: ["person"] }] }],
      pieces: [{ id: "wet", name: "Wet top", goesAfter: "72 warm hours of pour", closes: ["top.walk"] }],
      steps: [
        pour({ notBefore: "2027-03-20" }),
        row("rope", { puts: ["wet"] }),
        row("walk", { reaches: [{ place: "top" }], after: ["rope", "pour"] }),
        row("strip"),
      ],
      waits: [{ id: "cold", from: "rope", to: "strip", least: "2 warm days of pour" }],
    });
    const made = plan(build);
    const [poured, , walk, strip] = made.steps;
    const warm = (minutes: number) => buildClocks(build).pour({ kind: "warm", pour: "pour" }).advance(poured!.finish, minutes);
    expect(warm(72 * 60) - poured!.finish).toBeGreaterThan(2 * 72 * 60 - 1440);
    expect(made.stands.pieces[0]!.gone).toBe(warm(72 * 60));
    expect(walk!.start).toBeGreaterThanOrEqual(warm(72 * 60));
    expect(strip!.start).toBeGreaterThanOrEqual(warm(2 * 1440));
    expect(verifyPlan(build, made)).toEqual([]);
    expect(made.assumes).toContain("plan.strength-at-site");
  });
});
