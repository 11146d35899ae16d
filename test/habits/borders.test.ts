import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { describe, expect, test } from "vitest";

/** Who may import whom; a room not in its own list is refused, and another room only through its index. */
const rooms: Record<string, readonly string[]> = {
  "core/base": [],
  "core/graph": ["core/base"],
  "core/clock": ["core/base", "core/build:types"],
  "core/concrete": ["core/base"],
  "core/build": ["core/base", "core/clock", "core/concrete"],
  "core/edit": ["core/base", "core/build"],
  "core/kits": ["core/base", "core/build", "core/concrete", "core/edit"],
  "core/access": ["core/base", "core/graph", "core/build"],
  "core/schedule": ["core/base", "core/graph"],
  "core/pour": ["core/base", "core/clock", "core/concrete", "core/build"],
  "core/plan": ["core/base", "core/graph", "core/clock", "core/concrete", "core/pour", "core/build", "core/access", "core/schedule"],
  words: ["core/base", "core/build", "core/clock", "core/access", "core/kits", "core/pour", "core/plan"],
  draw: ["core/base", "core/clock", "core/build", "core/access:types", "core/pour", "core/plan", "words"],
  examples: [],
  files: ["core/base", "core/clock", "core/build", "core/access", "core/pour", "core/plan", "draw", "words"],
  store: ["core/base", "core/build", "core/edit"],
  worker: ["core/base", "core/build", "core/edit", "core/access", "core/pour", "core/plan", "draw", "examples"],
  cli: [
    "core/base",
    "core/clock",
    "core/build",
    "core/edit",
    "core/access",
    "core/pour",
    "core/plan",
    "draw",
    "files",
    "words",
    "examples",
  ],
  app: [
    "core/base",
    "core/clock",
    "core/build",
    "core/edit",
    "core/kits",
    "core/access",
    "core/pour",
    "core/plan",
    "draw",
    "files",
    "store",
    "worker",
    "words",
    "examples",
  ],
};

/** Packages a room may use; node: only for the command line. */
const packages: Record<string, readonly string[]> = {
  "core/base": ["pure-rand"],
  "core/clock": ["date-fns", "@date-fns/tz", "suncalc"],
  "core/build": ["valibot", "@valibot/to-json-schema"],
  draw: ["d3-dag", "graphology", "graphology-dag"],
  store: ["idb"],
  cli: ["commander", "node:"],
  app: ["svelte", "browser-fs-access"],
};

function files(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? files(path) : [path];
  });
}

function roomOf(path: string): string {
  const parts = relative("src", path).split(sep);
  return parts[0] === "core" ? `core/${parts[1]}` : (parts[0] as string);
}

const importLine = /(?:^|\n)\s*(import|export)\s+(type\s+)?(?:[^"';]*?\sfrom\s+)?["']([^"']+)["']|import\(\s*["']([^"']+)["']\s*\)/g;

function importsOf(text: string): { type: boolean; from: string }[] {
  return [...text.matchAll(importLine)].map((found) => ({ type: Boolean(found[2]), from: (found[3] ?? found[4]) as string }));
}

function broken(path: string): string[] {
  const room = roomOf(path);
  const allowed = rooms[room];
  if (!allowed) return [`${path} stands in no room`];
  return importsOf(readFileSync(path, "utf8")).flatMap(({ type, from }) => {
    if (!from.startsWith(".")) {
      const fine = (packages[room] ?? []).some((name) => from === name || from.startsWith(name.endsWith(":") ? name : `${name}/`));
      return fine ? [] : [`${path} imports the package ${from}`];
    }
    const target = resolve(dirname(path), from);
    const inside = relative(resolve("src"), target);
    if (inside.startsWith("..")) return [`${path} imports ${from} outside src`];
    const other = roomOf(join("src", inside));
    if (other === room) return [];
    const named = allowed.includes(other) || (type && allowed.includes(`${other}:types`));
    if (!named) return [`${path} may not import ${other}`];
    const through = relative(resolve("src", other), target);
    return through === "" || through === "index" || through === "index.ts" || other === "worker"
      ? []
      : [`${path} reaches into ${other}/${through}`];
  });
}

describe("borders", () => {
  const sources = files("src").filter((path) => /\.(ts|svelte)$/.test(path) && !path.endsWith(".test.ts"));

  test("every room imports only those its row names, through their index", () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(sources.flatMap(broken)).toEqual([]);
  });

  test("the reader of imports sees every form of import", () => {
    const text =
      'import a from "x";\nimport type { B } from "../b";\nexport * from "./c";\nimport "side";\nconst d = import("./d");\nimport {\n  e,\n} from "../e";';
    expect(importsOf(text)).toEqual([
      { type: false, from: "x" },
      { type: true, from: "../b" },
      { type: false, from: "./c" },
      { type: false, from: "side" },
      { type: false, from: "./d" },
      { type: false, from: "../e" },
    ]);
  });

  test("no source file is longer than 300 lines", () => {
    const long = sources.filter((path) => readFileSync(path, "utf8").split("\n").length > 300);
    expect(long).toEqual([]);
  });

  test("every room of the core says in at most 40 lines what it is", () => {
    for (const room of Object.keys(rooms).filter((name) => name.startsWith("core/"))) {
      const readme = join("src", room, "README.md");
      expect(statSync(readme).isFile(), readme).toBe(true);
      expect(readFileSync(readme, "utf8").split("\n").length, readme).toBeLessThanOrEqual(41);
    }
  });
});
