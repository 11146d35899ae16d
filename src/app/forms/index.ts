export { default as FormsView } from "./FormsView.svelte";
