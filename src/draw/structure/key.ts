import type { Build, Solid } from "../../core/build";
import { type Plan, type SolidState, solidStages } from "../../core/plan";
import { stateWords } from "../../words";
import { type Mark, rect, words } from "../marks/mark";
import type { Role } from "../marks/roles";
import { textWidth } from "../text/measure";
import { isPassing, matterOf } from "./matter";
import { type BodyLook, faceRole, wayOf } from "./paint";

export interface KeyEntry {
  readonly role: Role;
  readonly text: string;
  readonly edge: Role;
}

const order: readonly SolidState[] = ["not yet", "formed", "bars in", "poured", "curing", "stripped", "carrying", "under way", "stands"];

/** What the key of a build tells: every look that one of its bodies has on some day, so that the key does not change while days go by. */
export function keyEntries(build: Build, plan: Plan, solids: readonly Solid[]): KeyEntry[] {
  const found = new Map<string, KeyEntry & { readonly rank: number }>();
  let hasForm = false;
  const stages = solidStages(build, plan, solids);
  solids.forEach((solid, index) => {
    const matter = matterOf(build, solid);
    const passing = isPassing(build, solid);
    for (const { state, form } of stages[index] ?? []) {
      hasForm ||= form;
      const look: BodyLook = { id: "", matter, state, form: false, passing, lit: false };
      const way = wayOf(look);
      if (way === "none" || way === "open") continue;
      const role = way === "later" ? "body-later" : way === "dug" ? "body-dug" : faceRole(look);
      const text = role === "body-earth" ? "earth" : role === "body-carrying" ? "carrying" : stateWords(state, way === "dug");
      const rank = role === "body-earth" ? order.length : way === "dug" ? order.length + 1 : order.indexOf(state);
      if (!found.has(role)) found.set(role, { role, text, edge: way === "later" ? "body-later-edge" : "body-edge", rank });
    }
  });
  const hasBelow = solids.some(({ at_mm }) => at_mm.z < 0);
  return [
    ...[...found.values()].sort((a, b) => a.rank - b.rank),
    ...(hasForm ? [{ role: "body-stands", text: "its form stands", edge: "body-edge-form" } as const] : []),
    ...(hasBelow ? [{ role: "body-stands", text: "below ground", edge: "body-edge-below" } as const] : []),
  ];
}

const swatch = { wide: 30, high: 16 } as const;

/** Rows of small squares with what they tell, from `top` down. */
export function keyMarks(
  entries: readonly KeyEntry[],
  asked: { readonly top: number; readonly width: number; readonly text: number },
): { marks: Mark[]; bottom: number } {
  const { width, text } = asked;
  const row = Math.max(swatch.high, text * 1.2) + 8;
  const marks: Mark[] = [];
  const room = Math.max(...entries.map((entry) => textWidth(entry.text, text))) + swatch.wide + 22;
  const columns = Math.max(1, Math.floor((width + 16) / room));
  entries.forEach((entry, index) => {
    const [x, y] = [1.5 + (index % columns) * room, asked.top + Math.floor(index / columns) * row];
    const id = entry.edge === "body-edge" ? entry.role : entry.edge;
    const box = (what: string, role: Role, layer: number) => rect(`key ${what} ${id}`, role, layer, x, y, x + swatch.wide, y + swatch.high);
    if (entry.role !== "body-dug") marks.push(box("face", entry.role, 3));
    marks.push(box("edge", entry.role === "body-dug" ? "body-dug" : entry.edge, 4));
    marks.push(words(`key ${id}`, "text", { text: entry.text, x: x + swatch.wide + 7, y: y + swatch.high / 2 + text * 0.33, size: text }));
  });
  return { marks, bottom: asked.top + Math.ceil(entries.length / columns) * row };
}
