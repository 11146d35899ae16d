import { isObject, type Written, type WrittenMember } from "./written";

/** What a reference may speak of; "things": stock or equipment. */
export type Spoken = "places" | "pieces" | "steps" | "calendars" | "people" | "stock" | "equipment" | "things" | "deliveries";

/**
 * Answers a reference ("post", "post#2") with what stands in its place: nothing (it goes), one, or several where it may mean several.
 * @param key the member's own key in which it stands
 */
export type Answer = (of: Spoken, ref: string, key: string) => readonly string[];

type Rewrite = (value: unknown, say: (of: Spoken, ref: string) => readonly string[]) => unknown;

/** "post", "post#2" and "post.north": what is spoken of, and the way behind it. */
function apart(ref: string): readonly [thing: string, way: string] {
  const dot = ref.indexOf(".");
  return dot < 0 ? [ref, ""] : [ref.slice(0, dot), ref.slice(dot)];
}

const one =
  (of: Spoken): Rewrite =>
  (value, say) =>
    typeof value === "string" ? say(of, value)[0] : value;

const many =
  (of: Spoken): Rewrite =>
  (value, say) =>
    Array.isArray(value)
      ? value.flatMap((ref) => {
          if (typeof ref !== "string") return [ref];
          const [thing, way] = apart(ref);
          return say(of, thing).map((id) => `${id}${way}`);
        })
      : value;

/** Entries that speak of something at one of their keys: they go with it, and are several where it is several. */
const entries =
  (of: Spoken, field: string, others: Readonly<Record<string, Rewrite>> = {}): Rewrite =>
  (value, say) =>
    Array.isArray(value) ? value.flatMap((entry) => entryOf(entry, of, field, others, say)) : value;

function entryOf(
  entry: unknown,
  of: Spoken,
  field: string,
  others: Readonly<Record<string, Rewrite>>,
  say: (of: Spoken, ref: string) => readonly string[],
): readonly unknown[] {
  if (!isObject(entry)) return [entry];
  const rest = keysOf(entry, others, say);
  const named = entry[field];
  return typeof named === "string" ? say(of, named).map((id) => ({ ...rest, [field]: id })) : [rest];
}

/** An object with some of its keys rewritten; what comes to nothing goes. */
function keysOf(
  value: Written,
  keys: Readonly<Record<string, Rewrite>>,
  say: (of: Spoken, ref: string, key: string) => readonly string[],
): Written {
  const pairs = Object.entries(value).flatMap(([key, inner]): [string, unknown][] => {
    const rewrite = Object.hasOwn(keys, key) ? keys[key] : undefined;
    const to = rewrite === undefined ? inner : rewrite(inner, (of, ref) => say(of, ref, key));
    return to === undefined ? [] : [[key, to]];
  });
  return Object.fromEntries(pairs);
}

const inside =
  (keys: Readonly<Record<string, Rewrite>>): Rewrite =>
  (value, say) =>
    isObject(value) ? keysOf(value, keys, say) : value;

const each =
  (keys: Readonly<Record<string, Rewrite>>): Rewrite =>
  (value, say) =>
    Array.isArray(value) ? value.map((entry) => (isObject(entry) ? keysOf(entry, keys, say) : entry)) : value;

