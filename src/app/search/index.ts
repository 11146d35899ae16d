export { default as SearchStrip } from "./SearchStrip.svelte";
