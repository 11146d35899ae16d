// What `npm test` runs, in order, stopping at the first that fails: types, lint, then every test, the browser's included.
import { spawnSync } from "node:child_process";

const steps = [
  ["types of the core, without DOM or Node", ["node_modules/typescript/bin/tsc", "-p", "src/core"]],
  ["types", ["node_modules/typescript/bin/tsc", "-p", "."]],
  [
    "types of the screens",
    ["node_modules/svelte-check/bin/svelte-check", "--tsconfig", "./tsconfig.json", "--threshold", "warning", "--output", "human"],
  ],
  ["lint and format", ["node_modules/@biomejs/biome/bin/biome", "check", "."]],
  ["tests", ["node_modules/vitest/vitest.mjs", "run"]],
];

for (const [name, args] of steps) {
  console.log(`\n== ${name}`);
  const done = spawnSync(process.execPath, args, { stdio: "inherit" });
  if (done.status !== 0) {
    console.error(`\nStopped at: ${name}.`);
    process.exit(done.status ?? 1);
  }
}
