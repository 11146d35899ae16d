import { nearest } from "../core/base";
import type { Build } from "../core/build";
import { listed, quoted, voice } from "../words";
import { Fault } from "./fault";

const mostShown = 4;
/** A part of a name has at least so many letters. */
const shortest = 3;

/**
 * Position of a step given by its id, its name, or a part of its name that no other step has; capitals do not matter. Copies of one step are told apart by
 * their number: "set-face#2", or "Set a face (2)". @throws Fault
 */
export function findStep(build: Build, asked: string): number {
  const byId = build.at.step.get(asked);
  if (byId !== undefined) return byId;
  const say = voice(build);
  const names = build.steps.map(({ id }) => say.step(id).slice(1, -1));
  const wanted = plain(asked);
  const same = matches(names, (name) => plain(name) === wanted);
  const like = same.length > 0 ? same : matches(names, (name) => wanted.length >= shortest && plain(name).includes(wanted));
  const found = like.length > 0 ? like : matches([...build.at.step.keys()], (id) => wanted !== "" && id.split("#")[0] === asked);
  const [only] = found;
  if (only !== undefined && found.length === 1) return only;
  if (found.length > 1) {
    const shown = found.slice(0, mostShown).map((i) => quoted(names[i] as string));
    const rest = found.length - shown.length;
    throw new Fault(
      `${quoted(asked)} can be ${listed(rest > 0 ? [...shown, `${rest} more`] : shown, rest > 0 ? "and" : "or")}; write the name in full.`,
    );
  }
  const near = nearest(wanted, names.map(plain)) ?? nearest(asked, build.at.step.keys());
  const meant = near === null ? -1 : (build.at.step.get(near) ?? names.findIndex((name) => plain(name) === near));
  throw new Fault(`There is no step ${quoted(asked)} in this build${meant < 0 ? "." : `; is ${quoted(names[meant] as string)} meant?`}`);
}

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

function matches(names: readonly string[], good: (name: string) => boolean): number[] {
  return names.flatMap((name, i) => (good(name) ? [i] : []));
}
