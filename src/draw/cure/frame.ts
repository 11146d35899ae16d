import type { Display, ElapsedMinute } from "../../core/base";
import type { SiteTime } from "../../core/clock";
import type { CureSheet } from "../../core/pour";
import { textWidth } from "../text/measure";

/** One thing that waits for the pour, in words: its name and date, whether it is a hold, and the grounds that were looked at. */
export interface RemovalWords {
  readonly name: string;
  readonly date: string;
  /** "expected, not shown", or nothing. */
  readonly state: string;
  readonly grounds: readonly string[];
}

export interface CureAsked {
  readonly title: string;
  readonly sheet: CureSheet;
  readonly time: SiteTime;
  readonly units: Display;
  /** Specified at 28 days. */
  readonly strength_MPa: number;
  readonly removals: readonly RemovalWords[];
  /** Width of the whole and type size, px. */
  readonly width: number;
  readonly text: number;
}

export interface CureFrame extends CureAsked {
  /** Px between the lines of a text. */
  readonly line: number;
  /** Room for the figures left of the plots. */
  readonly left: number;
  readonly x: (t: number) => number;
}

/** Instants on a common scale from the pour to the end of what is shown; all plots stand above one another on it. */
export function frameOf(asked: CureAsked): CureFrame {
  const left = Math.ceil(textWidth("100 %", asked.text)) + 10;
  const right = asked.width - Math.ceil(textWidth("0", asked.text));
  const { placed, until } = asked.sheet;
  const span = Math.max(1, until - placed);
  return { ...asked, line: Math.round(asked.text * 1.35), left, x: (t) => left + ((t - placed) / span) * (right - left) };
}

const steps_d = [1, 2, 7, 14, 28, 56, 112] as const;

/** Days after the pour at which a stroke stands, as close as their dates have room. */
export function ticksOf(frame: CureFrame): { readonly days: number; readonly at: ElapsedMinute }[] {
  const { placed, until } = frame.sheet;
  const room = textWidth("Wed 30 Sep", frame.text) + 14;
  const step = steps_d.find((days) => frame.x(placed + days * 1440) - frame.x(placed) >= room) ?? steps_d[steps_d.length - 1]!;
  const count = Math.floor((until - placed) / (step * 1440));
  return Array.from({ length: count + 1 }, (_, n) => ({ days: n * step, at: (placed + n * step * 1440) as ElapsedMinute }));
}
