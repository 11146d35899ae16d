import { type Display, formatFigure, formatLength } from "../../core/base";
import type { Pour } from "../../core/build";
import type { CheckKind, ElementSheet, FormSheet, MemberPart, MemberSheet, Pressure, PressureCase, WhyFullHead } from "../../core/pour";
import { lengthsTogether } from "../lengths";
import { sentence, spelledFigure, upper } from "../text";
import { plyWords } from "./ply";

/** A part of a form inside a sentence, with the verb it takes. */
const parts: Readonly<Record<MemberPart, { readonly the: string; readonly many: boolean }>> = {
  sheathing: { the: "the sheathing", many: false },
  battens: { the: "the battens", many: true },
  bands: { the: "the bands", many: true },
  "corner bolts": { the: "the corner bolts", many: true },
  studs: { the: "the studs", many: true },
  wales: { the: "the wales", many: true },
  ties: { the: "the ties", many: true },
  strongbacks: { the: "the strongbacks", many: true },
  joists: { the: "the joists", many: true },
  stringers: { the: "the stringers", many: true },
  shores: { the: "the shores", many: true },
  mudsills: { the: "the mudsills", many: true },
  braces: { the: "the braces", many: true },
  "brace feet": { the: "the feet of the braces", many: true },
  "hold-downs": { the: "the hold-downs", many: true },
  boards: { the: "the boards", many: true },
  stakes: { the: "the stakes", many: true },
};

const checks: Readonly<Record<CheckKind, string>> = {
  bending: "bending",
  shear: "shear",
  "rolling shear": "rolling shear",
  sag: "sag",
  bearing: "bearing across the grain",
  tension: "tension",
  compression: "compression",
  slenderness: "slenderness, at most 50 times its thickness",
  ground: "pressure on the ground",
  sideways: "sideways push",
};

export const partWords = (part: MemberPart): string => parts[part].the;
/** What governs a part. */
export const checkWords = (kind: CheckKind): string => checks[kind];

/** From here on a figure says nothing but that something is wrong altogether. */
const manifold = 1000;

/** "97 of 100", "more than 10 times". What is over never reads as just enough, nor the other way round. */
export const of100 = (value: number): string =>
  value > manifold ? "more than 10 times" : `${value > 100 ? Math.max(101, Math.round(value)) : Math.min(100, Math.round(value))} of 100`;

/** "97 of 100 of what they may", "more than 10 times what it may". */
export const ofWhatMay = (value: number, many = false): string =>
  `${of100(value)}${value > manifold ? "" : " of"} what ${many ? "they" : "it"} may`;

/** "Bands, two 2x4", "Sheathing, 3/4 in" */
export function memberName({ part, pieces, stuff }: MemberSheet, display: Display): string {
  const name = upper(parts[part].the.replace(/^the /, ""));
  if (stuff === "") return name;
  return `${name}, ${pieces > 1 ? `${spelledFigure(pieces)} ` : ""}${part === "sheathing" ? plyWords(stuff, display) : stuff}`;
}

const heightsOf = ({ each }: MemberSheet): readonly number[] => each.map(({ at_mm }) => at_mm);

/** What gives first and why, in one sentence. */
export function firstSentence(form: FormSheet, display: Display): string {
  const member = form.members[form.first];
  if (member === undefined) return "Nothing of the form is written down yet, so nothing can be said of what it carries.";
  const { the, many } = parts[member.part];
  const worst = member.each.reduce<MemberSheet["each"][number] | null>(
    (most, one) => (most === null || one.of100 > most.of100 ? one : most),
    null,
  );
  const heights = lengthsTogether(heightsOf(member), display);
  const where =
    worst === null || member.each.length < 2
      ? ""
      : `: ${worst.at_mm === Math.min(...heightsOf(member)) ? "the lowest, " : "the one "}${heights(worst.at_mm)} above the foot`;
  const carries = `${ofWhatMay(member.of100, many)}, in ${checkWords(member.governs)}`;
  const verdict = member.of100 > 100 ? "It would not hold" : "It holds by these figures";
  return sentence(`${verdict}. ${upper(the)} ${many ? "give" : "gives"} first${where}${where === "" ? ": " : ", "}${carries}`);
}

