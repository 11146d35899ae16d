import { randomFrom } from "../../src/core/base";

type Row = Record<string, unknown>;

/**
 * A small site drawn from a number: steps on several calendars for people with roles, who are not always there; places with room and places taken alone,
 * equipment, forms that hold sheets, deliveries, bookings, dates, waits with least and most.
 */
export function bandedDocument(start: number): Row {
  const r = randomFrom(start);
  const chance = (percent: number): boolean => r.int(1, 100) <= percent;
  const n = r.int(3, 14);
  const ids = Array.from({ length: n }, (_, i) => `s${i}`);
  const people = Array.from({ length: r.int(2, 4) }, (_, i) => ({
    id: `p${i}`,
    name: `P${i}`,
    calendar: r.pick(["weekends", "there", "saturdays"]),
    roles: ["hose", "finisher"].filter(() => chance(40)),
    ...(chance(20) ? { daysOff: { budget: 3, spent: ["2027-03-12"] } } : {}),
  }));
  const roles = ["hose", "finisher"].filter((role) => people.some((p) => p.roles.includes(role)));
  const pieces: Row[] = [];
  const steps = ids.map((id, i): Row => {
    const hands: unknown = chance(15)
      ? 0
      : chance(25) && roles.length > 0
        ? [{ role: r.pick(roles), number: 1 }]
        : r.int(1, Math.min(2, people.length));
    const row: Row = { id, name: id, work: `${r.int(1, 14) * 30} min`, hands };
    const calendar = chance(25) ? r.pick(["office", "saturdays"]) : "weekends";
    if (hands === 0 || calendar === "saturdays") row.calendar = calendar;
    if (chance(30)) Object.assign(row, { unbroken: true, work: `${r.int(1, 8) * 30} min` });
    if (chance(10)) row.notAlone = true;
    if (chance(30)) row.reaches = [{ place: r.pick(["pit", "deck"]) }];
    if (chance(12)) row.alone = ["pit"];
    if (chance(20)) row.equipment = [{ of: "mixer", number: 1 }];
    if (chance(25)) row.needs = [r.pick(["bars", "mix"])];
    if (chance(8)) row.notBefore = `2027-03-${r.int(10, 25)}`;
    if (chance(5)) row.deadline = `2027-04-${r.int(10, 25)}`;
    if (chance(4)) row.fixed = r.pick(["2027-03-20", "2027-03-27", "2027-04-03T09:00"]);
    if (i > 0 && chance(55)) row.after = [ids[r.int(0, i - 1)]];
    return row;
  });
  for (let k = r.int(0, 3); k > 0; k--) {
    const up = r.int(0, n - 2);
    const down = r.int(up + 1, n - 1);
    const id = `form${pieces.length}`;
    const loss = r.int(0, 1);
    pieces.push({ id, name: id, uses: [{ of: r.pick(["sheets", "shores"]), number: r.int(1, 4), ...(loss > 0 ? { loss } : {}) }] });
    steps[up]!.puts = [...((steps[up]!.puts as string[]) ?? []), id];
    if (chance(80)) steps[down]!.takes = [...((steps[down]!.takes as string[]) ?? []), id];
  }
  const waits: Row[] = [];
  for (let k = r.int(0, 4); k > 0; k--) {
    const a = r.int(0, n - 2);
    const b = r.int(a + 1, n - 1);
    const row: Row = { id: `w${k}`, from: ids[a], to: ids[b] };
    if (chance(80)) row.least = r.pick(["6 h", "2 d", "30 h", { is: "4 h", on: "weekends" }, "2 days of office"]);
    if (chance(40) || row.least === undefined) row.most = r.pick(["9 d", "16 d", "3 wk"]);
    if (chance(20)) row.fromEnd = "start";
    waits.push(row);
  }
  const week = { mon: ["8:00-16:00"], tue: ["8:00-16:00"], wed: ["8:00-16:00"], thu: ["8:00-16:00"], fri: ["8:00-16:00"] };
  return {
    batterboard: 1,
    id: "small-site",
    name: "Small site",
    site: { zone: "America/New_York", latitude: 42.4, longitude: -76.5, units: "us" },
    start: "2027-03-06",
    usual: "weekends",
    calendars: [
      { id: "weekends", name: "Weekends", week: { sat: ["7:30-12:00", "12:30-17:00"], sun: ["8:00-12:00"] }, off: ["2027-03-28"] },
      { id: "there", name: "There", week: { fri: ["13:00-18:00"], sat: ["7:00-17:00"], sun: ["8:00-16:30"] } },
      { id: "saturdays", name: "Saturdays", week: { sat: ["7:00-17:00"] } },
      { id: "office", name: "Office", week, cutOff: "15:00" },
    ],
    people,
    equipment: [
      { id: "mixer", name: "Mixer", number: 1 },
      { id: "shores", name: "Shores", number: 6 },
    ],
    stock: [{ id: "sheets", name: "Sheets", unit: "sheet", inHand: 5 }],
    places: [
      { id: "pit", name: "Pit", room: 2, ways: [{ id: "ladder", name: "ladder", passes: ["person"] }] },
      { id: "deck", name: "Deck", room: 3, below: ["pit"], ways: [{ id: "stair", name: "stair", passes: ["person"] }] },
    ],
    pieces,
    steps,
    waits,
    deliveries: [
      { id: "bars", name: "Bars", calendar: "office", promised: "2027-03-17", brings: [{ of: "sheets", number: 2 }] },
      { id: "mix", name: "Mix", calendar: "office", lead: r.pick(["10 d", "5 days of office"]) },
    ],
    bookings: chance(25) ? [{ id: "pump", name: "Pump", step: r.pick(ids), calendar: "office", lead: "3 d" }] : [],
  };
}
