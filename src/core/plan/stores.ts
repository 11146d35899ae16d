import type { Build } from "../build";
import type { Capacity, Span, StockLevel } from "../schedule";
import { constant } from "./places";

export interface StoreNeeds {
  readonly stocks: readonly StockLevel[];
  readonly spans: readonly Span[];
  readonly capacities: readonly Capacity[];
  readonly demands: readonly (readonly [job: number, capacity: number, number: number])[];
}

/**
 * Stock out from the start of putting a piece up until the end of taking it down, less what is lost; deliveries bring more. Equipment that pieces hold
 * (hired shores) is counted the same way, with steps that use it as spans of their own; other equipment is held by its steps from start to finish.
 * What a piece that goes by itself has used does not come back: nobody carries it away.
 */
export function storeNeeds(build: Build): StoreNeeds {
  const used = new Set<string>();
  for (const piece of build.pieces) for (const { of } of piece.uses) used.add(of);
  const counted = [
    ...build.stock.map((s) => ({ id: s.id as string, inHand: s.inHand })),
    ...build.equipment.filter((e) => used.has(e.id)).map((e) => ({ id: e.id as string, inHand: e.number })),
  ];
  const place = new Map(counted.map((c, i) => [c.id, i]));
  const inHand = counted.map((c) => c.inHand);
  const arrivals: { job: number; number: number }[][] = counted.map(() => []);
  const spans: Span[] = [];
  const steps = build.steps.length;
  build.deliveries.forEach((delivery, d) => {
    for (const { of, number } of delivery.brings) arrivals[place.get(of)!]?.push({ job: steps + d, number });
  });
  for (const piece of build.pieces) {
    for (const { of, number, loss } of piece.uses) {
      const stock = place.get(of)!;
      const back = piece.goesAfter === null ? piece.down : -1;
      if (piece.up >= 0) spans.push({ stock, number, loss: Math.min(loss, number), out: piece.up, back });
      else {
        inHand[stock]! -= number;
        if (back >= 0 && number > loss) arrivals[stock]!.push({ job: back, number: number - loss });
      }
    }
  }
  const capacities: Capacity[] = [];
  const demands: [number, number, number][] = [];
  const row = new Map<string, number>();
  build.steps.forEach((step, s) => {
    for (const { of, number } of step.equipment) {
      const stock = place.get(of);
      if (stock !== undefined) {
        spans.push({ stock, number, loss: 0, out: s, back: s });
        continue;
      }
      if (!row.has(of)) {
        row.set(of, capacities.length);
        capacities.push(constant(of, "equipment", build.equipment[build.at.equipment.get(of)!]!.number, "span"));
      }
      demands.push([s, row.get(of)!, number]);
    }
  });
  return { stocks: counted.map((c, i) => ({ id: c.id, inHand: inHand[i]!, arrivals: arrivals[i]! })), spans, capacities, demands };
}
