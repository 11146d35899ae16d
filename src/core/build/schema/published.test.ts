import { toJsonSchema } from "@valibot/to-json-schema";
import { describe, expect, test } from "vitest";
import { limits } from "../../base";
import { document, version } from "./document";
import * as members from "./members";
import * as scalars from "./scalars";

/** The schema as published: made from the very one that files are checked with. Limits that are no schema's business stay out of it. */
function published(): string {
  const { id, ref, wayRef, date, moment, window, length, mass, temperature, speed, pressure, time, amount, coordinate } = scalars;
  const { reach } = members;
  const shared = { id, ref, wayRef, date, moment, window, length, mass, temperature, speed, pressure, time, amount, coordinate, reach };
  const made = toJsonSchema(document, { errorMode: "throw", target: "draft-2020-12", definitions: shared });
  const { $schema, ...rest } = made;
  const titled = {
    $schema,
    title: "Batterboard build",
    description: `Format version ${version}. Amounts and units are described in the README beside this file.`,
    ...rest,
  };
  return `${JSON.stringify(titled, null, 2)}\n`;
}

describe("the published schema", () => {
  // Written anew with: npx vitest run src/core/build/schema/published.test.ts -u
  test("is the one that files are checked with", async () => {
    await expect(published()).toMatchFileSnapshot("../batterboard.schema.json");
  });

  test("names every list, states patterns and limits, and lets unknown keys be", () => {
    const schema = JSON.parse(published());
    expect(Object.keys(schema.properties)).toContain("groups");
    expect(schema.required).toEqual(["batterboard", "site", "start", "calendars"]);
    const step = schema.properties.steps.items;
    expect(step.required).toEqual(["id"]);
    expect(step.properties.trial.properties.rounds.maximum).toBe(limits.rounds.most);
    expect(step.properties.id.$ref).toBe("#/$defs/id");
    expect(new RegExp(schema.$defs.id.pattern).test("tie-bars")).toBe(true);
    expect(new RegExp(schema.$defs.id.pattern).test("Tie bars")).toBe(false);
    expect(JSON.stringify(schema)).not.toContain('"additionalProperties":false');
  });
});
