import { expect, it, vi } from "vitest";
import { buildOf } from "../../../test/fixtures/make";

/** Work spent before there is an answer takes minutes to bring about, so the answer is given for access here; the second one only once dates have refused. */
const answers = vi.hoisted(() => ({ from: 1 }));
vi.mock("../access", async (original) => {
  const real = await original<typeof import("../access")>();
  let asked = 0;
  return {
    ...real,
    access: (...given: Parameters<typeof real.access>) => {
      const order = real.access(...given);
      if (++asked < answers.from) return order;
      const finding = { code: "access.too-hard", severity: "stop", where: {}, detail: { work: 1 } } as const;
      return { ...order, possible: false, findings: [finding] };
    },
    refuteWithTimes: () => ({ verdict: "not-found" }),
  };
});

const row = (id: string, rest: Record<string, unknown> = {}) => ({ id, name: id, work: "1 h", hands: 1, ...rest });

it("an order that was not found in the work allowed is not told as one that does not exist", async () => {
  const { plan } = await import(".");
  const made = plan(buildOf({ steps: [row("a")] }));
  expect([made.status, made.findings.map((f) => f.code)]).toEqual(["not-found", ["access.too-hard"]]);
});

it("nor are dates told as impossible when another order was not found in the work allowed", async () => {
  const { plan } = await import(".");
  answers.from = 3;
  const made = plan(
    buildOf({
      steps: [row("a"), row("b")],
      waits: [{ id: "wait", from: "a", to: "b", least: "3 h" }],
      choices: [{ id: "joint", name: "Joint", either: [{ waits: [{ from: "a", to: "b", most: "1 h" }] }, { waits: [] }] }],
    }),
  );
  expect([made.status, made.findings.map((f) => f.code)]).toEqual(["not-found", ["plan.windows"]]);
});
