import { attributesOf, faded, type Ink, light, looks, type Patterns, patterns, type Role } from "../../draw";

/** Colours by CSS variable, with the light ones to fall back on. */
const ink = (name: Ink): string => `var(--${name}, ${light[name]})`;
const hatch = (name: Patterns): string => `sheet-${name}`;

/** One style rule a role, so that a thousand marks carry a class each instead of their colours. */
const styleSheet = (Object.keys(looks) as Role[])
  .map((role) => {
    const rules = Object.entries(attributesOf(role, ink, hatch)).map(([name, value]) => `${name}:${value}`);
    return `.mark-${role}{${rules.join(";")}}`;
  })
  .join("\n");

export const hatches: string = patterns(ink, hatch);

const fading = `.faded{opacity:${faded.shape}}text.faded{opacity:${faded.words}}text.mark-text.faded{opacity:${faded.ink}}`;

/** The rules as a style element, to be put into the head. */
export const styleElement = `<style>${styleSheet}\n${fading}</style>`;
