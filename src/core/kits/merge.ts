type Fields = Readonly<Record<string, unknown>>;

export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
const isFields = (value: unknown): value is Fields => typeof value === "object" && value !== null && !Array.isArray(value);
const isNamed = (value: unknown): value is readonly (Fields & { readonly id: string })[] =>
  Array.isArray(value) && value.length > 0 && value.every((one) => isFields(one) && typeof one.id === "string");

/** A value that follows new answers, and whether something in it stays though the answers now say otherwise. */
export interface Merged {
  readonly value: unknown;
  readonly stays: boolean;
}

/**
 * What stands there, where it still says what the kit said before: as the kit says it now. Objects key by key, lists of things with ids thing by thing; anything
 * else is changed whole or stays whole. `undefined` is not there.
 */
export function merged(there: unknown, before: unknown, after: unknown): Merged {
  if (same(before, after) || same(there, after)) return { value: there, stays: false };
  if (same(there, before)) return { value: after, stays: false };
  if (isFields(there) && isFields(before) && isFields(after)) return byKey(there, before, after);
  if (isNamed(there) && isNamed(before) && isNamed(after)) return byId(there, before, after);
  return { value: there, stays: true };
}

function byKey(there: Fields, before: Fields, after: Fields): Merged {
  const out: Record<string, unknown> = {};
  let stays = false;
  for (const key of new Set([...Object.keys(there), ...Object.keys(after)])) {
    const one = merged(there[key], before[key], after[key]);
    if (one.value !== undefined) out[key] = one.value;
    stays ||= one.stays;
  }
  return { value: out, stays };
}

type Named = readonly (Fields & { readonly id: string })[];

function byId(there: Named, before: Named, after: Named): Merged {
  const of = (list: Named, id: string): Fields | undefined => list.find((one) => one.id === id);
  let stays = false;
  const out: unknown[] = [];
  for (const id of new Set([...there, ...after].map((one) => one.id))) {
    const one = merged(of(there, id), of(before, id), of(after, id));
    if (one.value !== undefined) out.push(one.value);
    stays ||= one.stays;
  }
  return { value: out, stays };
}
