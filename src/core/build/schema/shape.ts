import type * as v from "valibot";

/** What the walks below need of a schema; pipes keep the fields of their first schema, so one look is enough. */
interface Shape {
  readonly type: string;
  readonly entries?: Readonly<Record<string, Shape>>;
  readonly item?: Shape;
  readonly value?: Shape;
  readonly wrapped?: Shape;
  readonly options?: readonly Shape[] | readonly string[];
  /** The key that tells the alternatives of a variant apart, and the one word of a literal. */
  readonly key?: string;
  readonly literal?: unknown;
}

export interface ObjectShape {
  readonly entries: Readonly<Record<string, Shape>>;
}

export type Path = readonly (string | number)[];

export const shapeOf = (schema: v.GenericSchema): Shape => schema as unknown as Shape;

export const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function known(shape: Shape, value: object): number {
  return Object.keys(value).filter((key) => Object.hasOwn(shape.entries ?? {}, key)).length;
}

/** Whether a variant's alternative is the one that the value names; unlike keys of others, its own are known then. */
function tells(key: string | undefined, option: Shape, value: object): boolean {
  const word = key === undefined ? undefined : option.entries?.[key];
  if (key === undefined || word === undefined) return true;
  const said = (value as Readonly<Record<string, unknown>>)[key];
  return word.options ? (word.options as readonly unknown[]).includes(said) : word.literal === said;
}

/** The schema that applies to a value: optional ones opened, of several the one that fits an object or a list best. */
export function settle(shape: Shape, value: unknown): Shape {
  if (shape.wrapped) return settle(shape.wrapped, value);
  if (!shape.options || typeof value !== "object" || value === null || typeof shape.options[0] !== "object") return shape;
  const wanted = Array.isArray(value) ? "array" : "loose_object";
  const fitting = (shape.options as readonly Shape[]).filter((option) => option.type === wanted && tells(shape.key, option, value));
  return (
    fitting.reduce<Shape | null>((best, option) => (best && known(best, value) >= known(option, value) ? best : option), null) ?? shape
  );
}

/** Calls `visit` for every value whose schema is an object with named keys, outermost first. Returns how many values there are to check. */
export function walk(shape: Shape, value: unknown, path: Path, visit: (shape: ObjectShape, value: unknown, path: Path) => void): number {
  const at = settle(shape, value);
  if (at.entries) visit(at as ObjectShape, value, path);
  if (Array.isArray(value) && at.type === "array" && at.item) {
    const item = at.item;
    return value.reduce<number>((sum, member, i) => sum + (typeof member === "object" ? walk(item, member, [...path, i], visit) : 1), 0);
  }
  if (!isObject(value)) return 1;
  let count = 1;
  for (const key of Object.keys(value)) {
    const inner = at.entries && Object.hasOwn(at.entries, key) ? at.entries[key] : at.value;
    count += inner && typeof value[key] === "object" ? walk(inner, value[key], [...path, key], visit) : 1;
  }
  return count;
}
