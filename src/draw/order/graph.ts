import { DirectedGraph } from "graphology";
import { topologicalGenerations } from "graphology-dag";
import type { Access } from "../../core/access";
import type { Build } from "../../core/build";

/** Node of a step: never the name of something that every object has. */
export const nodeOf = (id: string): string => `s:${id}`;

export type StepGraph = DirectedGraph<{ readonly step: number }, { readonly row: number }>;

/**
 * The order as a graph: a node a step, an edge an arrow worth drawing with the arc row it stands for (the first where several say the same), without
 * those that follow from others.
 */
export function stepGraph(build: Build, { arcs }: Access): StepGraph {
  const graph: StepGraph = new DirectedGraph();
  build.steps.forEach(({ id }, step) => {
    graph.addNode(nodeOf(id), { step });
  });
  for (let row = 0; row < arcs.count; row += 1) {
    const [from, to] = [build.steps[arcs.from[row] as number], build.steps[arcs.to[row] as number]];
    if (arcs.redundant[row] === 1 || arcs.orders[row] === 0 || !from || !to || from === to) continue;
    if (!graph.hasEdge(nodeOf(from.id), nodeOf(to.id))) graph.addEdge(nodeOf(from.id), nodeOf(to.id), { row });
  }
  return graph;
}

/**
 * Layer of each step, by position, counted back from the end: each as late as what comes after lets it be. On the cellar 85 places where arrows cross,
 * against 112 with each as early as can be.
 */
export function layersOf(graph: StepGraph): Int32Array {
  const back: StepGraph = new DirectedGraph();
  graph.forEachNode((node, attributes) => {
    back.addNode(node, attributes);
  });
  graph.forEachEdge((_, attributes, from, to) => {
    back.addEdge(to, from, attributes);
  });
  const layers = new Int32Array(graph.order);
  topologicalGenerations(back)
    .reverse()
    .forEach((nodes, layer) => {
      for (const node of nodes) layers[graph.getNodeAttribute(node, "step")] = layer;
    });
  return layers;
}

/** Ids of the steps next to a step in the drawing. */
export interface Near {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/** For each step, by its position, those that an arrow joins it to. */
export function nearOf(build: Build, graph: StepGraph): Near[] {
  const ids = (nodes: readonly string[]) => nodes.map((node) => build.steps[graph.getNodeAttribute(node, "step")]!.id as string);
  return build.steps.map(({ id }) => ({ before: ids(graph.inNeighbors(nodeOf(id))), after: ids(graph.outNeighbors(nodeOf(id))) }));
}
