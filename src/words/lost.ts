import type { Build } from "../core/build";
import { listed, sentence } from "./text";
import { voice } from "./voice";

/** What a removal touches besides what is removed: a member that goes with it, or one that loses what it says of it. */
interface Touched {
  readonly list: string;
  readonly id: string;
  readonly goes: boolean;
}

const sorts: Readonly<Record<string, string>> = {
  bookings: "the booking of",
  deliveries: "the delivery of",
  pours: "the pour of",
  waits: "the wait",
  choices: "the choice",
  groups: "the group",
};

/** At most so many by name; the rest are counted. */
const most = 6;

/**
 * What is named before a removal is done: what goes with it, and what stays and no longer speaks of it. Empty where nothing else is touched.
 * @param name what is removed, as its builder calls it
 * @param called how it is spoken of, where that is not its name: “these three steps”
 */
export function lostSentences(name: string, touched: readonly Touched[], build: Build | null, called = `“${name}”`): readonly string[] {
  const say = voice(build);
  const words = ({ list, id }: Touched): string => {
    const thing = say.thing(list, id);
    const sort = sorts[list];
    return sort === undefined ? thing : `${sort} ${thing.replace(/^the /, "")}`;
  };
  const named = (all: readonly Touched[]): string => {
    const shown = all.slice(0, all.length > most ? most - 1 : most).map(words);
    const more = all.length - shown.length;
    return listed(more > 0 ? [...shown, `${more} more`] : shown);
  };
  const goes = touched.filter((one) => one.goes);
  const stays = touched.filter((one) => !one.goes);
  return [
    ...(goes.length > 0 ? [sentence(`With ${called} ${goes.length === 1 ? "goes" : "go"} ${named(goes)}`)] : []),
    ...(stays.length > 0 ? [sentence(`${named(stays)} ${stays.length === 1 ? "stays" : "stay"}, without ${called}`)] : []),
  ];
}

/** What goes by a calendar, in one line: “the build, Ruth and Owen, and 3 steps”. Empty where nothing does. */
export function goesByWords(places: readonly { readonly list: string; readonly id: string }[], build: Build | null): string {
  const say = voice(build);
  const of = (list: string): readonly string[] => [...new Set(places.filter((one) => one.list === list).map(({ id }) => id))];
  const few = (list: string, one: string, many: string): string[] => {
    const ids = of(list);
    if (ids.length === 0) return [];
    return ids.length <= 3 ? ids.map((id) => say.thing(list, id)) : [`${ids.length} ${ids.length === 1 ? one : many}`];
  };
  const parts = [
    ...(of("usual").length > 0 ? ["all steps that name no other"] : []),
    ...few("people", "person", "people"),
    ...few("steps", "step", "steps"),
    ...few("deliveries", "delivery", "deliveries"),
    ...few("bookings", "booking", "bookings"),
    ...["waits", "pieces", "choices", "pours", "groups"].flatMap((list) => {
      const count = of(list).length;
      const [one, many] = {
        waits: ["wait", "waits"],
        pieces: ["piece", "pieces"],
        choices: ["choice", "choices"],
        pours: ["pour", "pours"],
      }[list] ?? ["group", "groups"];
      return count === 0 ? [] : [`${count} ${count === 1 ? one : many}`];
    }),
  ];
  return parts.length === 0 ? "" : listed(parts);
}
