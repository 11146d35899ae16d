import { listed, quoted, readable, sentence, spelled, spelledFigure, upper } from "./text";

/** What was put in from elsewhere, as edits tell it. */
interface Pasted {
  readonly made: readonly { readonly list: string; readonly name: string }[];
  readonly leftBehind: readonly { readonly name: string; readonly of: string; readonly what: string }[];
  readonly datesLeft: boolean;
}

const kinds: Readonly<Record<string, readonly [one: string, many: string]>> = {
  places: ["place", "places"],
  pieces: ["piece", "pieces"],
  steps: ["step", "steps"],
  waits: ["wait", "waits"],
  pours: ["pour", "pours"],
  groups: ["group", "groups"],
};

const said: Readonly<Record<string, string>> = {
  places: "the place",
  pieces: "the piece",
  steps: "the step",
  calendars: "the calendar",
  people: "the person",
  stock: "the stock",
  equipment: "the equipment",
  things: "the stock",
  deliveries: "the delivery",
};

/** At most so many by name; the rest are counted. */
const most = 6;
const named = (name: string): string => quoted(/^[a-z][a-z0-9-]*$/.test(name) ? readable(name) : name);

/** What was put in, counted by kind, and what stayed behind because the build has none of it, by name. */
export function pastedSentences({ made, leftBehind, datesLeft }: Pasted): readonly string[] {
  const counts = Object.entries(kinds).flatMap(([list, [one, many]]) => {
    const count = made.filter((member) => member.list === list).length;
    return count === 0 ? [] : [spelled(count, one, many)];
  });
  const total = made.length;
  const things = new Map<string, Set<string>>();
  for (const { of, what, name } of leftBehind) {
    const key = `${said[of] ?? "what is called"} ${named(what)}`;
    things.set(key, (things.get(key) ?? new Set()).add(named(name)));
  }
  const all = [...things].map(([thing, by]) => {
    const names = [...by];
    return `${thing} (of ${names.length > 2 ? `${names[0]} and ${names.length - 1} more` : listed(names)})`;
  });
  const shown = all.slice(0, all.length > most ? most - 1 : most);
  const more = all.length - shown.length;
  return [
    sentence(`${upper(listed(counts))} ${total === 1 ? "is" : "are"} put in`),
    ...(all.length === 0
      ? []
      : [
          sentence(
            `Left out, as this build has no such thing or something else does it already: ${listed(more > 0 ? [...shown, `${more} more`] : shown)}`,
          ),
        ]),
    ...(datesLeft ? ["Dates that held in the other build are left out."] : []),
  ];
}

const unsplit: Readonly<Record<string, (name: string) => string>> = {
  gone: () => "this step is no longer there",
  pour: (name) => `${name} is a pour, placed in one go; a pour in two parts needs a joint, and is written as two pours`,
  inspection: (name) => `${name} is an inspection; what is looked at twice is two inspections`,
  rounds: (name) => `${name} is a trial in rounds, which are steps of their own already`,
  done: (name) => `${name} is done; take its tick off first`,
};

/** Why a step is not made two. @param code as edits tell it */
export const inTwoSentence = (code: string, name: string): string => sentence((unsplit[code] ?? unsplit.gone)?.(quoted(name)) ?? "");

const ungrouped: Readonly<Record<string, (name: string) => string>> = {
  nothing: () => "choose the steps that come several times",
  pour: (name) => `${name} is a pour, which stands for itself; leave it out, and it serves all of them`,
  grouped: (name) => `${name} is one of several alike already; take that group apart first`,
  rounds: (name) => `${name} is a trial in rounds, which cannot come several times`,
  booked: (name) => `${name} has a booking of its own; leave it out, and it serves all of them`,
  done: (name) => `${name} is done; take its tick off first`,
  takes: (name) => `${name} takes down what none of the others puts up, and that comes down once; choose the step that puts it up too`,
  count: () => "write how many there are, a whole number from 2 to 200",
};

/** Why steps are not made one of several alike. @param code as edits tell it */
export const asOneSentence = (code: string, name: string): string => sentence((ungrouped[code] ?? ungrouped.nothing)?.(quoted(name)) ?? "");

/** "three steps", for what is done with a selection. */
export const stepsWords = (count: number): string => (count === 1 ? "one step" : `${spelledFigure(count)} steps`);
