export { type Components, components } from "./components";
export { cycleWitness } from "./cycle";
export { type Digraph, digraph, reversed } from "./digraph";
export { IntList, membersAt } from "./int-list";
export { type LongestPath, longestPath } from "./longest";
export { positions, topologicalOrder } from "./order";
export { reachable, shortestPath } from "./path";
export { reachMany, redundantArcs } from "./reach";
export * from "./search/index";
