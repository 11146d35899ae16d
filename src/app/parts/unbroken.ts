/** A figure and its unit stay on one line: "8 in" never ends a line with its 8. */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (?=(?:in|ft|mm|m|lb|kg|psi|MPa|kPa|°F|°C|[ym]d?³|%)(?![\w³]))/g, "$1\u00a0");
