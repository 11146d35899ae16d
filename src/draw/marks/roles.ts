/** The seven colours of every drawing, by name. A screen hands in CSS variables, a file the colours themselves. */
export type Ink = "paper" | "ink" | "ink-soft" | "rule" | "chalk" | "tint" | "warn";

/** Textures, each made of lines or dots so that it can be told without colour. */
export type Hatch =
  | "hatch-closed"
  | "hatch-concrete"
  | "hatch-earth"
  | "hatch-sod"
  | "hatch-wait"
  | "hatch-boards"
  | "hatch-bars"
  | "hatch-fresh"
  | "hatch-wet"
  | "hatch-bare";

export interface Look {
  readonly fill?: Ink | Hatch;
  readonly fillOpacity?: number;
  readonly stroke?: Ink | Hatch;
  readonly width?: number;
  readonly dash?: string;
  readonly caps?: "round" | "butt";
}

const line = (stroke: Ink, width: number, dash?: string): Look => ({ stroke, width, ...(dash ? { dash } : {}) });
const area = (fill: NonNullable<Look["fill"]>, fillOpacity?: number): Look => ({
  fill,
  ...(fillOpacity === undefined ? {} : { fillOpacity }),
});

/** A face of a body: edged in its own texture, so that no paper shows where two bits of it meet. */
const face = (fill: Ink | Hatch): Look => ({ fill, stroke: fill, width: 0.7 });

