import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";

/** General-purpose solvers as packages, with the versions that are compared with. None of them is a dependency of ours. */
export const versions = { "or-tools-wasm": "0.9.1", minizinc: "4.5.1" } as const;

const folder = join(process.cwd(), "node_modules", ".cache", "peers");

/** Installs what is missing below node_modules/.cache and gives back how to find a file of it. @throws when that cannot be done. */
export function installed(): NodeJS.Require {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "private": true }\n');
  const missing = Object.entries(versions).filter(([name, version]) => versionOf(name) !== version);
  if (missing.length > 0) {
    const wanted = missing.map(([name, version]) => `${name}@${version}`);
    console.log(`Installing ${wanted.join(" and ")}; this is done once.`);
    const args = ["install", "--no-save", "--no-package-lock", "--ignore-scripts", "--no-audit", "--no-fund", ...allOf(missing)];
    const done = spawnSync("npm", args, { cwd: folder, stdio: "inherit", shell: process.platform === "win32" });
    if (done.status !== 0) throw new Error(`${wanted.join(" and ")} could not be installed; the packages have to be reachable once.`);
  }
  return createRequire(join(folder, "package.json"));
}

/** Without a list of its own npm takes away what is not named, so that all are named when one is missing. */
function allOf(missing: readonly (readonly [string, string])[]): string[] {
  return missing.length === 0 ? [] : Object.entries(versions).map(([name, version]) => `${name}@${version}`);
}

function versionOf(name: string): string | null {
  const path = join(folder, "node_modules", name, "package.json");
  return existsSync(path) ? String((JSON.parse(readFileSync(path, "utf8")) as { version: unknown }).version) : null;
}
