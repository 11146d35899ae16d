// Pictures of the app as it ships, to test/shots/ (git ignores it); with --readme also the picture that the README shows.
// `npm run shots -- --only dates` takes those whose name holds the word. Fails where text is too small, cut off, or lies on other text.
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { preview } from "vite";
import { launch } from "./browser.mjs";
import { illegible } from "./legible.mjs";
import { asked, small } from "./shots-more.mjs";

// A build of its own: what is built meanwhile for tests does not change it.
const outDir = join(process.cwd(), "dist/shots-app");
const only = process.argv.includes("--only") ? process.argv[process.argv.indexOf("--only") + 1] : "";
const sizes = [
  ["phone", { width: 390, height: 844 }],
  ["tablet", { width: 768, height: 1024 }],
  ["desk", { width: 1440, height: 900 }],
];
const looks = ["light", "dark", "sunlight"];
const examples = [
  ["bank-cellar", "Bank cellar"],
  ["garden-wall", "Garden wall"],
  ["tank-house", "Tank house"],
];
const views = [
  ["order", "1"],
  ["dates", "2"],
  ["structure", "t"],
  ["whole", "w"],
  ["forms", "3"],
  ["cure", "4"],
  ["site", "6"],
  ["next", "5"],
];

if (!process.argv.includes("--as-built")) {
  const built = spawnSync(
    process.execPath,
    ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn", "--outDir", outDir, "--emptyOutDir"],
    {
      env: { ...process.env, NODE_ENV: "production" },
      stdio: "inherit",
    },
  );
  if (built.status !== 0) process.exit(built.status ?? 1);
}
const server = await preview({ build: { outDir }, preview: { port: 0, host: "127.0.0.1" }, logLevel: "error" });
const url = server.resolvedUrls.local[0];
let complaints = 0;
function complain(size, text) {
  complaints += 1;
  console.error(`${size}: ${text}`);
}
/** One picture, and what on it could not be read. */
async function picture(page, size, name, options = {}) {
  await page.screenshot({ path: `test/shots/${name}.png`, ...options });
  console.log(`test/shots/${name}.png`);
  for (const fault of await illegible(page, size === "phone" ? 16 : 13)) complain(name, fault);
  if (size === "phone") for (const fault of await small(page, 44)) complain(name, fault);
}
/** A page in a look: the one for sunlight is chosen, the others follow the system. */
async function lookedAt(browser, look, options) {
  const context = await browser.newContext({ ...options, colorScheme: look === "dark" ? "dark" : "light", locale: "en-GB" });
  if (look === "sunlight") await context.addInitScript(() => localStorage.setItem("batterboard.theme", JSON.stringify("sunlight")));
  return context;
}
/** From an empty page through the kits: what a first sitting sees. */
async function newcomer(size, viewport, look) {
  const taken = (what) => `kits-${what}-${size}-${look}`;
  const stations = ["start", "form", "refused", "part", "list", "unknown", "order"];
  if (only && !stations.some((what) => taken(what).includes(only))) return;
  const context = await lookedAt(browser, look, { viewport, hasTouch: size === "phone" });
  const page = await context.newPage();
  page.on("pageerror", (error) => complain(size, error.message));
  const shoot = async (what, whole = false) => {
    await page.waitForTimeout(500);
    if (only && !taken(what).includes(only)) return;
    await picture(page, size, taken(what), { fullPage: whole });
  };
  const putIn = async () => {
    await page.locator('[data-verdict="yes"]').waitFor();
    await page.getByRole("button", { name: /^put in / }).click();
    await page.getByRole("heading", { name: "What it put in" }).waitFor();
  };
  await page.goto(url);
  await page.getByRole("button", { name: "Footing", exact: true }).waitFor();
  await shoot("start");
  await page.getByRole("button", { name: "Footing", exact: true }).click();
  await page.locator('[data-verdict="yes"]').waitFor();
  await shoot("form");
  await page.getByLabel("Thick", { exact: true }).fill("a foot");
  await page.getByLabel("Thick", { exact: true }).evaluate((field) => field.scrollIntoView({ block: "center" }));
  await shoot("refused");
  await page.getByLabel("Thick", { exact: true }).fill("14 in");
  await putIn();
  for (const kit of [/^Column/, /^Slab on a timber deck/, /^Small (timber )?building/]) {
    const next = page.getByRole("button", { name: kit }).first();
    if (!(await next.isVisible())) continue;
    await next.click();
    await putIn();
  }
  await shoot("part");
  await page.getByRole("button", { name: "all kits and parts" }).click();
  await shoot("list");
  await page.getByRole("button", { name: "back to Order" }).click();
  await shoot("order");
  await page.getByRole("button", { name: /not known yet/ }).click();
  await shoot("unknown");
  await context.close();
}

