/** Where one is in adding to the build. */
export type Adding =
  /** The list of kits, with the parts there are. */
  | { readonly at: "kits" }
  /** The questions of a kit; `like`: with the answers of a part that is there; `joins`: what it is to join, by question. */
  | { readonly at: "kit"; readonly kit: string; readonly like?: string; readonly joins?: Readonly<Record<string, readonly string[]>> }
  /** A part that is there; `fresh`: it was put in just now. */
  | { readonly at: "part"; readonly part: string; readonly fresh?: boolean }
  /** What nobody has said yet. */
  | { readonly at: "unknown" };
