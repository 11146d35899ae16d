import { expect, test } from "vitest";
import { cellar, undoButton, wall, withBrowser, words } from "./app";

const app = withBrowser();

test("what one more would buy is worked out when asked for, and put in as one change to undo", async () => {
  const page = await app.exampleOn("2027-03-10T12:00:00Z", wall, "Next");
  const panel = page.getByRole("region", { name: "What one more would buy" });
  expect(await panel.getByRole("table").count()).toBe(0);
  await panel.getByRole("button", { name: "work it out" }).click();
  await panel.getByRole("progressbar").waitFor({ state: "detached" });
  const row = panel.getByRole("row").filter({ hasText: "A day off for Nell and Sam" });
  expect(await words(row)).toMatch(/it is worth five days \(one site day\)[\s\S]*A second buys nothing\./);
  expect(await words(panel.getByRole("row").filter({ hasText: "One more tilting mixer" }))).toContain("Buys nothing.");
  await row.getByRole("button", { name: "put it in the build" }).click();
  await panel.getByText("The build has changed since this was worked out.").waitFor();
  await panel.getByRole("button", { name: "work it out" }).click();
  await panel.getByText("As it stands the finish is Mon 24 May, 14:15.").waitFor();
  await undoButton(page).click();
  await panel.getByRole("button", { name: "work it out" }).click();
  await panel.getByText("As it stands the finish is Sat 29 May, 14:15.").waitFor();
});

test("it can be stopped, and what is there by then stays", async () => {
  const page = await app.exampleOn("2027-01-10T12:00:00Z", cellar, "Next");
  const panel = page.getByRole("region", { name: "What one more would buy" });
  await panel.getByRole("button", { name: "work it out" }).click();
  await panel.getByText(/^\d+ of \d+ plans made\.$/).waitFor();
  await panel.getByRole("button", { name: "stop here" }).click();
  await panel.getByRole("progressbar").waitFor({ state: "detached" });
  expect(await words(panel)).toContain("As it stands the finish is");
});

test("fewer site days are looked for, taken over as one change, and left again", async () => {
  const page = await app.exampleOn("2027-03-10T12:00:00Z", wall, "Next");
  const panel = page.getByRole("region", { name: "What else the plan could be good at" });
  await panel.getByLabel("Aim at").selectOption("site-days");
  await panel.getByRole("button", { name: "look for such a plan" }).click();
  await panel.getByText("Seven site days instead of eight; the finish stays").waitFor();
  await panel.getByRole("button", { name: "plan it so" }).click();
  const back = panel.getByRole("button", { name: "back to the earliest finish" });
  await back.waitFor();
  expect(await panel.getByLabel("Aim at").inputValue()).toBe("site-days");
  await back.click();
  await back.waitFor({ state: "detached" });
  expect(await panel.getByLabel("Aim at").inputValue()).toBe("");
});

test("how warm a day has to be is told when it cannot be read", async () => {
  const page = await app.example(wall);
  await page.getByRole("button", { name: "Next", exact: true }).click();
  const panel = page.getByRole("region", { name: "What else the plan could be good at" });
  await panel.getByLabel("Aim at").selectOption("pours");
  await panel.getByLabel("No day colder than").fill("warm");
  await panel.getByLabel("No day colder than").blur();
  await panel.getByRole("button", { name: "look for such a plan" }).click();
  await panel.locator("p.warn", { hasText: "warm" }).waitFor();
  await panel.getByLabel("No day colder than").fill("10 °C");
  await panel.getByLabel("No day colder than").blur();
  await panel.getByLabel("The finish may be later by").selectOption("4");
  await panel.getByRole("button", { name: "look for such a plan" }).click();
  await panel.getByText(/as wanted/).waitFor();
});
