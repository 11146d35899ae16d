import { asId, type PersonId, toModel } from "../../base";
import type { Mix, Pour, PourElement, PourWeather, Site } from "../model";
import type { ElementDraft, PourDraft, RemovalDraft } from "../read/pour-drafts";
import { linkMaybe } from "./amounts";
import type { Context } from "./context";
import type { Speaker } from "./names";

/** What is taken where a pour does not say it, by the site's units; every one is usual, none is known of this concrete (common practice, no source). */
const usual = {
  us: {
    concrete_C: toModel("temperature", 70, "F"),
    weight_kg_m3: toModel("density", 150, "lb/ft3"),
    slump_mm: 127,
    yield_MPa: toModel("pressure", 60, "ksi"),
    rate_m3_h: {
      chute: toModel("volumeRate", 10, "yd3/h"),
      hose: toModel("volumeRate", 5, "yd3/h"),
      "from the base": toModel("volumeRate", 15, "yd3/h"),
      "by hand": toModel("volumeRate", 0.75, "yd3/h"),
    },
  },
  metric: {
    concrete_C: 20,
    weight_kg_m3: 2400,
    slump_mm: 125,
    yield_MPa: 500,
    rate_m3_h: { chute: 8, hose: 4, "from the base": 12, "by hand": 0.5 },
  },
} as const;

/** What a chute, hose or mixer gives where nobody says, m3/h. */
export const usualRate_m3_h = (units: Site["units"], placed: Pour["placed"]): number => usual[units].rate_m3_h[placed];

/** What stays in the line and the hopper of a pump, and the grout that starts it, m3 (a quarter of a cubic yard; common practice, no source). */
const pump = { hopper_m3: toModel("volume", 0.1, "yd3"), prime_m3: toModel("volume", 0.25, "yd3") };

type Units = Site["units"];
/** Takes the written figure, or the usual one and notes its key. */
type Take = <T>(key: string, written: T | null, usual: T) => T;

const linkMix = (draft: PourDraft["mix"], units: Units, take: Take): Mix => ({
  ...draft,
  cement: take("mix.cement", draft.cement, "I"),
  retarder: take("mix.retarder", draft.retarder, false),
  weight_kg_m3: take("mix.weight", draft.weight_kg_m3, usual[units].weight_kg_m3),
  slump_mm: take("mix.slump", draft.slump_mm, usual[units].slump_mm),
});

const linkWeather = (draft: PourDraft["weather"], units: Units, take: Take): PourWeather => ({
  ...draft,
  concrete_C: take("weather.concrete", draft.concrete_C, usual[units].concrete_C),
});

function linkElement(draft: ElementDraft, at: number, context: Context, speaker: Speaker, take: Take): PourElement {
  const { assumed, held, bars, pieces, ...own } = draft;
  for (const key of assumed) take(`elements.${draft.id}.${key}`, null, null);
  return {
    ...own,
    held: held && { ...held, who: held.who === null ? null : whoOf(held.who, context, speaker, `${at + 1}.held.who`) },
    bars: bars.map((set) => ({
      ...set,
      yield_MPa: take(`elements.${draft.id}.bars.yield`, set.yield_MPa, usual[context.units].yield_MPa),
    })),
    pieces: [
      ...new Set(pieces.flatMap((piece, i) => context.names.many("piece", piece, speaker, "elements", `${at + 1}.pieces.${i + 1}`))),
    ],
  };
}

const whoOf = (ref: string, context: Context, speaker: Speaker, part: string): PersonId | null =>
  context.names.one("person", ref, speaker, "elements", part);

function linkRemovals(draft: PourDraft, context: Context, speaker: Speaker): Pour["removals"] {
  const arched = draft.elements.some((element) => element.shape.kind === "barrel");
  return draft.removals.flatMap((removal: RemovalDraft, i) => {
    const part = String(i + 1);
    const days = linkMaybe(removal.days, context, speaker, "removals", `${part}.days`);
    const soffit = removal.soffit ?? (arched ? "arch" : "slab");
    return context.names
      .many("step", removal.step, speaker, "removals", `${part}.step`)
      .map((step) => ({ ...removal, step, days, soffit, entry: i + 1 }));
  });
}

/** The step a pour is done in, by the id it is read as; null with a finding where there is none or a copy has to be named. */
export const stepOfPour = (draft: PourDraft, context: Pick<Context, "names">): string | null =>
  context.names.one("step", draft.step, speakerOf(draft), "step");

const speakerOf = ({ id }: { readonly id: string }): Speaker => ({ list: "pours", id, copy: null });

/** A pour with its references looked up and what is usual in place of what is not written; `assumed` names that. */
export function linkPour(draft: PourDraft, context: Context): Pour {
  const { units, names } = context;
  const speaker = speakerOf(draft);
  const assumed = new Set<string>();
  const take: Take = (key, written, instead) => {
    if (written === null) assumed.add(key);
    return written ?? instead;
  };
  const placed = take("placed", draft.placed, "chute");
  const pumped = placed === "hose" || placed === "from the base";
  return {
    ...draft,
    step: asId(stepOfPour(draft, context) ?? ""),
    mix: linkMix(draft.mix, units, take),
    weather: linkWeather(draft.weather, units, take),
    placed,
    rate_m3_h: take("rate", draft.rate_m3_h, usual[units].rate_m3_h[placed]),
    elements: draft.elements.map((element, at) => linkElement(element, at, context, speaker, take)),
    hopper_m3: draft.hopper_m3 ?? (pumped ? pump.hopper_m3 : 0),
    prime_m3: draft.prime_m3 ?? (pumped ? pump.prime_m3 : 0),
    removals: linkRemovals(draft, context, speaker),
    sacks: draft.sacks === null ? null : names.one("stock", draft.sacks, speaker, "sacks"),
    assumed: [...assumed],
  };
}
