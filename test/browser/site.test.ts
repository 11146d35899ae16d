import type { Locator, Page } from "playwright-core";
import { expect, test } from "vitest";
import { cellar, headline, phone, undoButton, wall, withBrowser, words } from "./app";

const app = withBrowser();

const view = (page: Page): Locator => page.getByRole("region", { name: "Site", exact: true });

/** The Site view of an example, at one of its sections. */
async function site(section: string, example = cellar, options = {}): Promise<Page> {
  const page = await app.example(example, options);
  await page.keyboard.press("6");
  await view(page).getByRole("button", { name: section }).click();
  return page;
}

/** One of the things listed in a section. */
const pick = (page: Page, name: string): Promise<void> =>
  view(page)
    .locator(".row")
    .filter({ has: page.getByText(name, { exact: true }) })
    .first()
    .click();

const finish = async (page: Page): Promise<string> => {
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Order", exact: true }).click();
  const said = await headline(page);
  await page.getByRole("button", { name: "Site", exact: true }).click();
  return said;
};

test("what is no zone or no latitude stays typed with a sentence beside it, and changes nothing", async () => {
  const page = await site("The build");
  const zone = page.getByLabel("Time zone of the site");
  await zone.fill("America/Nowhere");
  await view(page)
    .getByText(/America\/Nowhere/)
    .waitFor();
  expect(await zone.inputValue()).toBe("America/Nowhere");
  expect(await zone.getAttribute("aria-invalid")).toBe("true");
  expect(await undoButton(page).isDisabled()).toBe(true);
  await zone.fill("America/Chicago");
  expect(await zone.getAttribute("aria-invalid")).toBe("false");
  expect(await page.locator("datalist option[value='America/Chicago']").count()).toBe(1);
  await page.getByLabel("Latitude, degrees north").fill("north");
  await view(page).getByText("Latitude: write a number from −90 to 90, like 51.5.").waitFor();
  await page.getByLabel("Latitude, degrees north").fill("39.5");
  await page.getByLabel("Forms are judged by").selectOption({ label: "CIRIA Report 108" });
  expect(await undoButton(page).getAttribute("title")).toBe("change the build");
  await undoButton(page).click();
  expect(await page.getByLabel("Forms are judged by").inputValue()).toBe("aci-us");
});

test("a side takes its places along under a new name, and goes only when no place lies on it", async () => {
  const page = await site("The build");
  await page.getByRole("button", { name: "take out the side uphill" }).click();
  await view(page)
    .getByText(/lie on the side “uphill”; give them another one in Order first\.|lies on the side “uphill”/)
    .waitFor();
  await page.getByLabel("Side 1", { exact: true }).fill("bank side");
  await page.getByRole("button", { name: "take out the side bank side" }).click();
  await view(page)
    .getByText(/on the side “bank side”/)
    .waitFor();
  await page.getByLabel("A new side").fill("street");
  await page.getByLabel("A new side").press("Enter");
  await page.getByRole("button", { name: "take out the side street" }).click();
  expect(await page.getByLabel("Side 6", { exact: true }).count()).toBe(0);
});

test("numbers of what there is take only numbers; what uses a thing is listed, and named before it goes", async () => {
  const page = await site("Equipment and stock");
  const shores = page.getByLabel("How many: Adjustable shore");
  await shores.fill("some");
  await view(page)
    .getByText(/“some” stands where a number should be\./)
    .waitFor();
  expect(await shores.inputValue()).toBe("some");
  await shores.fill("20");
  const line = view(page).getByRole("listitem").filter({ has: shores });
  expect(await words(line)).toContain("8 in Rakers to the cast-in loops");
  await line.getByRole("button", { name: "take out Adjustable shore" }).click();
  const asked = page.getByRole("group", { name: "take out Adjustable shore" });
  expect(await words(asked)).toMatch(/rakers to the cast-in loops.*stay, without “Adjustable shore”\./i);
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("keep it");
  await asked.getByRole("button", { name: "take it out all the same" }).click();
  expect(await shores.count()).toBe(0);
  expect(await undoButton(page).getAttribute("title")).toBe("take out Adjustable shore");
  await undoButton(page).click();
  expect(await page.getByLabel("How many: Adjustable shore").inputValue()).toBe("20");
  await page.getByLabel("A new stock").fill("Bags of mix");
  await page.getByLabel("A new stock").press("Enter");
  const yields = page.getByLabel("Concrete of one: Bags of mix");
  await yields.fill("9.4");
  await view(page)
    .getByText(/“9\.4” is not a volume; write it with its unit/)
    .waitFor();
  await yields.fill("9.4 L");
  await page.getByRole("button", { name: "where from? for concrete of one Bags of mix" }).click();
  await page.getByLabel("Where it comes from: concrete of one Bags of mix").selectOption("product sheet");
  await page.getByRole("button", { name: "done saying where from, for concrete of one Bags of mix" }).click();
  await page.getByRole("button", { name: "from: product sheet for concrete of one Bags of mix" }).waitFor();
  await line.getByRole("button", { name: "Shores and joists" }).click();
  await page.getByRole("complementary").getByRole("heading", { name: "Shores and joists" }).waitFor();
});

