import { describe, expect, test } from "vitest";
import { rows as members } from "./tables/members";
import { rows as pour } from "./tables/pour";
import { rows as pressure } from "./tables/pressure";
import { rows as strength } from "./tables/strength";

const rows = [...pressure, ...members, ...strength, ...pour];

describe("published figures of concrete and forms", () => {
  test.each(rows)("$id ($mark: $source)", (row) => {
    expect(Math.abs(row.actual() - row.expected), `${row.actual()} against ${row.expected}`).toBeLessThanOrEqual(row.within + 1e-9);
  });

  test("no id twice, and none dropped", () => {
    expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
    const seen = rows.filter((row) => row.mark !== "from memory").length;
    process.stdout.write(`\npublished values checked: ${rows.length}, of which ${rows.length - seen} from memory\n`);
    expect(seen).toBeGreaterThanOrEqual(250);
  });
});
