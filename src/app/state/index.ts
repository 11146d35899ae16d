export { getDesk, getShop, setDesk, setShop } from "./context";
export type { Dates } from "./date-style";
export { dayWords, goneAfter_ms, keptDays, momentWords, sizeWords } from "./days";
export type { Desk, Selection } from "./desk";
export { orderModes, type TextSize, type Theme, textSizes, views } from "./settings.svelte";
export { Shop } from "./shop.svelte";
export { mayPass, troubleSentence } from "./trouble";
export { Unsent } from "./unsent.svelte";
export { versionName } from "./versions.svelte";
