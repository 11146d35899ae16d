import type { MemberPart } from "../../core/pour";

/** Names of the members of a form: as a heading, short beside a drawing, and of one of them inside a sentence. */
const names: Readonly<Record<MemberPart, readonly [heading: string, short: string, one: string]>> = {
  sheathing: ["Sheathing", "sheathing", "sheathing"],
  battens: ["Battens", "battens", "batten"],
  bands: ["Bands", "bands", "band"],
  "corner bolts": ["Corner bolts", "bolts", "bolt"],
  studs: ["Studs", "studs", "stud"],
  wales: ["Wales", "wales", "wale"],
  ties: ["Ties", "ties", "tie"],
  strongbacks: ["Strongbacks", "strongbacks", "strongback"],
  joists: ["Joists", "joists", "joist"],
  stringers: ["Stringers", "stringers", "stringer"],
  shores: ["Shores", "shores", "shore"],
  mudsills: ["Mudsills", "mudsills", "mudsill"],
  braces: ["Braces", "braces", "brace"],
  "brace feet": ["Feet of the braces", "brace feet", "brace foot"],
  "hold-downs": ["Hold-downs", "hold-downs", "hold-down"],
  boards: ["Edge boards", "boards", "edge board"],
  stakes: ["Stakes", "stakes", "stake"],
};

const column = { heading: 0, short: 1, one: 2 } as const;

export const partName = (part: MemberPart, as: keyof typeof column): string => names[part][column[as]];
