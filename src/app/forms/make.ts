import type { DocumentEdit } from "../../core/base";
import { idFrom } from "../../core/edit";
import { append, idFrom as freshId, isObject, memberOf, objectsOf, putKey, textOf, type Written } from "../write/written";
import { newElement, newMix, type ShapeKind, shapeKinds } from "./defaults";

type Units = "us" | "metric";

export interface Made {
  readonly id: string;
  readonly edits: readonly DocumentEdit[];
}

/** Id and name of a new element among those of its pour. */
function called(kind: ShapeKind, elements: readonly Written[]): { readonly id: string; readonly name: string } {
  const what = shapeKinds.find((one) => one.id === kind)?.name.replace(/^an? /, "") ?? kind;
  const copies = elements.filter((one) => isObject(one.shape) && one.shape.kind === kind).length;
  return {
    id: idFrom(
      what,
      elements.map((one) => textOf(one.id)),
    ),
    name: `${what.charAt(0).toUpperCase()}${what.slice(1)}${copies > 0 ? ` ${copies + 1}` : ""}`,
  };
}

/**
 * A pour of one element with a form, for a step that is there or with a step of its own. Its strength is the one the step states, which then no
 * longer says it a second time.
 */
export function newPourEdits(
  document: unknown,
  name: string,
  step: string | null,
  kind: ShapeKind,
  units: Units,
): Made & { readonly element: string } {
  const id = freshId(name, document);
  const at = step ?? freshId(`pour ${name}`, document);
  const stated = step === null ? undefined : memberOf(document, "steps", step)?.pour;
  const strength = isObject(stated) ? textOf(stated.strength) : "";
  const element = called(kind, []);
  const pour = { id, name, step: at, mix: newMix(units, strength), elements: [newElement(element.id, element.name, kind, units)] };
  return {
    id,
    element: element.id,
    edits: [
      ...(step === null ? [append("steps", { id: at, name, sort: "pour" })] : []),
      ...(stated === undefined ? [] : [putKey("steps", at, "pour", undefined)]),
      append("pours", pour),
    ],
  };
}

/** One more element of a pour, with a form to begin with. */
export function newElementEdits(pour: Written, path: readonly string[], kind: ShapeKind, units: Units): Made {
  const { id, name } = called(kind, objectsOf(pour.elements));
  return { id, edits: [{ path: [...path, "elements", `id=${id}`], value: newElement(id, name, kind, units) }] };
}
