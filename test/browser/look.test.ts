import { expect, inject, test } from "vitest";
import { phone, wall, withBrowser, words } from "./app";

const app = withBrowser();

test("dates follow the machine's language, and what is chosen goes before it; it is kept", async () => {
  const page = await app.example(wall, { locale: "en-US" });
  const headline = page.getByText(/^Finishes /).first();
  expect(await words(headline)).toMatch(/^Finishes \w{3} \w{3} \d+/);
  await page.getByRole("button", { name: "look", exact: true }).click();
  await page.getByRole("button", { name: "Sat 26 Jun, 15:30" }).click();
  expect(await words(headline)).toMatch(/^Finishes \w{3} \d+ \w{3}/);
  await page.getByRole("dialog", { name: "Look" }).getByRole("button", { name: "close" }).click();
  await page.goto(inject("app"));
  await headline.waitFor();
  expect(await words(headline)).toMatch(/^Finishes \w{3} \d+ \w{3}/);
});

test("larger text and the look for sunlight are set at once and kept", async () => {
  const page = await app.example(wall);
  const of = (name: string) => page.evaluate((key) => getComputedStyle(document.documentElement).getPropertyValue(key), name);
  await page.getByRole("button", { name: "look", exact: true }).click();
  await page.getByRole("button", { name: "largest" }).click();
  await page.getByRole("button", { name: "sunlight" }).click();
  expect(await of("--paper")).toMatch(/^#fff(fff)?$/);
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).fontSize)).toBe("20.8px");
  await page.reload();
  await page
    .getByText(/^Finishes /)
    .first()
    .waitFor();
  expect(await of("--paper")).toMatch(/^#fff(fff)?$/);
});

test("in the largest text on a phone every view is on the screen, with what is pressed most in one row over them", async () => {
  const page = await app.example(wall, { viewport: phone });
  await page.getByRole("button", { name: "more", exact: true }).click();
  await page.getByRole("button", { name: "look", exact: true }).click();
  await page.getByRole("button", { name: "largest" }).click();
  await page.getByRole("dialog", { name: "Look" }).getByRole("button", { name: "close" }).click();
  const boxOf = async (name: string) => (await page.locator("header").getByRole("button", { name, exact: true }).boundingBox())!;
  const [add, more] = [await boxOf("add"), await boxOf("more")];
  expect(more.y).toBe(add.y);
  for (const name of ["more", "Order", "Dates", "Forms", "Cure", "Next", "Site"]) {
    const { x, width } = await boxOf(name);
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x + width).toBeLessThanOrEqual(phone.width);
    expect(width).toBeGreaterThanOrEqual(44);
  }
});
