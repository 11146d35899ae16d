export { default as CureView } from "./CureView.svelte";
