import type { Amount, Build } from "../../src/core/build";
import { reachesOf } from "./rules";

/** Every rule of the access room that random builds must make use of. */
export const features: Readonly<Record<string, (build: Build) => boolean>> = {
  "way with a depth": (b) => ways(b).some((w) => w.depth_mm !== null),
  "way with an opening": (b) => ways(b).some((w) => w.opening_mm !== null),
  "way with a longest": (b) => ways(b).some((w) => w.longest_mm !== null),
  "way that bears so much": (b) => ways(b).some((w) => w.bears_kg !== null),
  "way through a place": (b) => ways(b).some((w) => w.through !== null),
  "way through with a need of its own": (b) => ways(b).some((w) => w.through !== null && w.through.need.kind !== "person"),
  closes: (b) => b.pieces.some((p) => p.closes.length > 0),
  makes: (b) => b.pieces.some((p) => p.makes.length > 0),
  fills: (b) => b.pieces.some((p) => p.fills.length > 0),
  "closes and comes down again": (b) => b.pieces.some((p) => p.closes.length > 0 && p.down >= 0),
  "goes by itself": (b) => b.pieces.some((p) => p.goesAfter !== null),
  "stands from the start": (b) => b.pieces.some((p) => p.fromStart),
  "leans on": (b) => b.steps.some((s) => s.leansOn.length > 0),
  "held by": (b) => b.pieces.some((p) => p.heldBy.length > 0),
  "held by one set or another": (b) => b.pieces.some((p) => p.heldBy.length > 1),
  "holds itself once": (b) => b.pieces.some((p) => p.holdsItself !== null),
  "holds itself, it says": (b) => b.pieces.some((p) => p.claimsToHoldItself),
  "a holder comes down": (b) => b.pieces.some((p) => p.heldBy.flat().some((id) => b.pieces[b.at.piece.get(id)!]!.down >= 0)),
  "several put up at once": (b) => b.steps.some((s) => s.puts.length > 1),
  "several taken down at once": (b) => b.steps.some((s) => s.takes.length > 1),
  "put up with what holds it": (b) =>
    b.pieces.some((p) => p.up >= 0 && p.heldBy.flat().some((id) => b.pieces[b.at.piece.get(id)!]!.up === p.up)),
  "off reaches": (b) => b.pieces.some((p) => p.down >= 0 && p.off.length > 0),
  "unit brought through": (b) => needs(b).includes("unit"),
  "any one of these": (b) => b.steps.some((_, s) => reachesOf(b, s).some(({ reach }) => reach.any.length > 1)),
  "hold point": (b) => b.steps.some((s) => s.holdPoint !== null),
  "wait that orders": (b) => b.waits.some((w) => w.fromEnd === "finish" && w.toEnd === "start"),
  "wait at most": (b) => b.waits.some((w) => w.most !== null),
  "wait from a start": (b) => b.waits.some((w) => w.fromEnd === "start"),
  choice: (b) => b.choices.length > 0,
  "strength of another pour": (b) => otherStrengths(b),
  "cold joint": (b) => b.choices.some((c) => c.either.some((e) => e.waits.some((w) => w.least === null && w.most !== null))),
};

const ways = (b: Build) => b.places.flatMap((p) => p.ways);
const needs = (b: Build) => b.steps.flatMap((_, s) => reachesOf(b, s).flatMap(({ reach }) => reach.any.map((a) => a.need.kind)));

/** Whether some amount is the strength of a pour other than the step it is said of. */
function otherStrengths(b: Build): boolean {
  const other = (amount: Amount | null, step: number) => amount?.on.kind === "strength" && b.at.step.get(amount.on.pour) !== step;
  return (
    b.pieces.some((p) => other(p.holdsItself, p.up) || other(p.goesAfter, p.up)) ||
    b.steps.some((s) => s.leansOn.some(({ piece, once }) => other(once, b.pieces[b.at.piece.get(piece)!]!.up))) ||
    b.waits.some((w) => other(w.least, b.at.step.get(w.from)!) || other(w.most, b.at.step.get(w.from)!))
  );
}

/** How many builds use each. */
export class FeatureCount {
  readonly counts = new Map(Object.keys(features).map((name) => [name, 0]));
  total = 0;

  add(build: Build): void {
    this.total++;
    for (const [name, uses] of Object.entries(features)) if (uses(build)) this.counts.set(name, this.counts.get(name)! + 1);
  }

  text(): string {
    return [...this.counts].map(([name, count]) => `${name} ${count}`).join(", ");
  }

  /** Names used by fewer than this share of the builds. */
  below(share: number): string[] {
    return [...this.counts].filter(([, count]) => count < share * this.total).map(([name]) => name);
  }
}
