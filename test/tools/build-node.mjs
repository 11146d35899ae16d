// Bundles one TypeScript entry for Node: node test/tools/build-node.mjs src/cli/main.ts dist/cli
import { resolve } from "node:path";
import { build } from "vite";

const [entry, outDir] = process.argv.slice(2);
await build({
  configFile: false,
  root: process.cwd(),
  logLevel: "warn",
  build: { ssr: resolve(entry), outDir: resolve(outDir), emptyOutDir: true, target: "node20", minify: false },
});
