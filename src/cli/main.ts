import { readFileSync, writeFileSync } from "node:fs";
import { run } from "./run";

// A reader that closes early (`... | head`) is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});

process.exitCode = await run(process.argv.slice(2), {
  readText: (path) => readFileSync(path, "utf8"),
  writeText: (path, text) => writeFileSync(path, text),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
