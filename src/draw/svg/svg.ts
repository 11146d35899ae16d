import { type Drawing, type Mark, round } from "../marks/mark";
import { type Ink, type Look, light, looks, type Role } from "../marks/roles";
import { type Patterns, patterns } from "./patterns";

export interface SvgAsked {
  readonly palette?: Record<Ink, string>;
  /** Marks to draw pale. */
  readonly faded?: (mark: Mark) => boolean;
}

const escapes: Record<string, string> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };
const escapeXml = (text: string): string => text.replace(/[&<>"]/g, (letter) => escapes[letter] as string);

/** SVG attributes of a role, without quotes round names: used for files here and for style rules on a screen. */
export function attributesOf(role: Role, ink: (name: Ink) => string, hatch: (name: Patterns) => string): Readonly<Record<string, string>> {
  const look: Look = looks[role];
  const paint = (one: Ink | Patterns) => (one.startsWith("hatch-") ? `url(#${hatch(one as Patterns)})` : ink(one as Ink));
  return {
    fill: look.fill === undefined ? "none" : paint(look.fill),
    ...(look.fillOpacity === undefined ? {} : { "fill-opacity": String(look.fillOpacity) }),
    ...(look.stroke === undefined
      ? {}
      : { stroke: paint(look.stroke), "stroke-width": String(look.width ?? 1), "stroke-linejoin": "round" }),
    ...(look.dash === undefined ? {} : { "stroke-dasharray": look.dash }),
  };
}

function element(mark: Mark, attributes: string): string {
  if (mark.shape === "rect")
    return `<rect x="${round(mark.x0)}" y="${round(mark.y0)}" width="${round(mark.x1 - mark.x0)}" height="${round(mark.y1 - mark.y0)}"${attributes}/>`;
  if (mark.shape === "path") return `<path d="${mark.d}"${attributes}/>`;
  // The length is stated so that another face than the one measured is squeezed, not cut.
  const weight = mark.weight === 400 ? "" : ` font-weight="${mark.weight}"`;
  return `<text x="${round(mark.x)}" y="${round(mark.y)}" font-size="${mark.size}"${weight} textLength="${round(mark.x1 - mark.x0)}" lengthAdjust="spacingAndGlyphs"${attributes}>${escapeXml(mark.text)}</text>`;
}

/** Section hatches, in every file; those for how far a body has got only where they are used. */
const always: ReadonlySet<unknown> = new Set<Patterns>(["hatch-closed", "hatch-concrete", "hatch-earth", "hatch-wait"]);

/** The drawing as one SVG document, for files, print and the command line. Numbers are rounded to two decimals. */
export function svgText(drawing: Drawing, asked: SvgAsked = {}): string {
  const palette = asked.palette ?? light;
  const ink = (name: Ink) => palette[name];
  const used = new Set<unknown>(drawing.parts.flatMap((part) => part.marks.map(({ role }) => (looks[role] as Look).fill)));
  const known = new Map<Role, string>();
  const look = (role: Role): string => {
    const text =
      known.get(role) ??
      Object.entries(attributesOf(role, ink, (name) => name))
        .map(([key, value]) => ` ${key}="${value}"`)
        .join("");
    known.set(role, text);
    return text;
  };
  const parts = drawing.parts.map(
    (part) =>
      `<g transform="translate(${round(part.x)} ${round(part.y)})" data-part="${part.name}">\n${part.marks
        .map((mark) => element(mark, look(mark.role) + (asked.faded?.(mark) ? ' opacity="0.35"' : "")))
        .join("\n")}\n</g>`,
  );
  const [width, height] = [Math.ceil(drawing.width) + 16, Math.ceil(drawing.height) + 16];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="-8 -8 ${width} ${height}" font-family="'Source Sans 3', 'Source Sans Pro', sans-serif" font-variant-numeric="tabular-nums" role="img">`,
    `<title>${escapeXml(drawing.title)}</title>`,
    `<defs>${patterns(
      ink,
      (name) => name,
      (name) => always.has(name) || used.has(name),
    )}</defs>`,
    `<rect x="-8" y="-8" width="${width}" height="${height}" fill="${palette.paper}"/>`,
    ...parts,
    "</svg>\n",
  ].join("\n");
}
