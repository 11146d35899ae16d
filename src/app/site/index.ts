export { default as SiteView } from "./SiteView.svelte";
