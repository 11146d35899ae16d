import { layers, type Mark, rect, type TextMark } from "../marks/mark";
import type { Frame } from "./frame";
import type { Lane } from "./layout";

/** Room of the texture and the closing mark at an edge, px. */
const edgeRoom = 15;

/**
 * What keeps words readable where an edge of the lane's state, or today, runs through them: the line is broken there, as a drafter breaks a line at a
 * figure. Empty where nothing runs through.
 */
export function plates(frame: Frame, lane: Lane, label: TextMark, y0: number, y1: number): Mark[] {
  const today = frame.asked.today ?? null;
  const crossed = lane.edges.some((edge) => edge > label.x0 - edgeRoom && edge < label.x1 + 2);
  const onToday = today !== null && frame.axis.x(today) > label.x0 - 2 && frame.axis.x(today) < label.x1 + 2;
  // Ghosts of an earlier plan may lie anywhere.
  if (!crossed && !onToday && !frame.asked.before) return [];
  const states = frame.plan.stands.places[lane.place] ?? [];
  const middle = frame.axis.t((label.x0 + label.x1) / 2);
  const state = [...states].reverse().find(({ from }) => from <= middle)?.state ?? "open";
  const box = [label.x0 - 3, y0, label.x1 + 3, y1] as const;
  const base = rect(`plate ${label.id}`, "plate", layers.plate, ...box, label.of);
  if (state === "open") return [base];
  return [base, rect(`plate tint ${label.id}`, state === "filled" ? "filled-flat" : "closed-flat", layers.plate, ...box, label.of)];
}
