export { stepsOf } from "./bodies";
export { endOf } from "./days";
export { default as StructurePane } from "./StructurePane.svelte";
export { StructureView } from "./view.svelte";
