import type { RemovalSort } from "../../core/build";
import type { Option } from "../parts/option";

const order: readonly RemovalSort[] = ["sides", "soffit", "shores", "backfill", "load", "anchors"];

/** What can wait for a pour, to pick from, lightest first. */
export const removalSorts = (names: Readonly<Record<RemovalSort, string>>): readonly Option[] =>
  order.map((id) => ({ id, name: names[id] }));
