import { mkdirSync, readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const out = "test/drawings/out";

/** Writes a drawing where one can look at it (git ignores the folder) and the page that shows all of them. */
export function keepForLooking(name: string, svg: string): void {
  mkdirSync(out, { recursive: true });
  writeFileSync(join(out, `${name}.svg`), svg);
  const figures = readdirSync(out)
    .filter((file) => file.endsWith(".svg"))
    .map((file) => `<figure><figcaption>${file}</figcaption><img src="${file}" alt="${file}"></figure>`);
  writeFileSync(join(out, "index.html"), `<!doctype html><meta charset="utf-8"><title>Drawings</title>${figures.join("\n")}`);
}
