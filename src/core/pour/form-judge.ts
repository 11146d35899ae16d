import type { FormSpec } from "../build";
import { facesOf } from "../concrete";
import { type FormAsk, type FormJudged, faultyFigure, Tally } from "./form-ask";
import { judgeColumn } from "./form-column";
import { judgeDeck, laidOf } from "./form-deck";
import { judgeEdge } from "./form-edge";
import { judgeWall } from "./form-wall";
import { isStanding } from "./shapes";

/** Which form goes with which element. */
const fits: Readonly<Record<FormSpec["kind"], readonly string[]>> = {
  column: ["column", "pier"],
  wall: ["wall", "footing"],
  deck: ["deck slab", "barrel", "stair"],
  edge: ["slab", "footing"],
};

/** Standing elements with a formed side, and whatever has a formed soffit: nothing without a form. A slab or footing may be cast in earth. */
function needsForm({ element, head }: FormAsk): boolean {
  const { kind } = element.shape;
  if (kind === "column" || kind === "pier" || kind === "wall") return head !== null;
  return facesOf(element.shape, element.faces).some(({ face, against }) => face === "soffit" && against === "form");
}

const nothing: Omit<FormJudged, "findings"> = {
  members: [],
  thrust: 0,
  thrustAt_mm: 0,
  oneSided: false,
  lift: { up: 0, weight: null, held: 0, needed: 0 },
  bracing_kN_m: 0,
};

/** A form whose figures are sound and that goes with its element, against what presses on it. */
export function judgeSound(ask: FormAsk, form: FormSpec): FormJudged {
  switch (form.kind) {
    case "column":
      return judgeColumn(ask, form);
    case "wall":
      return judgeWall(ask, form);
    case "deck":
      return judgeDeck(ask, form);
    case "edge":
      return judgeEdge(ask, form);
  }
}

/** Sides of what stands that nothing closes: the concrete runs out, whatever holds the others. */
function openSides(tally: Tally): void {
  const { shape, faces } = tally.ask.element;
  if (!isStanding(shape)) return;
  for (const { face, against } of facesOf(shape, faces))
    if (against === "free" && face !== "top" && face !== "soffit") tally.say("form.open-side", "stop", { face });
}

/** What keeps a form from being judged is found and said; no members then. */
export function judgeForm(ask: FormAsk, form: FormSpec | null): FormJudged {
  const open = new Tally(ask);
  openSides(open);
  const judged = judgeClosed(ask, form);
  return open.findings.length === 0 ? judged : { ...judged, findings: [...open.findings, ...judged.findings] };
}

function judgeClosed(ask: FormAsk, form: FormSpec | null): FormJudged {
  const tally = new Tally(ask);
  const { shape } = ask.element;
  const refuse = (): FormJudged => ({ ...nothing, findings: tally.findings });
  if (form === null) {
    if (needsForm(ask)) tally.say("form.none", "stop", {});
    return refuse();
  }
  if (!fits[form.kind].includes(shape.kind)) {
    tally.say("form.other-kind", "stop", { form: form.kind, shape: shape.kind });
    return refuse();
  }
  const wrong = faultyFigure(form);
  if (wrong !== null) {
    tally.say("form.no-figure", "stop", { part: wrong[0] ?? "", what: wrong[wrong.length - 1] ?? "" });
    return refuse();
  }
  const isJudged = form.kind === "deck" ? laidOf(shape, form.shores.spacing_mm) !== null : ask.head !== null;
  return isJudged ? judgeSound(ask, form) : refuse();
}

/** The most any member carries of what it may, of 100; 0 without members. */
export const mostOf = (form: Pick<FormJudged, "members">): number =>
  form.members.reduce((most, { sheet }) => Math.max(most, sheet.of100), 0);

/** Position of what gives first. */
export function firstOf(form: Pick<FormJudged, "members">): number {
  return form.members.reduce((first, { sheet }, i) => (sheet.of100 > (form.members[first]?.sheet.of100 ?? 0) ? i : first), 0);
}
