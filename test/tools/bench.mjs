// Builds and runs a benchmark: `npm run bench` (the plan), `npm run bench -- NAME` for test/bench/NAME.ts.
import { spawnSync } from "node:child_process";

const named = process.argv[2] && !process.argv[2].startsWith("-") ? process.argv[2] : "plan";
const rest = process.argv.slice(named === process.argv[2] ? 3 : 2);
const outDir = `dist/bench/${named}`;
const built = spawnSync(process.execPath, ["test/tools/build-node.mjs", `test/bench/${named}.ts`, outDir], { stdio: "inherit" });
if (built.status !== 0) process.exit(built.status ?? 1);
const ran = spawnSync(process.execPath, [`${outDir}/${named}.js`, ...rest], { stdio: "inherit" });
process.exitCode = ran.status ?? 1;
