export { getDesk, getShop, setDesk, setShop } from "./context";
export type { Desk, Selection } from "./desk";
export { type Theme, views } from "./settings.svelte";
export { Shop } from "./shop.svelte";