/** "70 % of pour", "3 days of office", `{ is, on }`: one of the two may be meant, so both are asked, steps first. */
const amount: Rewrite = (value, say) => {
  if (typeof value === "string") {
    const [, figure, ref] = /^(.+ of )([a-z][a-z0-9-]*(?:#\d+)?)$/.exec(value) ?? [];
    if (figure === undefined || ref === undefined) return value;
    const [to] = say(/^\d+ days? of $/.test(figure) ? "calendars" : "steps", ref);
    return to === undefined ? undefined : `${figure}${to}`;
  }
  if (!isObject(value)) return value;
  const is = amount(value.is, say);
  if (is === undefined) return undefined;
  if (typeof value.on !== "string") return { ...value, is };
  const [on] = say("calendars", value.on);
  return on === undefined ? undefined : { ...value, is, on };
};

const piece = { piece: one("pieces") };
const aims = entries("places", "place", piece);
const reaches: Rewrite = (value, say) => {
  const list = Array.isArray(value) ? value : [];
  const made = list.flatMap((reach): readonly unknown[] => {
    if (!isObject(reach) || !Array.isArray(reach.any)) return aims([reach], say) as readonly unknown[];
    const any = aims(reach.any, say) as readonly unknown[];
    return any.length === 0 ? [] : [{ ...reach, any }];
  });
  return Array.isArray(value) ? made : value;
};
const through: Rewrite = (value, say) =>
  typeof value === "string" ? say("places", value)[0] : (entries("places", "place", piece)([value], say) as readonly unknown[])[0];
/** A set of holders counts only with all of them. */
const heldBy: Rewrite = (value, say) =>
  Array.isArray(value)
    ? value.flatMap((set) => {
        const to = Array.isArray(set) ? set.map((ref) => (typeof ref === "string" ? say("pieces", ref) : [])) : [];
        return to.length > 0 && to.every((ids) => ids.length > 0) ? [to.flat()] : [];
      })
    : value;

const linking = { least: amount, most: amount };
/** Waits inside a choice: one for each pair of what their ends are answered with. */
const between: Rewrite = (value, say) =>
  Array.isArray(value)
    ? value.flatMap((wait) =>
        isObject(wait) ? pairs(wait, say).map(([from, to]) => ({ ...keysOf(wait, linking, say), from, to })) : [wait],
      )
    : value;

/** The two ends of a wait as they are answered, each with each. */
function pairs(wait: Written, say: (of: Spoken, ref: string) => readonly string[]): readonly (readonly [string, string])[] {
  const [from, to] = [wait.from, wait.to].map((end) => (typeof end === "string" ? say("steps", end) : []));
  return (from ?? []).flatMap((start) => (to ?? []).map((end) => [start, end] as const));
}

const keys: Readonly<Record<string, Readonly<Record<string, Rewrite>>>> = {
  places: { below: many("places"), layerOf: one("places"), ways: each({ through }) },
  pieces: {
    closes: many("places"),
    fills: many("places"),
    makes: many("places"),
    heldBy,
    off: reaches,
    uses: entries("things", "of"),
    goesAfter: amount,
    holdsItself: amount,
  },
  steps: {
    place: one("places"),
    calendar: one("calendars"),
    reaches,
    puts: many("pieces"),
    takes: many("pieces"),
    closes: many("places"),
    leansOn: entries("pieces", "piece", { once: amount }),
    alone: many("places"),
    after: many("steps"),
    needs: many("deliveries"),
    equipment: entries("equipment", "of"),
    holdPoint: inside({ places: many("places") }),
    trial: inside({ decides: many("steps"), gap: amount }),
  },
  waits: linking,
  choices: { either: each({ waits: between }) },
  pours: {
    step: one("steps"),
    elements: each({ pieces: many("pieces"), held: inside({ who: one("people") }) }),
    removals: entries("steps", "step", { days: amount }),
    sacks: one("stock"),
  },
  bookings: { step: one("steps"), calendar: one("calendars"), lead: amount },
  deliveries: { calendar: one("calendars"), lead: amount, brings: entries("things", "of") },
  people: { calendar: one("calendars") },
  solids: { pour: one("steps"), pieces: many("pieces"), form: many("pieces"), bars: many("steps"), places: many("places") },
};

/** The member with every reference in it answered anew; where nothing changes it is the same object. */
export function rewritten<M extends Written>(list: string, member: M, answer: Answer): M {
  const made = keysOf(member, (Object.hasOwn(keys, list) ? keys[list] : undefined) ?? {}, answer);
  return JSON.stringify(made) === JSON.stringify(member) ? member : (made as M);
}

/** A wait as many times as its ends are answered, an id for each; without an end it is none. */
export function rewrittenWaits(wait: WrittenMember, answer: Answer, idOf: (count: number) => string): readonly WrittenMember[] {
  const own = rewritten("waits", wait, answer);
  const ends = pairs(wait, (of, ref) => answer(of, ref, "from"));
  return ends.map(([from, to], count) => ({ ...own, from, to, id: idOf(count) }));
}

/** Everything a member speaks of, in the order in which it is written. */
export function spokenOf(list: string, member: Written): readonly { readonly of: Spoken; readonly ref: string; readonly key: string }[] {
  const found: { of: Spoken; ref: string; key: string }[] = [];
  rewritten(list, member, (of, ref, key) => {
    found.push({ of, ref, key });
    return [ref];
  });
  return found;
}
