import type { Finding } from "../base";
import type { Pour } from "../build";
import { facesOf } from "../concrete";
import { found } from "./found";

/** Elements on a formed soffit for which no removal says in which step it comes out: no wait keeps it in then. */
export function staysUnsaid(pour: Pour): Finding[] {
  if (pour.removals.some(({ sort }) => sort === "soffit" || sort === "shores")) return [];
  return pour.elements
    .filter(({ shape, faces }) => facesOf(shape, faces).some(({ face, against }) => face === "soffit" && against === "form"))
    .map(({ id }) => found(pour, "pour.stays-unsaid", "look", { element: id }, "removals"));
}