/** 900 lb/ft² or 43.1 kPa */
export const pressureWords = ({ most_psf, most_kPa }: Pick<PressureCase, "most_psf" | "most_kPa">, display: Display): string =>
  display === "us" ? `${formatFigure(most_psf)} lb/ft²` : `${formatFigure(most_kPa, 1)} kPa`;

/** 5 ft/h or 1.5 m/h */
export const riseWords = (rise_m_h: number, display: Display): string =>
  display === "us" ? `${formatFigure(rise_m_h / 0.3048, rise_m_h < 3 ? 1 : 0)} ft/h` : `${formatFigure(rise_m_h, 1)} m/h`;

const documents = {
  "aci-us": "ACI 347R-14, US units",
  "aci-si": "ACI 347R-14, SI units",
  ciria: "CIRIA Report 108",
  din: "DIN 18218:2010",
} as const;
export const documentWords = (document: Pressure["document"]): string => documents[document];

/** How concrete comes when nobody holds a rate: from what, and what makes it rise. */
const comes: Readonly<Record<Pour["placed"], { readonly from: string; readonly by: string }>> = {
  hose: { from: "from the hose", by: "the hose" },
  chute: { from: "from the chute", by: "the chute" },
  "from the base": { from: "pumped from the base", by: "the pump" },
  "by hand": { from: "placed by hand", by: "the gang" },
};

/** Why it is full head where nobody holds a rate, each reason as a sentence. */
export function fullHeadReasons({ hose, held, throttle }: Pressure, display: Display, placed: Pour["placed"] = "hose"): string[] {
  const { by } = comes[placed];
  // What nobody would let down a chute is not told as a rate.
  const rise = hose.rise_m_h === null || throttle !== null ? "" : riseWords(hose.rise_m_h, display);
  const isSmall = hose.why.includes("short and small in plan");
  const reasons: Readonly<Record<WhyFullHead, string>> = {
    "no rate is held": `nobody is named to hold a rate${rise === "" || isSmall ? "" : `, and ${by} raises it ${rise}`}`,
    "short and small in plan": `it is short and small in plan, and full before the concrete stiffens${rise === "" ? "" : `: ${by} raises it ${rise}`}`,
    "vibrated deep": "it is vibrated deeper than 4 ft (1.2 m)",
    slump: "its slump is more than 7 in (175 mm)",
    "external vibration": "it is vibrated from outside",
    "pumped from the base": "it is pumped from the base, with a quarter more for the surge",
    "rises too fast": `it rises too fast for a lower figure${rise === "" ? "" : `, ${rise}`}`,
    "the formula is over it": "the formula gives more than full head, which is the most there can be",
    "outside the formula": "it lies outside the range the formula was published for",
  };
  // Where a rate is written that does not count, its own finding says why.
  const said = hose.why.filter((why) => held === null || why !== "no rate is held").map((why) => sentence(reasons[why]));
  return throttle === null ? said : [[...said.slice(0, 1), throttleSentence(throttle, display)].join(" "), ...said.slice(1)];
}

/** How fast it is to be let in where a chute or buckets would fill it at once. */
const throttleSentence = ({ rise_m_h, lift_mm, every_min }: NonNullable<Pressure["throttle"]>, display: Display): string =>
  sentence(
    `Let it in no faster than ${riseWords(rise_m_h, display)}: lifts of ${formatLength(lift_mm, display)} at most, each vibrated, and ${every_min} min from the start of one to the next`,
  );

/** Why the head is higher than the element: what lies on it is fresh with it. Nothing where it is not. */
export function overSentence(pressure: Pressure, high_mm: number, display: Display): string {
  const over_mm = pressure.height_mm - high_mm;
  return over_mm < 1
    ? ""
    : sentence(`${formatLength(over_mm, display)} of that stand over it: what lies on it is placed while it is still fresh`);
}

