/** "post", "post#2" and "post.north" all speak of "post". */
const speaks = (text: string, gone: ReadonlySet<string>): boolean => gone.has(text.split(/[#.]/)[0] as string);

/** Keys by which an object of a list means something else: without it the object means nothing. */
const naming = ["piece", "place", "of", "step", "from", "to"] as const;

const namesGone = (value: unknown, gone: ReadonlySet<string>): boolean => {
  if (typeof value === "string") return speaks(value, gone);
  if (typeof value !== "object" || value === null) return false;
  return naming.some((key) => {
    const named = (value as Readonly<Record<string, unknown>>)[key];
    return typeof named === "string" && speaks(named, gone);
  });
};

/**
 * A value that a kit made, without what it says of members that the builder took out: their ids in lists, and entries of lists that are about them. Sets of holders are
 * lists in a list: one that counts on what is gone is dropped whole.
 */
export function withoutGone(value: unknown, gone: ReadonlySet<string>): unknown {
  if (gone.size === 0) return value;
  if (Array.isArray(value)) {
    const left = value.filter((one) => !(Array.isArray(one) ? one.some((id) => namesGone(id, gone)) : namesGone(one, gone)));
    return left.map((one) => withoutGone(one, gone));
  }
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, withoutGone(inner, gone)]));
}

/** Whether a member as a whole is about something that is gone: a wait from it, a booking or a pour of its step. */
export const isAboutGone = (member: unknown, gone: ReadonlySet<string>): boolean => {
  const { step, from, to } = member as Readonly<Record<string, unknown>>;
  return [step, from, to].some((named) => typeof named === "string" && speaks(named, gone));
};
