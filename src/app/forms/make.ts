import type { DocumentEdit } from "../../core/base";
import { idFrom } from "../../core/edit";
import { append, idFrom as freshId, isObject, memberOf, objectsOf, textOf, type Written } from "../write/written";
import { newElement, newMix, type ShapeKind, shapeKinds } from "./defaults";

type Units = "us" | "metric";

export interface Made {
  readonly id: string;
  readonly edits: readonly DocumentEdit[];
}

/** A pour for a step that is there, or with a step of its own. Its strength is the one the step already states. */
export function newPourEdits(document: unknown, name: string, step: string | null, units: Units): Made {
  const id = freshId(name, document);
  const at = step ?? freshId(`pour ${name}`, document);
  const stated = step === null ? undefined : memberOf(document, "steps", step)?.pour;
  const strength = isObject(stated) ? textOf(stated.strength) : "";
  const pour = { id, name, step: at, mix: newMix(units, strength), elements: [] };
  return { id, edits: [...(step === null ? [append("steps", { id: at, name, sort: "pour" })] : []), append("pours", pour)] };
}

/** One more element of a pour, with a form to begin with. */
export function newElementEdits(pour: Written, path: readonly string[], kind: ShapeKind, units: Units): Made {
  const elements = objectsOf(pour.elements);
  const what = shapeKinds.find((one) => one.id === kind)?.name.replace(/^an? /, "") ?? kind;
  const id = idFrom(
    what,
    elements.map((one) => textOf(one.id)),
  );
  const copies = elements.filter((one) => isObject(one.shape) && one.shape.kind === kind).length;
  const name = `${what.charAt(0).toUpperCase()}${what.slice(1)}${copies > 0 ? ` ${copies + 1}` : ""}`;
  return { id, edits: [{ path: [...path, "elements", `id=${id}`], value: newElement(id, name, kind, units) }] };
}
