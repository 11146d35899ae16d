import type { Locator, Page } from "playwright-core";

/** The hand of somebody who has never seen the program: everything it does is counted, what is typed in one field as one. */
export class Hand {
  readonly #page: Page;
  readonly did: string[] = [];

  constructor(page: Page) {
    this.#page = page;
  }

  async press(name: string | RegExp, within: Page | Locator = this.#page): Promise<void> {
    await within
      .getByRole("button", typeof name === "string" ? { name, exact: true } : { name })
      .first()
      .click();
    this.did.push(`press ${name}`);
  }

  async type(label: string | RegExp, text: string): Promise<void> {
    await this.#page.getByLabel(label, { exact: true }).fill(text);
    this.did.push(`type ${label}`);
  }

  /** Puts in what the form is about, once the plan says that it can be. */
  async putIn(): Promise<void> {
    await this.#page.locator('[data-verdict="yes"]').waitFor();
    await this.press(/^put in /);
    await this.#page.getByRole("heading", { name: "What it put in" }).waitFor();
  }
}

interface Written {
  readonly steps: readonly { readonly id: string; readonly after?: readonly string[]; readonly holdPoint?: unknown }[];
  readonly waits?: readonly { readonly id: string }[];
  readonly parts: readonly {
    readonly id: string;
    readonly name: string;
    readonly kit: string;
    readonly answers: Readonly<Record<string, unknown>>;
    readonly made: Readonly<Record<string, readonly string[]>>;
  }[];
  readonly pours: readonly { readonly id: string }[];
}

/** The document as it stands, from the file that the page saves. */
export async function documentOf(page: Page): Promise<Written> {
  const coming = page.waitForEvent("download");
  await page.keyboard.press("Control+s");
  const stream = await (await coming).createReadStream();
  const chunks: Buffer[] = [];
  for await (const chunk of stream) chunks.push(chunk as Buffer);
  return JSON.parse(Buffer.concat(chunks).toString("utf8")) as Written;
}

/** The same by keys alone: everything is reached with Tab, as it is called, and nothing is pressed that has not got the focus. */
export class Keyboard {
  readonly #page: Page;

  constructor(page: Page) {
    this.#page = page;
  }

  /** What has the focus, as it is called. */
  focused(): Promise<string> {
    return this.#page.evaluate(() => {
      const element = document.activeElement;
      const label = element instanceof HTMLInputElement || element instanceof HTMLSelectElement ? element.labels?.[0]?.textContent : null;
      return (element?.getAttribute("aria-label") ?? label ?? element?.textContent ?? "").replace(/\s+/g, " ").trim();
    });
  }

  /** Tabs on until what is called so has the focus. */
  async to(name: string | RegExp): Promise<void> {
    const seen: string[] = [];
    for (let presses = 0; presses < 150; presses += 1) {
      await this.#page.keyboard.press("Tab");
      const now = await this.focused();
      if (typeof name === "string" ? now === name : name.test(now)) return;
      seen.push(now);
    }
    throw new Error(`no way by Tab to ${name}; on the way: ${seen.slice(0, 60).join(" | ")}`);
  }

  async press(name: string | RegExp, key = "Enter"): Promise<void> {
    await this.to(name);
    await this.#page.keyboard.press(key);
  }

  async type(name: string | RegExp, text: string): Promise<void> {
    await this.to(name);
    await this.#page.keyboard.press("Control+A");
    await this.#page.keyboard.type(text);
  }

  async putIn(): Promise<void> {
    await this.#page.locator('[data-verdict="yes"]').waitFor();
    await this.press(/^put in (?!first)/);
    await this.#page.getByRole("heading", { name: "What it put in" }).waitFor();
  }
}
