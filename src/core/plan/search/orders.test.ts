import { expect, test } from "vitest";
import { buildOf } from "../../../../test/fixtures/make";
import { randomFrom } from "../../base";
import type { Build } from "../../build";
import { PlanSearch } from "./plan-search";

/** Joints that panels close for a while; each sealant comes on a day of its own. `sides`: by joint, sealed before the panel or once it is off; left out: open. */
function panels(start: number, sides?: readonly boolean[]): Build {
  const random = randomFrom(start);
  const each = Array.from({ length: 3 }, (_, i) => ({
    i,
    comes: `2027-03-${String(random.int(6, 28)).padStart(2, "0")}`,
    seal: random.int(1, 6),
    set: random.int(1, 8),
    stands: random.int(2, 16),
    hands: random.int(1, 2),
  }));
  return buildOf({
    places: each.map(({ i }) => ({ id: `joint-${i}`, ways: [{ id: "front", passes: ["person"] }] })),
    pieces: each.map(({ i }) => ({ id: `panel-${i}`, closes: [`joint-${i}.front`] })),
    steps: each.flatMap(({ i, seal, set, hands }) => [
      {
        id: `seal-${i}`,
        work: `${seal} h`,
        hands,
        reaches: [{ place: `joint-${i}` }],
        needs: [`sealant-${i}`],
        ...(sides?.[i] === false ? { after: [`strip-${i}`] } : {}),
      },
      { id: `set-${i}`, work: `${set} h`, hands, puts: [`panel-${i}`], ...(sides?.[i] ? { after: [`seal-${i}`] } : {}) },
      { id: `strip-${i}`, work: "2 h", hands, takes: [`panel-${i}`] },
    ]),
    waits: each.map(({ i, stands }) => ({ id: `stands-${i}`, from: `set-${i}`, to: `strip-${i}`, least: `${stands} d` })),
    deliveries: each.map(({ i, comes }) => ({ id: `sealant-${i}`, promised: comes })),
  });
}

function best(build: Build): { readonly finish: number; readonly shown: boolean } {
  const search = new PlanSearch(build);
  while (!search.done) search.step(100);
  const { finish, proved } = search.sought();
  return { finish: finish!, shown: proved === "any-order" };
}

test("the earliest in whatever order is the earliest of all orders written out one by one", () => {
  let turned = 0;
  for (let start = 1; start <= 12; start++) {
    const found = best(panels(start));
    const each = Array.from({ length: 8 }, (_, k) =>
      best(
        panels(
          start,
          [0, 1, 2].map((i) => ((k >> i) & 1) === 1),
        ),
      ),
    );
    for (const one of each) expect(one.shown, `${start}`).toBe(true);
    expect(found, `${start}`).toEqual({ finish: Math.min(...each.map(({ finish }) => finish)), shown: true });
    if (found.finish < each[7]!.finish) turned++;
  }
  expect(turned).toBeGreaterThan(1);
});
