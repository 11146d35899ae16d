export { default as Aims } from "./Aims.svelte";
export { default as OneMore } from "./OneMore.svelte";
