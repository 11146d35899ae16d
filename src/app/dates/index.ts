export { default as DatesView } from "./DatesView.svelte";
