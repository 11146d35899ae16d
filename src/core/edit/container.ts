/** An object or a list of the document. */
export type Container = readonly unknown[] | Readonly<Record<string, unknown>>;

export const isContainer = (value: unknown): value is Container => typeof value === "object" && value !== null;

/** A key in an object, or a position in a list as text; for a list that is where a member stands or would be put. */
export interface Located {
  readonly key: string;
  readonly exists: boolean;
}

const isNamed = (member: unknown, id: string): boolean =>
  member === id || (isContainer(member) && !Array.isArray(member) && Object.hasOwn(member, "id") && (member as { id: unknown }).id === id);

/** Finds what a path member names; null where it cannot name anything (a key where a list stands). */
export function locate(container: Container, name: string): Located | null {
  if (!Array.isArray(container)) return { key: name, exists: Object.hasOwn(container, name) };
  const end = String(container.length);
  if (name.startsWith("id=")) {
    const found = container.findIndex((member) => isNamed(member, name.slice(3)));
    return found < 0 ? { key: end, exists: false } : { key: String(found), exists: true };
  }
  const [, plus, digits] = /^(\+?)(\d{1,9})$/.exec(name) ?? [];
  if (digits === undefined) return null;
  const position = Math.min(Number(digits), container.length);
  return { key: String(position), exists: plus === "" && position < container.length };
}

/** The container with a value at the spot; where there was none, a list grows there and an object at its end. */
export function put(container: Container, spot: Located, value: unknown): Container {
  if (!Array.isArray(container)) return { ...container, [spot.key]: value };
  const position = Number(spot.key);
  return spot.exists ? container.with(position, value) : container.toSpliced(position, 0, value);
}

/** The container without what stands at the spot. */
export function taken(container: Container, spot: Located): Container {
  if (Array.isArray(container)) return container.toSpliced(Number(spot.key), 1);
  const { [spot.key]: _, ...rest } = container as Readonly<Record<string, unknown>>;
  return rest;
}
