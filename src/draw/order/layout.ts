import { coordGreedy, decrossTwoLayer, graphConnect, type Layering, sugiyama } from "d3-dag";
import type { Access } from "../../core/access";
import type { Build } from "../../core/build";
import { textWidth, wrap } from "../text/measure";
import { nameOf } from "../text/names";
import { layersOf, type Near, nearOf, stepGraph } from "./graph";

/** One arrow of the order: steps by position, and the arc row it stands for (the first where several say the same). */
export interface Arrow {
  readonly from: number;
  readonly to: number;
  readonly row: number;
  /** Corners from the right side of `from` to the left side of `to`, px. */
  readonly points: readonly (readonly [number, number])[];
}

export interface StepBox {
  readonly step: number;
  readonly lines: readonly string[];
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface OrderLayout {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly StepBox[];
  readonly arrows: readonly Arrow[];
  /** By the position of the step. */
  readonly near: readonly Near[];
}

const widest = 150;
const pad = 8;
const apart = 14;
const between = 46;

interface Link {
  readonly from: string;
  readonly to: string;
  readonly row: number;
}

/** Layers worked out beforehand, one node apart or as far as the sizes ask for. */
function inLayers(layers: Int32Array): Layering<string, Link> {
  const layering: Layering<string, Link> = (graph, apart) => {
    const nodes = [...graph.nodes()].sort((a, b) => layers[Number(a.data)]! - layers[Number(b.data)]!);
    const starts: number[] = [];
    for (const node of nodes) {
      const layer = layers[Number(node.data)] as number;
      let y = Math.max(starts[layer] ?? 0, apart(undefined, node));
      for (const { source } of node.parentLinks())
        y = Math.max(y, (starts[layers[Number(source.data)] as number] ?? 0) + apart(source, node));
      starts[layer] = y;
    }
    let height = 0;
    for (const node of nodes) {
      node.y = starts[layers[Number(node.data)] as number] ?? 0;
      height = Math.max(height, node.y + apart(node, undefined));
    }
    return height;
  };
  return layering;
}

/**
 * The steps in layers from left to right, each right of all that comes before it. Takes about a third of a second at 300 steps: meant for a worker.
 * Empty when there is no order.
 */
export function orderLayout(build: Build, access: Access, text = 14): OrderLayout {
  if (!access.possible || build.steps.length === 0) return { width: 0, height: 0, boxes: [], arrows: [], near: [] };
  const line = text + 3;
  const lines = build.steps.map((step) => wrap(nameOf(step), widest, text));
  const wide = lines.map((all) => Math.max(...all.map((one) => textWidth(one, text))) + 2 * pad);
  const high = lines.map((all) => all.length * line + pad);
  const steps = stepGraph(build, access);
  const stepOf = (node: string) => String(steps.getNodeAttribute(node, "step"));
  const links = steps.mapEdges((_, { row }, from, to): Link => ({ from: stepOf(from), to: stepOf(to), row })).sort((a, b) => a.row - b.row);
  const singles = build.steps.map((_, index) => ({ from: String(index), to: String(index), row: -1 }));
  const graph = graphConnect()
    .sourceId(({ from }: Link) => from)
    .targetId(({ to }: Link) => to)
    .single(true)([...singles, ...links]);
  const layout = sugiyama()
    .layering(inLayers(layersOf(steps)))
    .decross(decrossTwoLayer())
    .coord(coordGreedy())
    // The library lays out from top to bottom: height and width change places.
    .nodeSize(({ data }: { readonly data: string }) => [high[Number(data)] as number, wide[Number(data)] as number] as const)
    .gap([apart, between]);
  const { width, height } = layout(graph);
  const boxes: StepBox[] = [...graph.nodes()].map((node) => {
    const step = Number(node.data);
    const [halfWide, halfHigh] = [(wide[step] as number) / 2, (high[step] as number) / 2];
    return { step, lines: lines[step]!, x0: node.y - halfWide, x1: node.y + halfWide, y0: node.x - halfHigh, y1: node.x + halfHigh };
  });
  boxes.sort((a, b) => a.step - b.step);
  const arrows: Arrow[] = [...graph.links()].map((link) => {
    const [from, to] = [Number(link.source.data), Number(link.target.data)];
    const corners = link.points.map(([y, x]) => [x, y] as const);
    const inner = corners.slice(1, -1);
    const start = [boxes[from]!.x1, link.source.x] as const;
    const end = [boxes[to]!.x0, link.target.x] as const;
    return { from, to, row: link.data.row, points: [start, ...inner, end] };
  });
  arrows.sort((a, b) => a.row - b.row);
  return { width: height, height: width, boxes, arrows, near: nearOf(build, steps) };
}
