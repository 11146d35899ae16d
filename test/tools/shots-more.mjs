// The screens that only come up when something is asked for: dialogs, the side sheet, lists, forms, what is ticked, sections of Site.

/** Of the bank cellar, as it stands after a day's work. Each: name, and what leads to it from the one before. */
export const asked = [
  ["steps", async (page) => order(page, "Steps")],
  ["pieces", async (page) => order(page, "Pieces")],
  ["drawing", async (page) => order(page, "Drawing")],
  [
    "why",
    async (page) => {
      await order(page, "Steps");
      await page
        .getByRole("button", { name: /Pour the footing/ })
        .first()
        .click();
      await page.getByRole("complementary").getByRole("heading", { level: 2 }).first().waitFor();
    },
  ],
  [
    "written",
    async (page) => {
      await page.getByRole("button", { name: "As written" }).click();
      await page.getByLabel("Notes", { exact: true }).first().waitFor();
    },
  ],
  [
    "find",
    async (page) => {
      await away(page);
      await page.keyboard.press("/");
      await page.locator("dialog[open] input").first().fill("wall");
    },
  ],
  ["keys", async (page) => dialog(page, "?")],
  ["look", async (page) => tool(page, "look")],
  [
    "versions",
    async (page) => {
      await away(page);
      await page.locator("header .name").click();
      await page.getByRole("button", { name: "versions", exact: true }).click();
      await page.locator("dialog[open]").waitFor();
    },
  ],
  [
    "builds",
    async (page) => {
      await away(page);
      await page.locator("header .name").click();
    },
  ],
  [
    "table",
    async (page, size) => {
      await away(page);
      await page.keyboard.press("2");
      if (size !== "phone") await page.getByRole("button", { name: "as a table" }).click();
      else
        await page
          .getByRole("button", { name: /Clear brush/ })
          .first()
          .click();
    },
  ],
  [
    "key",
    async (page, size) => {
      await away(page);
      if (size !== "phone") {
        await page.getByRole("button", { name: "as a table" }).click();
        await page.getByRole("button", { name: "key", exact: true }).click();
      } else {
        await page.getByRole("button", { name: "structure", expanded: false }).click();
        await page.getByRole("button", { name: "hatches" }).click();
      }
    },
  ],
  [
    "ticked",
    async (page) => {
      await away(page);
      await page.keyboard.press("5");
      const ticks = page.locator(".next input[type=checkbox]");
      await ticks.first().waitFor();
      for (const at of [0, 1]) await ticks.nth(at).check();
    },
  ],
  ...["Calendars", "People", "Equipment and stock", "Deliveries", "Bookings", "Temperatures", "Cautions", "What rests on a guess"].map(
    (name) => [
      `site-${name.toLowerCase().replaceAll(" ", "-")}`,
      async (page, size) => {
        await away(page);
        await page.keyboard.press("6");
        const section = page.getByRole("button", { name: new RegExp(`^${name}`) }).first();
        await section.click();
        if (size !== "desk") await section.evaluate((one) => one.scrollIntoView({ block: "start" }));
      },
    ],
  ),
];

async function away(page) {
  for (let time = 0; time < 3; time += 1) await page.keyboard.press("Escape");
  await page.evaluate(() => document.activeElement?.blur?.());
}

async function order(page, mode) {
  await away(page);
  await page.keyboard.press("1");
  await page.getByText(mode, { exact: true }).first().click();
}

async function dialog(page, key) {
  await away(page);
  await page.keyboard.press(key);
  await page.locator("dialog[open]").waitFor();
}

async function tool(page, name) {
  await away(page);
  const more = page.getByRole("button", { name: "more", exact: true });
  if (await more.isVisible()) await more.click();
  await page.getByRole("button", { name, exact: true }).first().click();
}

/** What a thumb may miss: what can be pressed and is lower or narrower than `least` px, with what lies round it and answers for it. Words in a line of text are let be. */
export const small = (page, least) =>
  page.evaluate((least) => {
    const over = document.querySelector("dialog[open]") ?? document.body;
    const faults = new Set();
    for (const one of over.querySelectorAll("button, a[href], input:not([type=hidden]), select, textarea, summary")) {
      if (!one.checkVisibility({ visibilityProperty: true }) || one.closest("svg, .unseen") || one.disabled) continue;
      const label = one.closest("label") ?? (one.id ? document.querySelector(`label[for="${CSS.escape(one.id)}"]`) : null);
      const boxes = [one, ...(label && one.matches("input[type=checkbox], input[type=radio]") ? [label] : [])].map((at) =>
        at.getBoundingClientRect(),
      );
      if (boxes.some(({ right, left, bottom, top }) => right <= 0 || left >= innerWidth || bottom <= 0 || top >= innerHeight)) continue;
      const [wide, high] = [Math.max(...boxes.map(({ width }) => width)), Math.max(...boxes.map(({ height }) => height))];
      if (high < least - 0.5 || (wide < least - 0.5 && one.textContent.trim().length < 2))
        faults.add(
          `${Math.round(wide)} by ${Math.round(high)} px to touch: “${(one.ariaLabel ?? one.textContent ?? one.name ?? "").trim().slice(0, 50)}”`,
        );
    }
    return [...faults];
  }, least);
