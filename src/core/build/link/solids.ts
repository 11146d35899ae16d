import type { Solid } from "../model";
import type { SolidDraft } from "../read/part";
import type { Names, Speaker } from "./names";

export function linkSolid(draft: SolidDraft, names: Names): Solid {
  const speaker: Speaker = { list: "solids", id: draft.id, copy: null };
  return {
    ...draft,
    pour: draft.pour === null ? null : names.one("step", draft.pour, speaker, "pour"),
    pieces: names.list("piece", draft.pieces, speaker, "pieces"),
    form: names.list("piece", draft.form, speaker, "form"),
    bars: names.list("step", draft.bars, speaker, "bars"),
    places: names.list("place", draft.places, speaker, "places"),
  };
}
