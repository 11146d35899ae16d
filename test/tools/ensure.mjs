// Installs what the lock file says when nothing is installed yet, or when the lock file is newer than what is installed.
import { spawnSync } from "node:child_process";
import { existsSync, statSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const top = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const lock = join(top, "package-lock.json");
const installed = join(top, "node_modules", ".package-lock.json");
if (!existsSync(installed) || statSync(lock).mtimeMs > statSync(installed).mtimeMs) {
  const done = spawnSync("npm", ["ci", "--no-audit", "--no-fund"], { cwd: top, stdio: "inherit", shell: process.platform === "win32" });
  process.exitCode = done.status ?? 1;
}
