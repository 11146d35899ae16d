/** A build that comes with the program. Loaded when asked for, so that the page does not carry all of them. */
export interface Example {
  /** The build's own id, as in its document. */
  readonly id: string;
  readonly title: string;
  readonly oneLine: string;
  /** The document as written; read it like any opened file. */
  load(): Promise<unknown>;
}

/** In the order in which they are offered. All three are invented: no such site, no such people. */
export const examples: readonly Example[] = [
  {
    id: "garden-wall",
    title: "Garden wall with a planter",
    oneLine: "Fifteen steps, two people, seven weekends: read this one first.",
    load: async () => (await import("./garden-wall.json")).default,
  },
  {
    id: "bank-cellar",
    title: "Bank cellar with porch and potting shed",
    oneLine: "A vault dug into a bank, four pours that each close something for good, forty weekends.",
    load: async () => (await import("./bank-cellar.json")).default,
  },
  {
    id: "tank-house",
    title: "Tank house as first sketched",
    oneLine: "Find what is wrong: seven small jobs, none of which can be built as written.",
    load: async () => (await import("./impossible.json")).default,
  },
];