/** What comes up only when it is asked for, of the large example. */
async function more(size, viewport, look) {
  const taken = (what) => `more-${what}-${size}-${look}`;
  if (only && !asked.some(([what]) => taken(what).includes(only))) return;
  const context = await lookedAt(browser, look, { viewport, hasTouch: size === "phone" });
  const page = await context.newPage();
  page.setDefaultTimeout(8000);
  page.on("pageerror", (error) => complain(size, error.message));
  await page.goto(url);
  await page.getByRole("button", { name: "Bank cellar" }).first().click();
  await page.getByRole("button", { name: "I see" }).click();
  for (const [what, lead] of asked) {
    // One that is not reached does not keep the others from being taken.
    await lead(page, size).catch((error) => complain(taken(what), String(error.message).split("\n")[0]));
    await page.waitForTimeout(600);
    if (!only || taken(what).includes(only)) await picture(page, size, taken(what));
  }
  await context.close();
}

/** The structure turned once, at a day in the middle of the build; a build without dates has no slider. */
async function halfBuilt(page) {
  // Where it stands above the days it is folded at first.
  const folded = page.getByRole("button", { name: "structure", exact: true, expanded: false });
  if (await folded.isVisible()) await folded.click();
  const slider = page.getByRole("slider", { name: "Day that is drawn" });
  if ((await slider.count()) === 0) return;
  await slider.fill(await slider.evaluate((field) => String(Math.round((Number(field.min) + Number(field.max)) / 2))));
  // While a field has the focus the keys are its own.
  await slider.blur();
}
/** As it was before `halfBuilt`, where the structure pushes the days off the screen. */
async function foldedAgain(page) {
  const open = page.getByRole("button", { name: "structure", exact: true, expanded: true });
  if (page.viewportSize().width <= 1024 && (await open.isVisible())) await open.click();
}
mkdirSync("test/shots", { recursive: true });
const browser = await launch();
try {
  for (const [size, viewport] of sizes) {
    for (const look of looks) {
      for (const [example, title] of examples) {
        const names = views.map(([view]) => `${example}-${view}-${size}-${look}`);
        if (only && !names.some((name) => name.includes(only))) continue;
        const context = await lookedAt(browser, look, {
          viewport,
          hasTouch: size === "phone",
          deviceScaleFactor: size === "phone" ? 2 : 1,
        });
        const page = await context.newPage();
        page.on("pageerror", (error) => complain(size, error.message));
        page.on("console", (message) => message.type() === "error" && complain(size, message.text()));
        await page.goto(url);
        await page.getByRole("button", { name: title }).first().click();
        for (const [view, key] of views) {
          const name = `${example}-${view}-${size}-${look}`;
          await page.keyboard.press(key);
          if (view === "structure") await halfBuilt(page);
          if (view === "whole") await foldedAgain(page);
          await page.waitForTimeout(900);
          if (only && !name.includes(only)) continue;
          await picture(page, size, name);
        }
        await context.close();
      }
      await newcomer(size, viewport, look);
      await more(size, viewport, look);
    }
  }
} finally {
  await browser.close();
  await server.close();
}
if (process.argv.includes("--readme")) copyFileSync("test/shots/bank-cellar-whole-desk-light.png", "test/drawings/readme.png");
if (complaints > 0) process.exitCode = 1;
