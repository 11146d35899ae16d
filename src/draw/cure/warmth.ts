import { layers, type Mark, path, rect, words } from "../marks/mark";
import { textWidth } from "../text/measure";
import type { CureFrame } from "./frame";
import type { Plot } from "./strength";

const high = 84;
/** 40 °F, where cold weather begins for concrete; 50 °F, under which a day does not count for the table. ACI 306R and 347R. */
const marks_C = [40, 50].map((f) => ((f - 32) * 5) / 9);

const roles = { usual: "warmth-usual", forecast: "outline", measured: "bar" } as const;
const sources = { measured: "measured dark", forecast: "forecast outlined", usual: "usual pale" } as const;

function head({ sheet, units, width, left, text }: CureFrame): string {
  const plain = `Air at the site, low and high of each day, °${units === "us" ? "F" : "C"}`;
  const kinds = (["measured", "forecast", "usual"] as const).filter((kind) => sheet.days.some(({ source }) => source === kind));
  const full = kinds.length > 1 ? `${plain} (${kinds.map((kind) => sources[kind]).join(", ")})` : `${plain}, as usual here`;
  return textWidth(full, text, 600) <= width - left ? full : textWidth(plain, text, 600) <= width - left ? plain : "Air at the site";
}

/** Low and high of each day as a bar between them, by where the figures come from; the two temperatures that matter as lines. */
export function warmthPlot(frame: CureFrame): Plot {
  const { sheet, text, line, left, x, units } = frame;
  if (sheet.days.length === 0) return { height: 0, marks: [] };
  const top = line * 1.6;
  const lows = sheet.days.map(({ low_C }) => low_C);
  const highs = sheet.days.map(({ high_C }) => high_C);
  const least = Math.floor(Math.min(...lows, marks_C[0]!) / 5) * 5;
  const most = Math.ceil(Math.max(...highs, marks_C[1]!) / 5) * 5;
  const y = (celsius: number) => top + high * (1 - (celsius - least) / (most - least));
  const shownAs = (celsius: number) => `${Math.round(units === "us" ? celsius * 1.8 + 32 : celsius)}°`;
  const end = x(sheet.until);
  const marks: Mark[] = [
    words("warmth head", "text", {
      text: head(frame),
      x: left,
      y: text,
      size: text,
      weight: 600,
    }),
  ];
  const minor = [least, most].filter((celsius) => marks_C.every((one) => Math.abs(y(one) - y(celsius)) > text * 1.1));
  for (const celsius of minor)
    marks.push(
      words(`warmth ${celsius}`, "text-soft", {
        text: shownAs(celsius),
        x: left - 6,
        y: y(celsius) + text * 0.3,
        size: text,
        anchor: "end",
      }),
    );
  marks_C.forEach((celsius, index) => {
    marks.push(
      path(`warmth line ${index}`, index === 0 ? "lane-line" : "ghost", layers.rule, [
        [left, y(celsius)],
        [end, y(celsius)],
      ]),
    );
    const other = marks_C[1 - index]!;
    const apart = Math.abs(y(celsius) - y(other)) > text * 1.1;
    if (apart || index === 0)
      marks.push(
        words(`warmth at ${index}`, "text", { text: shownAs(celsius), x: left - 6, y: y(celsius) + text * 0.3, size: text, anchor: "end" }),
      );
  });
  for (const day of sheet.days) {
    const x0 = Math.max(left, x(day.from));
    const x1 = Math.min(end, x(day.from + 1440));
    if (x1 - x0 < 0.5) continue;
    const inset = Math.min(2, (x1 - x0) * 0.15);
    const role = roles[day.source];
    marks.push(
      rect(
        `warmth day ${day.date}`,
        role,
        layers.section,
        x0 + inset,
        y(day.high_C),
        x1 - inset,
        Math.max(y(day.low_C), y(day.high_C) + 1),
      ),
    );
  }
  return { height: top + high + line * 0.6, marks };
}