/** What a mark is decides how it looks, here and nowhere else. */
export const looks = {
  paper: area("paper"),
  "lane-line": line("ink-soft", 0.8),
  "lane-lit": { fill: "chalk", fillOpacity: 0.1 },
  "ground-line": line("ink", 1.6),
  bracket: line("ink-soft", 1.2),
  leader: line("ink-soft", 0.7),
  "leader-dot": area("ink-soft"),
  "day-line": line("rule", 0.8),
  "warmth-usual": { fill: "tint", stroke: "ink-soft", width: 0.8 },
  "month-line": line("ink-soft", 0.8),
  fold: area("ink", 0.045),
  "fold-break": line("ink-soft", 1.1),
  "closed-flat": area("tint", 0.6),
  "closed-edge": area("hatch-closed"),
  "filled-flat": area("tint"),
  "concrete-edge": area("hatch-concrete"),
  "earth-edge": area("hatch-earth"),
  "opens-edge": line("ink-soft", 1.2, "2 2"),
  slack: line("ink-soft", 1, "1 3"),
  "slack-end": line("ink-soft", 1.2),
  tail: line("ink-soft", 0.8),
  "tail-end": { fill: "paper", stroke: "ink-soft", width: 1 },
  wait: area("hatch-wait"),
  "wait-frame": line("ink-soft", 0.6),
  "wait-end": line("ink", 1.4),
  visit: { fill: "paper", stroke: "ink", width: 1.2 },
  plate: area("paper"),
  block: { fill: "paper", stroke: "ink", width: 1.2 },
  "block-pour": { fill: "tint", stroke: "ink", width: 2 },
  "block-done": { fill: "ink-soft", stroke: "ink", width: 1.2 },
  pause: line("ink", 1.2),
  crew: area("ink"),
  check: line("ink", 1.4),
  closing: line("ink", 3.4),
  "closing-small": line("ink", 2),
  "chalk-heavy": { stroke: "chalk", width: 4, caps: "butt" },
  "chalk-thin": { stroke: "chalk", width: 1.3 },
  pole: line("ink", 1.3),
  "flag-delivery": area("ink"),
  "flag-booking": { fill: "paper", stroke: "ink", width: 1.3 },
  "flag-inspection": { fill: "tint", stroke: "ink", width: 1.3 },
  "flag-late": area("warn"),
  "flag-chalk": { stroke: "chalk", width: 1.3 },
  today: line("ink", 1.6, "7 3"),
  "today-tag": area("ink"),
  ghost: line("ink-soft", 1.2, "3 2"),
  "ghost-move": line("ink-soft", 1, "1 2"),
  link: line("ink", 1.3),
  "link-head": area("ink"),
  lit: line("ink", 2.6),
  bar: area("ink-soft"),
  "bar-there": line("ink", 1.4),
  outline: { fill: "paper", stroke: "ink", width: 1 },
  "outline-later": { fill: "paper", stroke: "ink-soft", width: 0.9, dash: "3 2" },
  "outline-closed": { fill: "hatch-closed", stroke: "ink", width: 1 },
  "outline-concrete": { fill: "hatch-concrete", stroke: "ink", width: 1 },
  "outline-earth": { fill: "hatch-earth", stroke: "ink", width: 1 },
  arrow: line("ink-soft", 1),
  "arrow-chosen": line("ink-soft", 1, "4 3"),
  "arrow-lit": line("ink", 1.8),
  "arrow-head": area("ink-soft"),
  door: { fill: "paper", stroke: "ink", width: 1.1 },
  "loop-line": line("warn", 2),
  timber: { fill: "paper", stroke: "ink", width: 1.3 },
  "timber-first": { fill: "paper", stroke: "ink", width: 3 },
  "timber-over": { fill: "paper", stroke: "warn", width: 3 },
  ply: { fill: "tint", stroke: "ink", width: 0.9 },
  "ply-first": { fill: "tint", stroke: "ink", width: 3 },
  "ply-over": { fill: "tint", stroke: "warn", width: 3 },
  tie: line("ink", 1.6),
  "tie-first": line("ink", 3.4),
  "tie-over": line("warn", 3.4),
  sign: area("ink"),
  "sign-warn": area("warn"),
  lift: line("warn", 2.2),
  "cut-line": line("ink-soft", 1),
  "scale-line": line("ink-soft", 0.8),
  pressure: { fill: "chalk", fillOpacity: 0.12 },
  "pressure-head": line("chalk", 3),
  "pressure-held": line("ink", 1.8, "5 3"),
  "pressure-axis": line("ink", 1.2),
  "body-later": { fill: "paper", stroke: "ink-soft", width: 0.7 },
  "body-later-edge": line("ink-soft", 0.7),
  "body-dug": line("ink-soft", 0.9, "5 3"),
  "body-formed": face("hatch-boards"),
  "body-bars": face("hatch-bars"),
  "body-poured": face("hatch-fresh"),
  "body-curing": face("hatch-wet"),
  "body-stripped": face("hatch-bare"),
  "body-carrying": face("tint"),
  "body-under-way": face("hatch-closed"),
  "body-stands": face("paper"),
  "body-earth": face("hatch-earth"),
  "body-earth-top": face("hatch-sod"),
  "body-shade": { fill: "ink", fillOpacity: 0.06 },
  "body-shade-deep": { fill: "ink", fillOpacity: 0.13 },
  "body-edge": line("ink", 1.1),
  "body-edge-form": line("ink", 2.4),
  "body-later-below": line("ink-soft", 0.7, "3 3"),
  "body-edge-below": line("ink", 1.1, "4 3"),
  "body-edge-form-below": line("ink", 2.4, "5 3"),
  "body-below": { fill: "paper", fillOpacity: 0.45 },
  "body-open": line("ink", 0.9),
  "body-lit": { stroke: "chalk", width: 2.4 },
  "body-lit-below": { stroke: "chalk", width: 1.8, dash: "5 4" },
  "body-lit-wash": { fill: "chalk", fillOpacity: 0.14 },
  "ground-hatch": line("ink-soft", 0.8),
  text: area("ink"),
  "text-soft": area("ink-soft"),
  "text-chalk": area("chalk"),
  "text-warn": area("warn"),
  "text-paper": area("paper"),
} as const satisfies Record<string, Look>;

/** How much is left of what is faded: shapes may go pale, words stay readable, at 4.5 to 1 and better. Plain ink bears more of it than other inks. */
export const faded = { shape: 0.3, ink: 0.64, words: 0.82 } as const;

export type Role = keyof typeof looks;

/** The default light colours: ink and soft ink on paper and on tint at 7 to 1 and better. */
export const light: Record<Ink, string> = {
  paper: "#fdfcf8",
  ink: "#14181c",
  "ink-soft": "#444a50",
  rule: "#cfcbc0",
  chalk: "#17498f",
  tint: "#eae7de",
  warn: "#862800",
};

export const dark: Record<Ink, string> = {
  paper: "#14171a",
  ink: "#f4f2ea",
  "ink-soft": "#bfc3c6",
  rule: "#3c4146",
  chalk: "#8fc0ff",
  tint: "#262a2d",
  warn: "#ffb08a",
};
