import { describe, expect, it } from "vitest";
import { buildOf, type PartialDocument } from "../../../test/fixtures/make";
import { clocksOf } from "../clock";
import { type Holder, plan, verifyPlan } from ".";

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "2 h", hands: 1, ...rest });

function planned(document: PartialDocument) {
  const build = buildOf(document);
  const made = plan(build);
  expect([made.status, verifyPlan(build, made)]).toEqual(["planned", []]);
  const name = (job: number): string => build.steps[job]?.id ?? build.deliveries[job - build.steps.length]!.id;
  const told = (holder: Holder): string => {
    if (holder.kind === "delivery") return `delivery ${name(build.steps.length + holder.delivery)}`;
    if (holder.kind === "window") return `window after ${holder.after === undefined || holder.after < 0 ? "" : name(holder.after)}`;
    return "job" in holder ? `${holder.kind} ${name(holder.job)}` : holder.kind;
  };
  const step = (id: string) => made.steps[build.at.step.get(id)!]!;
  return {
    start: (id: string) => clocksOf(build).time.momentOf(step(id).start),
    holder: (id: string) => told(step(id).holder),
    onChain: (id: string) => step(id).onChain,
    chain: made.chain.map((link) => `${name(link.job)} < ${told(link.holder)}`),
  };
}

const pump = [{ id: "pump", name: "Pump", calendar: "inspector", promised: "2027-03-24" }];

describe("what is put late on purpose", () => {
  it("is not on the chain: the delivery that holds the pour is named, not the oil that waits for the pour", () => {
    const { holder, chain, onChain } = planned({
      deliveries: pump,
      steps: [row("oil"), row("pour", { after: ["oil"], needs: ["pump"] })],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "7 d" }],
    });
    expect([holder("oil"), onChain("oil")]).toEqual(["on-purpose pour", false]);
    expect(chain).toEqual(["pump < not-before", "pour < delivery pump"]);
  });

  it("nor what comes late only with it, though the pour waits for that", () => {
    const { holder, chain } = planned({
      deliveries: pump,
      steps: [row("oil"), row("look", { work: "30 min", after: ["oil"] }), row("pour", { after: ["look"], needs: ["pump"] })],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "4 h" }],
    });
    expect([holder("oil"), holder("look")]).toEqual(["on-purpose pour", "wait oil"]);
    expect(chain).toEqual(["pump < not-before", "pour < delivery pump"]);
  });

  it("where the pour comes hours later for its sake, the chain still goes on through what set the day", () => {
    const { start, holder, chain } = planned({
      deliveries: pump,
      steps: [row("oil"), row("pour", { after: ["oil"], needs: ["pump"] }), row("strip", { after: ["pour"] })],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "1 h" }],
    });
    expect([start("oil"), start("pour")]).toEqual(["2027-03-27T07:30", "2027-03-27T09:30"]);
    expect(holder("oil")).toBe("on-purpose pour");
    expect(chain).toEqual(["pump < not-before", "pour < delivery pump", "strip < wait pour"]);
  });

  it("is not said of what the build begins with", () => {
    const { holder, chain } = planned({
      steps: [row("oil"), row("pour", { after: ["oil"] })],
      waits: [{ id: "keeps", from: "oil", to: "pour", most: "1 h" }],
    });
    expect(holder("oil")).toBe("start-of-build");
    expect(chain).toEqual(["oil < start-of-build", "pour < wait oil"]);
  });
});

describe("of several that give the same start", () => {
  it("the one that lets go last is named, also when it stands later in the document", () => {
    const { holder, start } = planned({
      steps: [
        row("shop", { hands: 0, notBefore: "2027-03-06T08:00" }),
        row("form", { work: "8 h", notBefore: "2027-03-13" }),
        row("pour", { after: ["shop", "form"], unbroken: true, work: "4 h" }),
      ],
    });
    expect([start("pour"), holder("pour")]).toEqual(["2027-03-14T08:00", "wait form"]);
  });

  it("a window that was too small is named where all of them were there before it; the chain goes on after the last", () => {
    const people = [
      { id: "me", name: "Me" },
      { id: "ann", name: "Ann", calendar: "later" },
    ];
    const { holder, chain, start } = planned({
      people,
      calendars: [{ id: "later", name: "Later", week: { sat: ["7:30-12:00", "12:30-17:00"] }, off: ["2027-03-06", "2027-03-13"] }],
      steps: [row("dig", { hands: 0 }), row("form"), row("lift", { hands: 2, after: ["form", "dig"] })],
    });
    expect([start("lift"), holder("lift")]).toEqual(["2027-03-20T07:30", "window after form"]);
    expect(chain).toEqual(["form < start-of-build", "lift < window after form"]);
  });
});
