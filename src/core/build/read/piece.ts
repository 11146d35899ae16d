import type { Member } from "../schema/document";
import { maybeAmount } from "./amounts";
import type { PieceDraft } from "./drafts";
import type { Notes } from "./notes";
import { readReaches } from "./place";
import { inside, length_mm, mass_kg, spot } from "./quantities";

const none: readonly never[] = [];

export function readPiece(raw: Member<"pieces">, notes: Notes): PieceDraft {
  const { size, holdsItself } = raw;
  const at = spot(notes, "size");
  if (holdsItself === true) notes.say("build.holds-without-amount", "holdsItself", {});
  const heldBy = raw.heldBy ?? none;
  heldBy.forEach((set, i) => {
    if (set.length === 0) notes.say("build.empty", "heldBy", { part: String(i + 1) });
  });
  const itself = typeof holdsItself === "boolean" ? undefined : holdsItself;
  if (itself !== undefined && heldBy.length === 0) notes.say("build.held-by-nothing", "holdsItself", {});
  return {
    id: raw.id,
    fixed: {
      name: raw.name ?? raw.id,
      fromStart: raw.fromStart ?? false,
      claimsToHoldItself: holdsItself === true,
      size_mm: size
        ? {
            long: length_mm(inside(at, "long"), "size", size.long),
            wide: length_mm(inside(at, "wide"), "size", size.wide),
            thick: length_mm(inside(at, "thick"), "size", size.thick),
          }
        : null,
      mass_kg: raw.weight === undefined ? null : mass_kg(spot(notes, "weight"), raw.weight),
      sort: raw.sort ?? "other",
      from: raw.from ?? null,
    },
    goesAfter: maybeAmount(spot(notes, "goesAfter"), raw.goesAfter),
    holdsItself: maybeAmount(spot(notes, "holdsItself"), itself),
    closes: raw.closes ?? none,
    fills: raw.fills ?? none,
    makes: raw.makes ?? none,
    heldBy,
    off: readReaches(notes, "off", raw.off),
    uses: (raw.uses ?? none).map((use) => ({ of: use.of, number: use.number ?? 1, loss: use.loss ?? 0 })),
  };
}