/** The pressure the form is judged by, and the other case beside it. */
export function pressureSentences(pressure: Pressure, display: Display, placed: Pour["placed"] = "hose"): string[] {
  const { hose, held, design, act } = pressure;
  const head = `${formatFigure(display === "us" ? pressure.weight_kg_m3 * 0.062427960576 : pressure.weight_kg_m3)} ${display === "us" ? "lb/ft³" : "kg/m³"}`;
  const full =
    hose.formula === "full head"
      ? `full head, ${head} times ${formatLength(pressure.height_mm, display)}${placed === "from the base" ? ", and a quarter more for the surge" : ""}`
      : `${hose.formula} of ${documents[pressure.document]}`;
  const first = sentence(`${comes[placed].from} it feels ${pressureWords(hose, display)} at its foot: ${full}`);
  if (held === null) return [first];
  const beside = `At the held rate${held.rise_m_h === null ? "" : ` of ${riseWords(held.rise_m_h, display)}`} it would feel ${pressureWords(held, display)} (${held.formula.startsWith("(") ? `${held.formula}, ` : held.formula === "full head" ? "full head by " : ""}${documents[pressure.document]})`;
  if (design === "hose") return [first, sentence(`${beside}; the form is judged as it comes ${comes[placed].from} all the same`)];
  const stop =
    act === null
      ? ""
      : `; that counts only while ${act.who ?? "one named person"} with a stick and a watch lets in no more than ${formatLength(act.pass_mm, display)} every ${act.every_min} min, and stops the hose otherwise`;
  return [first, sentence(`${beside}, and is judged by that${stop}`)];
}

/** The usual caution beside every figure of a form. */
export const formCaution =
  "Form failures kill and are sudden. Have someone qualified check this form before it is filled, keep people from under and beside it, and watch the lowest members while it rises. Local code and the product sheets rule over these figures.";

const wholeForce = (kN: number, display: Display): string =>
  display === "us" ? `${formatFigure(kN * 224.80894387)} lb` : `${formatFigure(kN, 1)} kN`;
/** Of what is known for each metre: lb for each foot, kN for each metre. */
const lineForce = (kN_m: number, display: Display): string =>
  display === "us" ? `${formatFigure(kN_m * 68.52176586)} lb for each foot` : `${formatFigure(kN_m, 1)} kN for each metre`;

/** What lifts or pushes a form over, and what is there against it. Nothing where nothing does. */
export function liftSentences({ form }: ElementSheet, display: Display): { readonly says: string; readonly warn: boolean }[] {
  if (form === null) return [];
  const isWhole = form.members.some(({ part }) => part === "bands");
  const force = (kN: number): string => (isWhole ? wholeForce(kN, display) : lineForce(kN, display));
  const { up, weight, held, needed } = form.lift;
  const out: { says: string; warn: boolean }[] = [];
  if (up > 0.005) {
    const own = weight === null ? "its own weight is not written down" : `it weighs ${force(weight)}`;
    const short = held + 1e-9 < needed;
    const asked =
      needed <= 0
        ? "that holds it down"
        : short
          ? `hold-downs for ${force(needed)} are asked for, and there are ${held > 0 ? force(held) : "none"}`
          : `${force(needed)} is asked of its hold-downs, and they carry ${force(held)}`;
    out.push({ says: sentence(`The concrete lifts the form with ${force(up)}: ${own}, ${asked}`), warn: short });
  }
  if (form.oneSided)
    out.push({
      says: sentence(
        `One side only: the concrete pushes it over with ${lineForce(form.thrust, display)}, ${lengthsTogether([form.thrustAt_mm], display)(form.thrustAt_mm)} above its foot, and ${form.members.some(({ part }) => part === "ties") ? "all of it hangs on its ties" : "all of it goes into braces and foot"}`,
      ),
      warn: false,
    });
  return out;
}
