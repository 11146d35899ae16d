import type { Display } from "../../core/base";
import type { Pressure, PressureCase } from "../../core/pour";
import { pressureWords } from "../../words";
import { layers, type Mark, path, words } from "../marks/mark";
import { textWidth } from "../text/measure";

/** Where the diagram stands: its axis, how wide the larger pressure is, top and foot of the concrete. */
export interface DiagramPlace {
  readonly x: number;
  readonly wide: number;
  readonly top: number;
  readonly foot: number;
  readonly text: number;
  readonly units: Display;
}

type Points = readonly (readonly [number, number])[];

/** Pressure down the concrete: plain head to a depth, then constant. */
function outline(one: PressureCase, { height_mm }: Pressure, most_kPa: number, place: DiagramPlace): Points {
  const x = place.x + (one.most_kPa / most_kPa) * place.wide;
  const y = place.top + Math.min(1, one.hydrostatic_mm / height_mm) * (place.foot - place.top);
  return y < place.foot - 0.01
    ? [
        [place.x, place.top],
        [x, y],
        [x, place.foot],
      ]
    : [
        [place.x, place.top],
        [x, place.foot],
      ];
}

/** What the case's figure takes of the paper, so that the diagram is never narrower than its words. */
export function figuresWidth(pressure: Pressure, units: Display, text: number): number {
  const own = [pressure.hose, pressure.held].flatMap((one) => (one ? [pressureWords(one, units)] : []));
  return Math.max(...own.map((figure) => textWidth(figure, text, 600)));
}

/** Height below the foot that the figures take, px. */
export const figuresHeight = (pressure: Pressure, text: number): number => (pressure.held ? 2 : 1) * 1.45 * text + 6;

/** The diagram: full head as the heavy line, a held rate dashed beside it, the one the form is judged by filled. */
export function pressureMarks(pressure: Pressure, place: DiagramPlace): Mark[] {
  const { hose, held } = pressure;
  const most = Math.max(hose.most_kPa, held?.most_kPa ?? 0);
  const judged = pressure.design === "held" && held ? held : hose;
  const filled = outline(judged, pressure, most, place);
  const figure = (id: string, one: PressureCase, row: number) => {
    const text = pressureWords(one, place.units);
    const end = Math.max(place.x + (one.most_kPa / most) * place.wide, place.x + textWidth(text, place.text, 600));
    return words(`figure ${id}`, id === "hose" ? "text-chalk" : "text", {
      text,
      x: end,
      y: place.foot + place.text * (0.25 + 1.1 * row) + 6,
      size: place.text,
      weight: judged === one ? 600 : 400,
      anchor: "end",
    });
  };
  return [
    path("pressure", "pressure", layers.section, [...filled, [place.x, place.foot]], { closed: true }),
    // Above its knee a held rate is plain head as well: there the heavy line stands for both.
    ...(held && held.hydrostatic_mm < pressure.height_mm
      ? [path("pressure held", "pressure-held", layers.block + 1, outline(held, pressure, most, place).slice(1))]
      : []),
    path("pressure head", "pressure-head", layers.block, outline(hose, pressure, most, place)),
    path("pressure depth", "pressure-axis", layers.rule, [
      [place.x, place.top],
      [place.x, place.foot],
    ]),
    path("pressure base", "pressure-axis", layers.rule, [
      [place.x, place.foot],
      [place.x + place.wide + 8, place.foot],
    ]),
    figure("hose", hose, 1),
    ...(held ? [figure("held", held, 2)] : []),
  ];
}
