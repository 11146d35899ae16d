export { default as NextView } from "./NextView.svelte";
