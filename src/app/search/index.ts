export { default as Found } from "./Found.svelte";
export { default as SearchStrip } from "./SearchStrip.svelte";
