import { writtenId } from "../../core/base";
import type { Build } from "../../core/build";
import type { Selection } from "./desk";
import { shownName } from "./names";

/** Something that can be found by its name. */
export interface Found {
  readonly list: Exclude<Selection["list"], "waits"> | "people";
  readonly id: string;
  readonly name: string;
  /** What it is, in a word. */
  readonly kind: string;
}

const kinds = [
  ["steps", "step"],
  ["pieces", "piece"],
  ["places", "place"],
  ["deliveries", "delivery"],
  ["bookings", "booking"],
  ["people", "person"],
] as const;

const plain = (text: string): string => text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();

/** How well a name answers what is typed: 0 begins with it, 1 a word does, 2 holds it somewhere, 3 holds every word typed; null: not at all. */
function rankOf(name: string, typed: string): number | null {
  if (name.startsWith(typed)) return 0;
  if (name.includes(` ${typed}`)) return 1;
  if (name.includes(typed)) return 2;
  const words = typed.split(/\s+/).filter((word) => word !== "");
  return words.length > 1 && words.every((word) => name.includes(word)) ? 3 : null;
}

/** Members whose names hold what is typed, the best first, then as they stand in the build; of many alike the first only. Nothing typed finds nothing. */
export function findIn(build: Build, typed: string, most: number): { readonly found: readonly Found[]; readonly more: number } {
  const wanted = plain(typed.trim());
  if (wanted === "") return { found: [], more: 0 };
  const ranked: { readonly rank: number; readonly found: Found }[] = [];
  for (const [list, kind] of kinds) {
    const seen = new Set<string>();
    for (const member of build[list]) {
      const rank = rankOf(plain(member.name), wanted);
      if (rank === null || seen.has(writtenId(member.id))) continue;
      seen.add(writtenId(member.id));
      ranked.push({ rank, found: { list, id: member.id, name: list === "people" ? member.name : shownName(member), kind } });
    }
  }
  ranked.sort((a, b) => a.rank - b.rank);
  return { found: ranked.slice(0, most).map((one) => one.found), more: Math.max(0, ranked.length - most) };
}
