import type { Hatch, Ink } from "../marks/roles";

export type Patterns = Hatch;

const tile = (id: string, width: number, height: number, body: string, turn: string): string =>
  `<pattern id="${id}" width="${width}" height="${height}" patternUnits="userSpaceOnUse"${turn}>${body}</pattern>`;

/**
 * The usual section hatches of a drafter: slanting lines for what is shut, dots and stones for concrete, crossed slants for earth, and dots in rows for
 * time that has to pass. For how far a body has got: upright boards for its form, a net for its bars, thick stipple for fresh concrete, dashes of water while
 * it cures, thin stipple once it is bare. Symbols for materials in section are common practice, no source. `wanted`: which of them.
 */
export function patterns(
  ink: (name: Ink) => string,
  id: (name: Patterns) => string,
  wanted: (name: Patterns) => boolean = () => true,
): string {
  const [soft, tint, paper] = [ink("ink-soft"), ink("tint"), ink("paper")];
  const of = (name: Patterns, width: number, height: number, inside: string, turn = ""): readonly [Patterns, string] => [
    name,
    tile(id(name), width, height, inside, turn),
  ];
  const all: readonly (readonly [Patterns, string])[] = [
    of(
      "hatch-closed",
      5,
      5,
      `<rect width="5" height="5" fill="${paper}"/><line x1="0" y1="0" x2="0" y2="5" stroke="${soft}" stroke-width="1"/>`,
      ' patternTransform="rotate(45)"',
    ),
    of(
      "hatch-concrete",
      13,
      15,
      `<rect width="13" height="15" fill="${tint}"/><path d="M2.5 3.5l3-1-1 3Z M8 10.5l3.4-.6-2 2.6Z" fill="none" stroke="${soft}" stroke-width=".8"/><g fill="${soft}"><circle cx="9" cy="3.5" r=".8"/><circle cx="3" cy="10" r=".8"/><circle cx="11.5" cy="7" r=".6"/><circle cx="6" cy="13.4" r=".7"/></g>`,
    ),
    of(
      "hatch-earth",
      14,
      12,
      `<rect width="14" height="12" fill="${tint}"/><path d="M0 6L6 0M1 9L9 1M4 10L9 5M9 6L13 10M11 4L14 7M8 9L10 11" stroke="${soft}" stroke-width=".8" fill="none"/>`,
    ),
    of("hatch-boards", 8, 8, `<rect width="8" height="8" fill="${paper}"/><path d="M1.5 0V8M5.5 0V8" stroke="${soft}" stroke-width=".9"/>`),
    of(
      "hatch-bars",
      8,
      8,
      `<rect width="8" height="8" fill="${paper}"/><path d="M0 4H8M4 0V8" stroke="${soft}" stroke-width=".9"/><circle cx="4" cy="4" r="1.3" fill="${soft}"/>`,
    ),
    of(
      "hatch-fresh",
      6,
      6,
      `<rect width="6" height="6" fill="${tint}"/><g fill="${soft}"><circle cx="1.5" cy="1.5" r="1.15"/><circle cx="4.5" cy="4.5" r="1.15"/></g>`,
    ),
    of("hatch-wet", 12, 8, `<rect width="12" height="8" fill="${tint}"/><path d="M1 2H6M7 6H12" stroke="${soft}" stroke-width="1"/>`),
    of(
      "hatch-bare",
      13,
      13,
      `<rect width="13" height="13" fill="${tint}"/><g fill="${soft}"><circle cx="3" cy="3" r=".9"/><circle cx="9.5" cy="9.5" r=".9"/></g>`,
    ),
    of(
      "hatch-sod",
      22,
      16,
      `<rect width="22" height="16" fill="${tint}"/><path d="M3 6L5 2M5.5 6L7 3M14 14L16 10M16.5 14L18 11" stroke="${soft}" stroke-width=".8"/>`,
    ),
    of("hatch-wait", 5, 8, `<circle cx="1.6" cy="2" r=".8" fill="${soft}"/><circle cx="4" cy="6" r=".8" fill="${soft}"/>`),
  ];
  return all.flatMap(([name, text]) => (wanted(name) ? [text] : [])).join("");
}
