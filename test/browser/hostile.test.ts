import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { phone, saved, wall, withBrowser, words } from "./app";
import { sideways } from "./clean";

const app = withBrowser();
const text = readFileSync("src/examples/garden-wall.json", "utf8");

async function open(page: Page, content: string): Promise<void> {
  if (!(await page.getByRole("button", { name: "open a build file" }).isVisible())) await page.keyboard.press("Control+o");
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: "open a build file" }).click()]);
  await chooser.setFiles({ name: "found.json", mimeType: "application/json", buffer: Buffer.from(content) });
}

const script = `<script>window.harmed = true</script><img src=x onerror="window.harmed = true"><svg onload="window.harmed = true">`;
const hostile: readonly (readonly [string, string])[] = [
  ["script tags", script],
  [
    "what ends an attribute or a style",
    `"><img src=x onerror=window.harmed=true>'}</style><script>window.harmed=true</script>\${window.harmed=true}{{harmed}}`,
  ],
  ["marks that turn the writing round", "\u202Ewall\u202C \u2067garden\u2069 \u200F!\u202E and no end"],
  ["a very long word", "W".repeat(4000)],
  ["emoji and letters of many parts", `${"👷🏽‍♀️🧱".repeat(40)} ${"e\u0301\u0323".repeat(200)} \u{1F468}\u200D\u{1F469}\u200D\u{1F467}`],
  ["half a letter and what is no letter", "\uD83D wall \u0000\u0007\uFFFF\uFEFF"],
];

/** The example with every name and note in it turned into something else. */
function poisoned(poison: string): string {
  const turn = (value: unknown, key = ""): unknown => {
    if (Array.isArray(value)) return value.map((one) => turn(one));
    if (typeof value === "object" && value !== null)
      return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, turn(inner, name)]));
    return typeof value === "string" && ["name", "notes", "why", "text"].includes(key) ? `${poison} ${value}` : value;
  };
  return JSON.stringify(turn(JSON.parse(text)));
}

test.each(hostile)("a file with %s in every name does no harm in any view, the list, or the file written of it", async (_what, poison) => {
  const page = await app.start({ viewport: phone });
  await open(page, poisoned(poison));
  await page.getByText(/^Finishe[sd] /).waitFor();
  await saved(page);
  const check = async (where: string): Promise<void> => {
    expect(await page.evaluate(() => (window as { harmed?: boolean }).harmed), where).toBeUndefined();
    expect(await sideways(page), where).toBeLessThanOrEqual(0);
  };
  for (const view of ["Dates", "Forms", "Cure", "Order"]) {
    await page.getByRole("navigation", { name: "Views" }).getByRole("button", { name: view, exact: true }).click();
    await page.locator("main :is(h1, h2, h3, svg)").first().waitFor({ state: "attached" });
    await check(view);
  }
  for (const part of ["Steps", "Pieces", "Drawing"]) {
    await page.getByRole("button", { name: part, exact: true }).click();
    await check(part);
  }
  await page.locator("header .name").click();
  await page.getByRole("dialog", { name: "The build" }).waitFor();
  await check("the build");
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("dialog", { name: "The build" }).getByRole("button", { name: "save a file" }).click(),
  ]);
  expect(JSON.parse(readFileSync(await file.path(), "utf8")).name).toBe(JSON.parse(poisoned(poison)).name);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Control+o");
  const kept = page.getByRole("region", { name: "Kept in this browser" });
  await kept.waitFor();
  await check("the list");
  await kept.getByRole("button", { name: "throw away" }).click();
  await kept.locator("summary").click();
  await check("thrown away");
});

test("a name that turns the writing round turns nothing but itself", async () => {
  const page = await app.start();
  await open(page, text.replace(wall, "Wall \u202E"));
  await page.getByText(/^Finishe[sd] /).waitFor();
  await page.keyboard.press("Control+o");
  const changed = page.getByRole("region", { name: "Kept in this browser" }).getByText(/^changed /);
  await changed.waitFor();
  expect(await changed.evaluate((line) => getComputedStyle(line).direction)).toBe("ltr");
  const [first, last] = await changed.evaluate((line) => {
    const at = (from: number) => {
      const range = document.createRange();
      range.setStart(line.firstChild as Node, from);
      range.setEnd(line.firstChild as Node, from + 1);
      return range.getBoundingClientRect().x;
    };
    return [at(0), at(6)];
  });
  expect(first).toBeLessThan(last ?? 0);
});

test.each([
  ["0", 0],
  ["-3", -3],
  ["1.5", 1.5],
  ["as a word", "one"],
  ["missing", undefined],
  ["a list", [1]],
])("a version that is %s is refused in a sentence or read as the first, and nothing breaks", async (_what, version) => {
  const page = await app.example(wall);
  await open(page, JSON.stringify({ ...JSON.parse(text), batterboard: version, name: "Versions" }));
  const refusal = page.getByRole("alert");
  await expect.poll(async () => (await refusal.count()) > 0 || (await words(page.locator("header .name"))) === "Versions").toBe(true);
  if ((await refusal.count()) > 0) expect(await words(refusal)).toMatch(/^found\.json was not opened; what was open stays as it is\./);
});

test.each([
  ["of 5 MB that is no build", () => `{"a": "${"x".repeat(5_000_000)}"}`],
  ["of 5 MB of brackets", () => "[".repeat(5_000_000)],
  [
    "of 5 MB of faults",
    () =>
      JSON.stringify({
        ...JSON.parse(text),
        steps: Array.from({ length: 50_000 }, (_, at) => ({ id: `S ${at}`, name: "", work: "three sacks" })),
      }),
  ],
])("a file %s is refused in a sentence, and what was open can be worked on", async (_what, content) => {
  const page = await app.example(wall);
  await open(page, content());
  const refusal = page.getByRole("alert");
  await refusal.waitFor({ timeout: 30_000 });
  expect((await words(refusal)).length).toBeLessThan(3000);
  await page.getByRole("button", { name: `back to ${wall}` }).click();
  await page.getByRole("button", { name: "Steps", exact: true }).click();
  await page.getByLabel("A new step").fill("Still here");
  await page.keyboard.press("Enter");
  await saved(page);
});

test("a build whose notes fill nearly 5 MB opens, is kept, and comes back", async () => {
  const page = await app.start();
  const document = JSON.parse(text);
  await open(
    page,
    JSON.stringify({
      ...document,
      steps: document.steps.map((step: object, at: number) => (at === 0 ? { ...step, notes: "long ".repeat(960_000) } : step)),
    }),
  );
  await page.getByText(/^Finishe[sd] /).waitFor({ timeout: 30_000 });
  await saved(page);
  await page.reload();
  await page.getByText(/^Finishe[sd] /).waitFor({ timeout: 30_000 });
});
