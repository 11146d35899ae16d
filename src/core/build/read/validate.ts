import * as v from "valibot";
import { nearest } from "../../base";
import { isObject, type Path, shapeOf, walk } from "../schema/shape";
import { sayIssues, split } from "./issues";
import { type Notes, shown } from "./notes";

/** A member of so many values is no member that a builder wrote: its first fault is enough, all of them may not fit in memory. */
const largeMember = 2000;
const mostIssues = 20;

/**
 * Checks a value against its schema. A list where an object belongs is refused first (the schema library would read the list's own
 * methods as keys); a key that nobody reads but that looks like a known one is pointed out.
 */
export function isValid<S extends v.GenericSchema>(schema: S, value: unknown, notes: Notes): value is v.InferOutput<S> {
  let lists = 0;
  const size = walk(shapeOf(schema), value, [], (shape, inner, path) => {
    if (isObject(inner)) return sayUnknownKeys(notes, Object.keys(shape.entries), inner, path);
    if (inner !== null && typeof inner !== "object") return;
    lists++;
    const { key, part } = split(path);
    notes.say("build.type", key, { part, value: shown(inner), wanted: ["object"] });
  });
  if (lists > 0) return false;
  const result = v.safeParse(schema, value, { abortEarly: size > largeMember });
  if (!result.success) sayIssues(notes, result.issues.slice(0, mostIssues));
  return result.success;
}

function sayUnknownKeys(notes: Notes, entries: readonly string[], value: Readonly<Record<string, unknown>>, path: Path): void {
  const unknown = Object.keys(value).filter((name) => !entries.includes(name));
  for (const name of unknown.slice(0, mostIssues)) {
    const meant = nearest(
      name,
      entries.filter((entry) => !Object.hasOwn(value, entry)),
    );
    if (meant === null) continue;
    const { key, part } = split([...path, name]);
    notes.say("build.unknown-key", key, { part, key: shown(name), nearest: meant });
  }
}
