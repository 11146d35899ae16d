import type { Closing } from "../../core/access";
import type { Display } from "../../core/base";
import type { Build, Piece } from "../../core/build";
import type { Plan } from "../../core/plan";
import { listed, sentence } from "../text";
import { type Voice, voice } from "../voice";

/** What has to be done, placed, checked and photographed before something closes. */
export interface LastChances {
  readonly closing: string;
  /** Headed lists of step names; empty ones are left out. */
  readonly groups: readonly { readonly head: string; readonly steps: readonly string[] }[];
}

const heads: readonly (readonly [Closing["before"][number]["what"], string])[] = [
  ["work", "Done"],
  ["embed", "In place"],
  ["check", "Checked"],
  ["photograph", "Photographed, with a tape in the picture"],
  ["inspection", "Seen by the inspector"],
];

/** What a piece closes, in words: "the way from the north to the pier steel". */
function closesWords(piece: number, voice: Voice): string {
  const { closes = [], fills = [] } = voice.build?.pieces[piece] ?? {};
  return listed([...(closes.length === 0 ? [] : [waysWords(closes, voice)]), ...fills.map((place) => `all of ${voice.place(place)}`)]);
}

const fullWay = (place: string, way: string): string => (way.includes(".") ? way : `${place}.${way}`);

function waysWords(closes: Piece["closes"], voice: Voice): string {
  const byPlace = new Map<string, string[]>();
  for (const { place, way } of closes) byPlace.set(place, [...(byPlace.get(place) ?? []), way]);
  const ways = [...byPlace].map(([place, names]) => {
    const all = voice.build?.places[voice.build.at.place.get(place) ?? -1]?.ways.length === names.length;
    return all && names.length > 1
      ? `every way to ${voice.place(place)}`
      : `${names.length === 1 ? voice.theWay(fullWay(place, names[0]!)) : `the ways ${listed(names.map((way) => voice.by(fullWay(place, way))))}`} to ${voice.place(place)}`;
  });
  return listed(ways);
}

function heading(closing: Closing, at: number | null, opensAgain: number | null, voice: Voice): string {
  const piece = voice.build?.pieces[closing.piece];
  const step = voice.step(voice.build?.steps[closing.step]?.id);
  const when = at === null ? "" : `${voice.moment(at)}: `;
  const again = closing.forGood ? ", for good" : opensAgain === null ? "" : `, until ${voice.moment(opensAgain)}`;
  return `${when}${step} closes ${closesWords(closing.piece, voice)} with ${voice.piece(piece?.id)}${again}`;
}

/** "closes the way from the north to the wall steel; fills the pier" of a piece; empty where it closes nothing off. */
export function pieceCloses(piece: number, build: Build, display?: Display): string {
  const say = voice(build, display);
  const { closes = [], fills = [] } = build.pieces[piece] ?? {};
  const ways = closes.length === 0 ? "" : `closes ${waysWords(closes, say)}`;
  return [ways, fills.length === 0 ? "" : `fills ${listed(fills.map(say.place))}`].filter((part) => part !== "").join("; ");
}

/** "the way from the north to the pier steel" of a closing: what nothing gets to any more. */
export const closedWords = (closing: Closing, build: Build, display?: Display): string => closesWords(closing.piece, voice(build, display));

/** The closings in date order, each with its last chances; where there are no dates, in the order given. */
export function closingSentences(plan: Plan, build: Build, display?: Display): LastChances[] {
  const say = voice(build, display);
  return [...plan.closings]
    .sort((a, b) => a.at - b.at || a.piece - b.piece)
    .map((closing) => ({
      closing: sentence(heading(closing, closing.at, closing.opensAgain, say)),
      groups: lastChance(closing, build, display),
    }));
}

/** As `closingSentences`, of closings without dates. */
export function undatedClosings(closings: readonly Closing[], build: Build, display?: Display): LastChances[] {
  const say = voice(build, display);
  return closings.map((closing) => ({ closing: sentence(heading(closing, null, null, say)), groups: lastChance(closing, build, display) }));
}

/** The lists of one closing. */
function lastChance(closing: Closing, build: Build, display?: Display): LastChances["groups"] {
  const say = voice(build, display);
  return heads.flatMap(([what, head]) => {
    const steps = closing.before.filter((one) => one.what === what).map((one) => say.step(build.steps[one.step]?.id));
    return steps.length === 0 ? [] : [{ head, steps }];
  });
}

/** "Nothing goes on at the footing steel before “Footing inspection”, Fri 19 Mar." of every hold point, in date order. */
export function holdPointSentences(plan: Plan, build: Build, display?: Display): string[] {
  const say = voice(build, display);
  return build.steps
    .flatMap(({ id, holdPoint }, at) =>
      holdPoint === null ? [] : [{ id, places: holdPoint.places, start: plan.steps[at]?.start ?? null }],
    )
    .sort((a, b) => (a.start ?? 0) - (b.start ?? 0))
    .map(({ id, places, start }) =>
      sentence(`nothing goes on at ${listed(places.map(say.place))} before ${say.step(id)}${start === null ? "" : `, ${say.day(start)}`}`),
    );
}
