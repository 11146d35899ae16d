import type { Build } from "../core/build";

const codes = /\b(?:build|access|plan|compare|clock|window)\.[a-z]/;
/** Words that say something else here, or nothing to a builder. */
const unwanted = /\b(?:float|utili[sz]ation|driver|maturity|percent|undefined|NaN|null|object Object|milestone|backlog)\b/i;

const known = new WeakMap<Build, readonly string[]>();

/** Every id of a build that could not be told from an ordinary word is left out. */
function idsOf(build: Build): readonly string[] {
  const before = known.get(build);
  if (before !== undefined) return before;
  const lists = [
    build.steps,
    build.pieces,
    build.places,
    build.waits,
    build.choices,
    build.deliveries,
    build.bookings,
    build.calendars,
    build.stock,
    build.equipment,
    build.groups,
  ];
  const members = lists.flatMap((list) => [...list] as { id: string; name: string }[]);
  const names = [
    ...members.map(({ name }) => name),
    ...build.places.flatMap(({ ways }) => ways.map(({ name }) => name)),
    ...build.waits.map(({ why }) => why),
  ]
    .join("\n")
    .toLowerCase();
  const ids = members.map(({ id }) => id.split("#")[0] as string).filter((id) => id.includes("-") && !names.includes(id));
  known.set(build, ids);
  return ids;
}

/** What is wrong with a text that a builder reads; nothing when it is fit. */
export function faultsOf(text: string, build: Build | null): string[] {
  const faults: string[] = [];
  if (!/^[“"A-Z0-9]/.test(text)) faults.push("begins small");
  if (!/[.?!]$/.test(text)) faults.push("has no stop");
  if (/ {2}| [,.;]|\.\.|“”|,,|\(\)|: :|\$\{/.test(text)) faults.push("has a hole");
  if (codes.test(text)) faults.push("tells a code");
  const word = unwanted.exec(text);
  if (word !== null) faults.push(`says ${word[0]}`);
  if (/#\d/.test(text) && !text.includes("number after a #")) faults.push("numbers a copy by #");
  for (const id of build === null ? [] : idsOf(build)) {
    if (new RegExp(`(?<![\\w-])${id}(?![\\w-])`).test(text)) faults.push(`tells the id ${id}`);
  }
  return faults;
}
