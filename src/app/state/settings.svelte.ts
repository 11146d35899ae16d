import { sayDates } from "../../core/clock";
import { type Dates, styleOf } from "./date-style";
import { remember, remembered } from "./stored";

/** `key` shows the view; a key without a view does nothing. */
export const views = [
  { id: "order", name: "Order", key: "1" },
  { id: "dates", name: "Dates", key: "2" },
  { id: "forms", name: "Forms", key: "3" },
  { id: "cure", name: "Cure", key: "4" },
  { id: "next", name: "Next", key: "5" },
  { id: "site", name: "Site", key: "6" },
] as const;

export type ViewName = (typeof views)[number]["id"];
/** What Order shows. */
export const orderModes = [
  { id: "closings", name: "Before this closes" },
  { id: "steps", name: "Steps" },
  { id: "things", name: "Pieces" },
  { id: "drawing", name: "Drawing" },
] as const;
export type OrderMode = (typeof orderModes)[number]["id"];
export const themes = ["system", "light", "dark", "sunlight"] as const;
export type Theme = (typeof themes)[number];
/** Size of all text, per cent. */
export const textSizes = [100, 115, 130] as const;
export type TextSize = (typeof textSizes)[number];

/** How the program is set on this machine; nothing of it is in the document. */
export class Settings {
  #view = $state<ViewName>(
    oneOf(
      views.map((view) => view.id),
      remembered("view"),
      "order",
    ),
  );
  #order = $state<OrderMode>(
    oneOf(
      orderModes.map((mode) => mode.id),
      remembered("order"),
      "closings",
    ),
  );
  #theme = $state<Theme>(oneOf(themes, remembered("theme"), "system"));
  #units = $state<"us" | "metric" | "build">(oneOf(["us", "metric", "build"], remembered("units"), "build"));
  #textSize = $state<TextSize>(textSizes.find((size) => size === remembered("textSize")) ?? 100);
  #dates = $state<Dates>(oneOf(["system", "day month 24", "month day 12"], remembered("dates"), "system"));
  #viewKeys = $state(remembered("viewKeys") !== false);

  constructor() {
    this.#applyTheme();
    this.#applyTextSize();
    this.#applyDates();
  }

  get view(): ViewName {
    return this.#view;
  }
  set view(view: ViewName) {
    this.#view = view;
    remember("view", view);
  }

  get order(): OrderMode {
    return this.#order;
  }
  set order(mode: OrderMode) {
    this.#order = mode;
    remember("order", mode);
  }

  get theme(): Theme {
    return this.#theme;
  }
  set theme(theme: Theme) {
    this.#theme = theme;
    remember("theme", theme);
    this.#applyTheme();
  }

  get textSize(): TextSize {
    return this.#textSize;
  }
  set textSize(size: TextSize) {
    this.#textSize = size;
    remember("textSize", size);
    this.#applyTextSize();
  }

  get dates(): Dates {
    return this.#dates;
  }
  set dates(dates: Dates) {
    this.#dates = dates;
    remember("dates", dates);
    this.#applyDates();
  }

  /** "build": as the build says. */
  get units(): "us" | "metric" | "build" {
    return this.#units;
  }
  set units(units: "us" | "metric" | "build") {
    this.#units = units;
    remember("units", units);
  }

  /** Single keys (1, 2, ?) do something while no field has the focus. */
  get viewKeys(): boolean {
    return this.#viewKeys;
  }
  set viewKeys(on: boolean) {
    this.#viewKeys = on;
    remember("viewKeys", on);
  }

  #applyTheme(): void {
    if (this.#theme === "system") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = this.#theme;
  }

  #applyTextSize(): void {
    document.documentElement.style.fontSize = this.#textSize === 100 ? "" : `${this.#textSize}%`;
  }

  #applyDates(): void {
    sayDates(styleOf(this.#dates, navigator.language));
  }
}

function oneOf<T extends string>(all: readonly T[], value: unknown, otherwise: T): T {
  return all.find((known) => known === value) ?? otherwise;
}
