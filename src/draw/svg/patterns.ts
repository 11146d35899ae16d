import type { Ink } from "../marks/roles";

export type Patterns = "hatch-closed" | "hatch-concrete" | "hatch-earth" | "hatch-wait";

const tile = (id: string, width: number, height: number, body: string, turn = ""): string =>
  `<pattern id="${id}" width="${width}" height="${height}" patternUnits="userSpaceOnUse"${turn}>${body}</pattern>`;

/**
 * The usual section hatches of a drafter: slanting lines for what is shut, dots and stones for concrete, crossed slants for earth, and dots in rows for
 * time that has to pass. Symbols for materials in section are common practice, no source.
 */
export function patterns(ink: (name: Ink) => string, id: (name: Patterns) => string): string {
  const [soft, tint, paper] = [ink("ink-soft"), ink("tint"), ink("paper")];
  return [
    tile(
      id("hatch-closed"),
      5,
      5,
      `<rect width="5" height="5" fill="${paper}"/><line x1="0" y1="0" x2="0" y2="5" stroke="${soft}" stroke-width="1"/>`,
      ' patternTransform="rotate(45)"',
    ),
    tile(
      id("hatch-concrete"),
      13,
      15,
      `<rect width="13" height="15" fill="${tint}"/><path d="M2.5 3.5l3-1-1 3Z M8 10.5l3.4-.6-2 2.6Z" fill="none" stroke="${soft}" stroke-width=".8"/><g fill="${soft}"><circle cx="9" cy="3.5" r=".8"/><circle cx="3" cy="10" r=".8"/><circle cx="11.5" cy="7" r=".6"/><circle cx="6" cy="13.4" r=".7"/></g>`,
    ),
    tile(
      id("hatch-earth"),
      14,
      12,
      `<rect width="14" height="12" fill="${tint}"/><path d="M0 6L6 0M1 9L9 1M4 10L9 5M9 6L13 10M11 4L14 7M8 9L10 11" stroke="${soft}" stroke-width=".8" fill="none"/>`,
    ),
    tile(id("hatch-wait"), 5, 8, `<circle cx="1.6" cy="2" r=".8" fill="${soft}"/><circle cx="4" cy="6" r=".8" fill="${soft}"/>`),
  ].join("");
}
