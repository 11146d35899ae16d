import { expect, test } from "vitest";
import { porch } from "../../../test/drawings/porch";
import { awaited } from "./awaited";
import { twinRows } from "./twin";

const { build, plan } = porch();
const rows = twinRows(build, plan);
const row = (id: string) => rows.find((one) => one.id === id && one.list !== "waits" && one.list !== "visits")!;

const count = (list: string) => rows.filter((one) => one.list === list).length;

test("every step, delivery, booking, wait, visit and day has a row, in the order of time", () => {
  expect([count("steps"), count("deliveries"), count("bookings")]).toEqual([
    build.steps.length,
    build.deliveries.length,
    build.bookings.length,
  ]);
  expect([count("visits"), count("days")]).toEqual([plan.visits.length, plan.days.length]);
  expect(count("waits")).toBe(awaited(build, plan).length);
  expect(count("waits")).toBeGreaterThan(0);
  expect(new Set(rows.map(({ key }) => key)).size).toBe(rows.length);
  expect(rows.map(({ at }) => at)).toEqual([...rows.map(({ at }) => at)].sort((a, b) => a - b));
});

test("a row says in words what the sheet says in marks", () => {
  expect(row("last-panel")).toMatchObject({ name: "Last panel", place: "Pier faces", when: "Sat 19 Jun, 8:00 to 11:00", hands: "2" });
  expect(row("last-panel").notes).toContain("Last panel closes Pier cages, Inside the pier forms Sat 19, 11:00");
  expect(row("sills").notes).toContain("on the chalk line: slab carries, 70 %, 6.9 d");
  expect(row("strip").notes).toContain("slack to Wed 7, 12:00");
  expect(row("bars")).toMatchObject({ when: "Fri 11 Jun", notes: ["needed by Sat 12, 8:00"] });
  expect(row("pump").notes).toEqual(["booked"]);
});

test("what is done is said so at its name", () => {
  const at = build.at.step.get("strip" as never)!;
  const done = { ...build, steps: build.steps.with(at, { ...build.steps[at]!, done: { start: "2027-07-06", finish: "2027-07-06" } }) };
  const names = twinRows(done, plan).flatMap(({ list, id, name }) => (list === "steps" && id === "strip" ? [name] : []));
  expect(names).toEqual([`${row("strip").name}, done`]);
});
