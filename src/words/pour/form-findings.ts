import type { CheckKind, MemberPart, PourCode, WhyFullHead } from "../../core/pour";
import type { Told } from "../build/sayings";
import { listed, quoted, readable } from "../text";
import { figure, list, text } from "../voice";
import { checkWords, ofWhatMay, partWords } from "./members";
import { elementWords, force, length, lineForce, minutes, place, smallArea, soil } from "./told";

const part = ({ detail }: Told): string => partWords(text(detail, "part") as MemberPart);
const verb = (told: Told, one: string, many: string): string => (part(told) === "the sheathing" ? one : many);
/** "1,500 lb for each foot of it", "1,500 lb": by whether the force is that of a metre of wall. */
const perEach = (told: Told, key: string): string => (text(told.detail, "each") === "metre" ? lineForce(told, key) : force(told, key));

const guesses: Readonly<Record<string, string>> = {
  grade: "species and grade are not known; the weakest likely one is taken",
  section: "its section is a guess; measure it",
  figure: "what one carries is a guess; take it from the product's sheet",
  plank: "what plank they are is not written; one as thin as a 2x is taken, of the weakest likely wood",
  soil: "what the soil bears is a guess; ask someone who knows this ground",
};

const grounds: Readonly<Record<string, string>> = {
  "fresh fill": "fresh fill, which settles",
  frozen: "frozen ground, which gives way as it thaws",
};

const sides: Readonly<Record<string, string>> = { a: "face a", b: "face b", ends: "ends", sides: "sides" };

const nothingBy: Readonly<Record<WhyFullHead, string>> = {
  "no rate is held": "nobody holds it",
  "short and small in plan": "it is short and small in plan, and full before the concrete stiffens",
  "vibrated deep": "it is vibrated deeper than 4 ft (1.2 m)",
  slump: "its slump is more than 7 in (175 mm)",
  "external vibration": "it is vibrated from outside",
  "pumped from the base": "it is pumped from the base",
  "rises too fast": "it still rises too fast",
  "the formula is over it": "the formula gives more than full head, which is the most there can be",
  "outside the formula": "it lies outside the range of the formula",
};

const assumed: Readonly<Record<string, string>> = {
  "mix.weight": "what the concrete weighs",
  "mix.slump": "its slump",
  "mix.cement": "its cement",
  "mix.retarder": "whether anything in it slows its set (a retarder, and most water reducers)",
  "weather.concrete": "how warm it is when it is placed",
};

