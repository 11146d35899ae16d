export type Raw = Record<string, unknown>;

/** A wall of four steps on weekends from Sat 6 March 2027, written as a builder would. */
export function wall(more: { steps?: Raw[]; pieces?: Raw[]; waits?: Raw[]; deliveries?: Raw[]; over?: Raw } = {}): Raw {
  return {
    batterboard: 1,
    id: "wall",
    name: "Wall",
    site: { zone: "America/New_York", latitude: 41.4, longitude: -73.9, units: "us" },
    start: "2027-03-06",
    usual: "weekends",
    calendars: [
      { id: "weekends", name: "Weekends", week: { sat: ["8:00-16:00"], sun: ["8:00-16:00"] } },
      {
        id: "yard",
        name: "Lumber yard",
        week: { mon: ["7:00-16:00"], tue: ["7:00-16:00"], wed: ["7:00-16:00"], thu: ["7:00-16:00"], fri: ["7:00-16:00"] },
      },
    ],
    people: [{ id: "ruth", name: "Ruth", calendar: "weekends" }],
    places: [
      {
        id: "bars",
        name: "Wall steel",
        ways: [
          { id: "north", name: "from the north", passes: ["person", "arm"] },
          { id: "top", name: "from the top", passes: ["hand", "hose"], depth: "26 in" },
        ],
      },
    ],
    pieces: [
      { id: "north-form", name: "North form", closes: ["bars.north"] },
      { id: "wall", name: "Wall", fills: ["bars"] },
      ...(more.pieces ?? []),
    ],
    steps: [
      {
        id: "tie",
        name: "Tie the bars",
        place: "bars",
        work: "6 h",
        reaches: [{ place: "bars", need: "arm", depth: "58 in" }],
        needs: ["steel"],
      },
      { id: "form", name: "Set the north form", place: "bars", work: "4 h", puts: ["north-form"] },
      {
        id: "pour",
        name: "Pour the wall",
        sort: "pour",
        place: "bars",
        work: "4 h",
        unbroken: true,
        puts: ["wall"],
        leansOn: [{ piece: "north-form" }],
        pour: { strength: "3000 psi" },
      },
      {
        id: "strip",
        name: "Strip the form",
        place: "bars",
        work: "2 h",
        takes: ["north-form"],
        leansOn: [{ piece: "wall", once: "24 h" }],
      },
      ...(more.steps ?? []),
    ],
    waits: more.waits ?? [],
    deliveries: [{ id: "steel", name: "Bars", calendar: "yard", promised: "2027-03-10" }, ...(more.deliveries ?? [])],
    ...more.over,
  };
}
