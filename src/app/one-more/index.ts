export { default as OneMore } from "./OneMore.svelte";
