// Runs the command line, building it first when it is missing or older than its sources.
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const built = "dist/cli/main.js";
const newest = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((latest, entry) => Math.max(latest, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);

if (!existsSync(built) || statSync(built).mtimeMs < newest("src")) {
  const done = spawnSync(process.execPath, ["test/tools/build-node.mjs", "src/cli/main.ts", "dist/cli"], { stdio: "inherit" });
  if (done.status !== 0) process.exit(done.status ?? 1);
}
const ran = spawnSync(process.execPath, [built, ...process.argv.slice(2)], { stdio: "inherit" });
process.exitCode = ran.status ?? 1;
