export { default as KitNames } from "./KitNames.svelte";
export { default as KitsPage } from "./KitsPage.svelte";
export { default as UnknownLine } from "./UnknownLine.svelte";