test("twelve months are written down once all are there; until then what is typed is kept over a reload", async () => {
  const page = await app.start();
  await page.getByLabel("What is it called?").fill("Shed");
  await page.getByRole("button", { name: "begin" }).click();
  await page.getByText("Nothing to do yet.").waitFor();
  await page.getByRole("button", { name: "Site", exact: true }).click();
  await view(page).getByRole("button", { name: "Temperatures" }).click();
  const fields = view(page).locator(".months input");
  expect(await fields.count()).toBe(24);
  for (let i = 0; i < 23; i += 1) await fields.nth(i).fill(i % 2 === 0 ? "41" : "58 °F");
  await view(page)
    .getByText(/1 of 24 are missing/)
    .waitFor();
  await page.reload();
  await view(page)
    .getByText(/1 of 24 are missing/)
    .waitFor();
  await fields.nth(23).fill("warm");
  await view(page)
    .getByText(/“warm” is not a temperature/)
    .waitFor();
  await fields.nth(23).fill("58");
  await view(page)
    .getByText(/Strength and cures are expected at these/)
    .waitFor();
  await fields.nth(23).blur();
  expect(await fields.nth(23).inputValue()).toBe("58 °F");
  await page.getByRole("button", { name: "where from? for usual temperatures" }).click();
  await page.getByLabel("Where it comes from: usual temperatures").selectOption("measured");
  await page.getByRole("button", { name: "done saying where from, for usual temperatures" }).click();
  await page.getByRole("button", { name: "from: measured for usual temperatures" }).waitFor();
  await page.getByLabel("Low", { exact: true }).fill("30 °F");
  await page.getByLabel("High", { exact: true }).fill("39 °F");
  await page.getByRole("button", { name: "write it down" }).click();
  await view(page)
    .getByText(/30 °F to 39 °F, measured/)
    .waitFor();
});

test("cautions are added, changed and taken out at their step", async () => {
  const page = await site("Cautions", wall);
  await page.getByLabel("A new caution").fill("Mind the kerb.");
  await page.getByLabel("A new caution").press("Enter");
  await view(page).getByText("Choose the step that it is about.").waitFor();
  await page.getByLabel("One more, about the step").selectOption({ label: "Front face and ties" });
  await page.getByLabel("A new caution").press("Enter");
  const line = view(page).getByLabel("Caution 1 of Front face and ties");
  expect(await line.inputValue()).toBe("Mind the kerb.");
  await line.fill("");
  await view(page).getByText("Write what to watch for, or take it out.").waitFor();
  await line.fill("Mind the kerb and the gate.");
  await view(page).getByRole("button", { name: "take out caution 1 of Front face and ties" }).click();
  expect(await line.count()).toBe(0);
  await undoButton(page).click();
  expect(await line.inputValue()).toBe("Mind the kerb and the gate.");
});

test("what rests on a guess is counted and listed; said to be measured, it stays in sight and counts no more", async () => {
  const page = await site("What rests on a guess");
  const lead = view(page).locator(".lead");
  expect(await words(lead)).toMatch(/^105 figures rest on a guess of your own/);
  expect(await words(view(page))).not.toContain("pour-porch");
  await page.getByRole("button", { name: "from: own guess for Outer form, weight" }).click();
  await page.getByLabel("Where it comes from: Outer form, weight").selectOption("in other words");
  await page.getByLabel("Where it comes from in other words: Outer form, weight").fill("scales at the yard");
  expect(await words(lead)).toMatch(/^104 figures/);
  await page.getByRole("button", { name: "done saying where from, for Outer form, weight" }).click();
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("from: scales at the yard");
  await page.getByRole("button", { name: "scales at the yard (1)" }).click();
  await view(page).getByRole("button", { name: "Outer form", exact: true }).click();
  await page.getByRole("complementary").getByRole("heading", { name: "Outer form" }).waitFor();
  await page.keyboard.press("Escape");
  await undoButton(page).click();
  expect(await words(lead)).toMatch(/^105 figures/);
});

test("a later order makes no delivery earlier: the order-by date follows the lead time", async () => {
  const page = await site("Deliveries");
  await pick(page, "Drain stone, 7 tons");
  const row = view(page).locator(".row", { hasText: "Drain stone, 7 tons" });
  expect(await words(row)).toContain("order by Wed 19 May · here Sat 22 May");
  const lead = page.getByLabel("From order to arrival", { exact: true });
  await lead.fill("soon");
  await view(page)
    .getByText(/“soon” is no strength|“soon” is not an amount/)
    .waitFor();
  expect(await lead.inputValue()).toBe("soon");
  await lead.fill("8 days");
  await expect.poll(() => words(row)).toContain("order by Thu 13 May");
  await page.getByRole("button", { name: "from: supplier for From order to arrival" }).waitFor();
  await page.getByRole("checkbox", { name: "ordered" }).check();
  await expect.poll(() => words(row)).toContain("ordered · here Sat 22 May");
  await page.getByLabel("add: brings into stock").selectOption({ label: "Adjustable shore" });
  await page.getByLabel("Number: Adjustable shore").fill("4");
  await page.getByLabel("Notes").fill("Ask for the small truck.");
  await page.getByLabel("Promised for").fill("2027-05-20");
  await page.getByLabel("at", { exact: true }).fill("7:30");
  await expect.poll(() => words(row)).toContain("here Thu 20 May");
  await view(page).getByRole("button", { name: "take “Drain stone, 7 tons” out" }).click();
  expect(await words(page.getByRole("group", { name: "take out Drain stone, 7 tons" }))).toContain("without “Drain stone, 7 tons”.");
  await page.getByRole("button", { name: "keep it" }).click();
  expect(await row.count()).toBe(1);
});

