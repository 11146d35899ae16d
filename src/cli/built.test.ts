import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { wall } from "../words/wall.testing";

// Inside the project, so that the packages it needs are found from where it lies.
mkdirSync("dist", { recursive: true });
const folder = mkdtempSync(join("dist", "cli-test-"));
const built = join(folder, "main.js");
const file = join(folder, "wall.json");
const run = (...words: string[]) => spawnSync(process.execPath, [built, ...words], { encoding: "utf8" });

beforeAll(() => {
  const done = spawnSync(process.execPath, ["test/tools/build-node.mjs", "src/cli/main.ts", folder], {
    encoding: "utf8",
    env: { ...process.env, NODE_ENV: "production" },
  });
  expect(done.status, done.stderr).toBe(0);
  writeFileSync(file, JSON.stringify(wall()));
});
afterAll(() => rmSync(folder, { recursive: true }));

test("the built program answers, writes and refuses", () => {
  const checked = run("check", file);
  expect([checked.status, checked.stderr]).toEqual([0, ""]);
  expect(checked.stdout).toContain("It can be built: 4 steps, done by Sat 20 Mar, 10:00.\n");

  const example = run("check", "example:tank-house");
  expect([example.status, example.stderr]).toEqual([1, ""]);

  const drawing = join(folder, "wall.svg");
  expect(run("draw", file, "--out", drawing).status).toBe(0);
  expect(readFileSync(drawing, "utf8")).toContain("</svg>");

  const refused = run("plan", join(folder, "none.json"));
  expect([refused.status, refused.stdout]).toEqual([2, ""]);
  expect(refused.stderr).toMatch(/^“.*none\.json” cannot be read: there is no such file\.\n$/);
  const isFolder = run("plan", folder);
  expect(isFolder.stderr).toContain("it is a folder");
  expect(existsSync(join(folder, "none.json"))).toBe(false);
});

test("a reader that closes early is no fault", () => {
  const piped = spawnSync("sh", ["-c", `"${process.execPath}" "${built}" plan example:garden-wall | head -n 1`], { encoding: "utf8" });
  expect([piped.status, piped.stderr]).toEqual([0, ""]);
});
