export { default as Sheet } from "./Sheet.svelte";