test("a booking is made for a step, dated and taken out", async () => {
  const page = await site("Bookings");
  await page.getByLabel("A new booking, for the step").selectOption({ label: "Pour the footing" });
  const name = page.getByLabel("Who or what");
  expect(await name.inputValue()).toBe("Visit for Pour the footing");
  await name.fill("Pump for the footing");
  await page.getByLabel("To be asked ahead", { exact: true }).fill("10 d");
  const row = view(page).locator(".row", { hasText: "Pump for the footing" });
  await expect.poll(() => words(row)).toMatch(/book by .* · for Sat 20 Mar/);
  await page.getByRole("checkbox", { name: "booked" }).check();
  await expect.poll(() => words(row)).toContain("booked · for Sat 20 Mar");
  await view(page).getByRole("button", { name: "take “Pump for the footing” out" }).click();
  expect(await row.count()).toBe(0);
});

test("a person is added, given a role and days off, and the days are spent by clicking them", async () => {
  const page = await site("People");
  await pick(page, "Ruth");
  await page.getByLabel("Days off work").fill("few");
  await view(page)
    .getByText(/“few” stands where a number should be\./)
    .waitFor();
  await page.getByLabel("Days off work").fill("1");
  await page.getByRole("button", { name: "Friday 26 February 2027: not here" }).click();
  await view(page).getByText("Spent: Fri 26 Feb.").waitFor();
  expect(await undoButton(page).getAttribute("title")).toBe("spend Fri 26 Feb, Ruth");
  await page.getByRole("button", { name: "Friday 5 March 2027: not here" }).click();
  await view(page).getByText("1 day more spent than there are.").waitFor();
  await page.getByRole("button", { name: "Friday 5 March 2027: a day off work, spent here" }).click();
  await view(page).getByText("1 day spent, 0 left.").waitFor();
  await page.getByRole("button", { name: "Saturday 6 March 2027: here" }).click();
  await view(page).getByText("Away: Sat 6 Mar.").waitFor();
  expect(await undoButton(page).getAttribute("title")).toBe("away on Sat 6 Mar, Ruth");
  await page.getByRole("button", { name: "Saturday 6 March 2027: away" }).click();
  await view(page).getByText("Away: Sat 6 Mar.").waitFor({ state: "detached" });
  await view(page).getByText("1 day spent, 0 left.").waitFor();
  await page.getByLabel("or another: Can also do").fill("surveyor");
  await page.getByLabel("or another: Can also do").press("Enter");
  await view(page).getByRole("button", { name: "take out surveyor" }).waitFor();
  await page.getByLabel("Another person").fill("Jo");
  await page.getByLabel("Another person").press("Enter");
  await page.getByLabel("add: Can also do").selectOption({ label: "surveyor" });
  await page.getByLabel("Is here on").selectOption({ label: "Helpers' Saturdays" });
  expect(await words(view(page).locator(".row", { hasText: "Jo" }))).toContain("Helpers' Saturdays, surveyor");
  await view(page).getByRole("button", { name: "take “Jo” out" }).click();
  expect(await view(page).locator(".row", { hasText: "Jo" }).count()).toBe(0);
});

test("on a phone the sections fold, nothing goes sideways, and what one touches is 44 px high", async () => {
  const page = await app.example(cellar, { viewport: phone });
  await page.keyboard.press("6");
  const folds = view(page).getByRole("heading", { level: 2 }).getByRole("button");
  await folds.first().waitFor();
  expect(await folds.count()).toBe(9);
  for (const fold of await folds.all()) {
    await fold.click();
    expect(await fold.getAttribute("aria-expanded")).toBe("true");
    const row = view(page).locator(".members .row").first();
    if (await row.isVisible()) await row.click();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
    const low = await page.evaluate(() =>
      [...document.querySelectorAll(".site button, .site select, .site input:not([type=checkbox]), .site summary, .site textarea")]
        .filter((element) => element.checkVisibility() && element.getBoundingClientRect().height < 43.5)
        .map((element) => element.textContent?.trim() || element.outerHTML),
    );
    expect(low).toEqual([]);
    await fold.click();
  }
});

test("the view says when the finish moves", async () => {
  const page = await site("Calendars");
  const before = await finish(page);
  await pick(page, "Site weekends");
  await page.getByLabel("Saturday, hours").fill("8:00-12:00");
  await expect.poll(() => finish(page)).not.toBe(before);
});