/** What can be found about pressure and form. */
export const formSayings = {
  "pressure.no-dimension": (told) =>
    `${place(told)}: its ${readable(text(told.detail, "what").replace(/_mm$/, ""))} is no length above nothing; write it like 12 in or 300 mm`,
  "pressure.batter": (told) => {
    const document = text(told.detail, "document") === "din" ? "DIN 18218" : "CIRIA Report 108";
    return `${place(told)}: it leans ${figure(told.detail, "batter_deg").toFixed(1)}°, and ${document} speaks of faces within ${figure(told.detail, "most_deg")}° of plumb; it is judged by full head`;
  },
  "pressure.laid-on": (told) =>
    `${place(told)}: what is laid on it in the same pour adds ${length(told, "over_mm")} to its head; waiting in between earns nothing`,
  "pressure.consistency-unknown": (told) =>
    `${place(told)}: DIN 18218 asks for the class of consistency (F1 to F6 or SCC) of the mix; until it is written, full head counts`,
  "pressure.setting-unknown": (told) =>
    `${place(told)}: its mix sets late, and nothing says when; write the end of setting, until then full head counts`,
  "pressure.nobody-holds": (told) =>
    `${place(told)}: the held rate names nobody; name one person with a stick and a watch, until then full head counts`,
  "pressure.pass-deep": (told) =>
    `${place(told)}: a pass of ${length(told, "pass_mm")} at once is a lift and a pause, which earns nothing; passes go up to ${length(told, "most_mm")}`,
  "pressure.vibration-unknown": (told) => `${place(told)}: say how deep it is vibrated; deeper than 4 ft (1.2 m) only full head counts`,
  "pressure.held-earns-nothing": (told) =>
    `${place(told)}: the held rate earns nothing, since ${nothingBy[text(told.detail, "why") as WhyFullHead] ?? "full head counts all the same"}; it is judged by full head`,
  "pressure.held-small": (told) =>
    `${place(told)}: at the held rate its weakest part carries ${ofWhatMay(figure(told.detail, "held_of100"))}; from the hose it is full in ${minutes(told, "hose_min")} and carries ${ofWhatMay(figure(told.detail, "hose_of100"))}. Whoever holds the rate must be able to stop the hose`,
  "pressure.assumed": (told) => {
    const keys = list(told.detail, "keys");
    return `${place(told)}: nobody wrote down ${listed(keys.map((key) => assumed[key] ?? readable(key)))}; what is usual is taken, and the pressure rests on it`;
  },
  "form.none": (told) => `${place(told)}: nothing says how it is formed; write its form, or that it is cast against earth or old work`,
  "form.other-kind": (told) =>
    `${place(told)}: a ${readable(text(told.detail, "form"))} form does not form a ${readable(text(told.detail, "shape"))}; choose a form of its kind`,
  "form.no-figure": (told) =>
    `${place(told)}: ${readable(text(told.detail, "what"))} of ${part(told)} is no length above nothing; write it like 12 in or 300 mm`,
  "form.size-unknown": (told) =>
    `${place(told)}: there is no size ${quoted(text(told.detail, "size"))} in the table for ${part(told)}; write one like 2x4, or measure the piece`,
  "form.ply-unknown": (told) =>
    `${place(told)}: there is no plywood of ${text(told.detail, "ply")} in with its grain ${text(told.detail, "grain")} the supports in the table; write one like 3/4`,
  "form.nothing-across": (told) =>
    `${place(told)}: no ${part(told).replace("the ", "")} are written down, so nothing holds its faces together; write their heights from the foot up`,
  "form.over": (told) => {
    const at = figure(told.detail, "at_mm");
    const where = text(told.detail, "at_mm") === "" || at < 0 ? "" : ` ${length(told, "at_mm")} above the foot`;
    return `${place(told)}: it would not hold. ${part(told).replace(/^t/, "T")}${where} ${verb(told, "carries", "carry")} ${ofWhatMay(figure(told.detail, "of100"), verb(told, "", "many") !== "")}, in ${checkWords(text(told.detail, "governs") as CheckKind)}`;
  },
  "form.carries-unknown": (told) =>
    `${place(told)}: nothing says what one of ${part(told)} carries, and ${force(told, "load_kN")} is asked of it; take it from the product's sheet`,
  "form.washer-unknown": (told) =>
    `${place(told)}: one of ${part(told)} pulls on ${text(told.detail, "on") === "wales" ? "the wales" : "the bands"} with ${force(told, "load_kN")}; its washer or plate needs ${smallArea(told, "area_mm2")} on the wood`,
  "form.soil-unknown": (told) =>
    `${place(told)}: the mudsills bring ${force(told, "load_kN")} down, ${soil(told, "press_kPa")} on the ground, and nothing says what it bears; ask someone who knows it`,
  "form.guess": (told) => `${place(told)}, ${part(told)}: ${guesses[text(told.detail, "what")] ?? "a figure that carries is a guess"}`,
  "form.memory": (told) =>
    `${place(told)}: values of the wood of ${listed(list(told.detail, "parts").map((one) => partWords(one as MemberPart)))} are from memory; look them up before relying on them`,
  "form.lifts": (told) =>
    `${place(told)}: the fresh concrete lifts the form with ${perEach(told, "up_kN")}, against ${perEach(told, "weight_kN")} of its own weight; hold it down for ${perEach(told, "needed_kN")}`,
  "form.mass-unknown": (told) =>
    `${place(told)}: the fresh concrete lifts the form with ${perEach(told, "up_kN")}, and nothing says what the form weighs, so nothing of it is counted`,
  "form.one-sided": (told) =>
    `${place(told)}: formed on one side only, it is pushed over with ${lineForce(told, "thrust_kN_m")}, ${length(told, "at_mm")} above its foot, and nothing braces it; write its braces and what they land on`,
  "form.one-sided-lifts": (told) => `${place(told)}: braces that rise to the form lift it too; hold it down at its foot`,
  "form.one-sided-ties": (told) =>
    `${place(told)}: formed on one side only, its ties need an anchor in what it is cast against, for ${force(told, "load_kN")} each; earth holds none`,
  "form.foot-thrust": (told) =>
    `${place(told)}: its foot is pushed out with ${lineForce(told, "thrust_kN_m")}; a brace alone does not hold that: stop the foot too`,
  "form.brace-one-height": (told) =>
    `${place(told)}: its braces reach it at one height, and nothing carries its other wales to them; write strongbacks, held by the brace and at their foot`,
  "form.brace-lands": (told) =>
    `${place(told)}: each brace brings ${force(told, "load_kN")} to its foot, and nothing says what it lands on; write it, with what that carries`,
  "form.no-brace": (told) =>
    `${place(told)}: nothing braces it; against wind and knocks ${lineForce(told, "asked_kN_m")} is asked along its top`,
  "form.foot-open": (told) => `${place(told)}: its foot is not sealed; grout runs out there first, and leaves stone without paste`,
  "form.wales-loose": (told) => `${place(told)}: nothing takes what the wales bring: write its ties, strongbacks or braces`,
  "form.no-mudsill": (told) =>
    `${place(told)}: each shore brings down ${force(told, "load_kN")}, and nothing says what it stands on; write its mudsills`,
  "form.mudsill-ground": (told) =>
    `${place(told)}: its mudsills lie on ${grounds[text(told.detail, "ground")] ?? "ground that gives way"}; move or replace what they lie on`,
  "form.mudsill-ground-unknown": (told) =>
    `${place(told)}: say what its mudsills lie on: firm ground, rock or a slab, never fresh fill or frozen ground`,
  "form.mudsill-level": (told) => `${place(told)}: its mudsills are not level, so the shores slide or tip; bench the ground level first`,
  "form.slab-below": (told) =>
    `${place(told)}: each shore brings ${force(told, "load_kN")} down on the slab under it; ask whoever designed that slab whether it bears that, and shore it too where it is young`,
  "form.open-side": (told) =>
    `${place(told)}: nothing stands on its ${sides[text(told.detail, "face")] ?? "side"}, so the concrete runs out there; write it as formed, or what it is cast against`,
  "form.leans-out": (told) =>
    `${place(told)}: a face of it leans out, and the fresh concrete lies on its form with ${lineForce(told, "down_kN_m")}; nothing here judges what carries that, so prop it and have someone qualified look at it`,
  "form.outer-unjudged": (told) =>
    `${place(told)}: ${figure(told.detail, "slope_deg") > 45 ? `where it springs it is ${Math.round(figure(told.detail, "slope_deg"))}° steep, and fresh concrete stays there only under an outer form` : "its top is formed"}; it presses on that form and lifts it, and nothing here judges that: have someone qualified look at it`,
  "form.barrel-sideways": (told) =>
    `${place(told)}: it pushes its springings apart with ${lineForce(told, "push_kN_m")} on each side while it is placed; fill both sides alike, and tie or brace them`,
  "form.round": (told) =>
    `${place(told)}: ${elementWords(told, text(told.detail, "element"))} is judged as a square of its diameter; a round form of its own has a product sheet`,
} as const satisfies Partial<Readonly<Record<PourCode, (told: Told) => string>>>;
