import { spawnSync } from "node:child_process";
import { preview } from "vite";
import type { TestProject } from "vitest/node";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where the built app is served. */
    app: string;
  }
}

/** Builds the app as it ships, in a process of its own (a build inside the test runner would be a development build), and serves it. */
export default async function serve(project: TestProject): Promise<() => Promise<void>> {
  const built = spawnSync(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"], {
    env: { ...process.env, NODE_ENV: "production", VITEST: "" },
    stdio: "inherit",
  });
  if (built.status !== 0) throw new Error("The app did not build; see above.");
  const server = await preview({ preview: { port: 0, host: "127.0.0.1" }, logLevel: "warn" });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error("The preview server has no address.");
  project.provide("app", url);
  return () => server.close();
}
