/** The name as written, with the number of the copy or round behind it where there are several: "Set a window (2)". */
export function shownName(thing: { readonly id: string; readonly name: string } | undefined): string {
  if (!thing) return "";
  const [, copy] = thing.id.split("#");
  return copy === undefined ? thing.name : `${thing.name} (${copy})`;
}

/** The name of a document, whatever it is. */
export function nameOf(document: unknown): string {
  const name = typeof document === "object" && document !== null && "name" in document ? document.name : "";
  return typeof name === "string" && name !== "" ? name : "Build without a name";
}
