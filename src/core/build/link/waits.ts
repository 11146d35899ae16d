import { asId } from "../../base";
import type { Choice, Wait } from "../model";
import type { ChoiceDraft, WaitDraft } from "../read/drafts";
import { linkMaybe } from "./amounts";
import type { Context } from "./context";
import type { Written } from "./groups";
import type { Speaker } from "./names";
import { ends } from "./plain-waits";

function linkBetween(
  draft: WaitDraft,
  ids: () => string,
  context: Context,
  speaker: Speaker,
  key: (end: string) => [string, string],
): Wait[] {
  const least = linkMaybe(draft.least, context, speaker, ...key("least"));
  const most = linkMaybe(draft.most, context, speaker, ...key("most"));
  const to = ends(draft.to, "to", context, speaker, ...key("to"));
  const from = ends(draft.from, "from", context, speaker, ...key("from"));
  if (!context.names.spend(from.length * to.length)) return [];
  return from.flatMap((start) =>
    to.map((end): Wait => {
      const { name, fromEnd, toEnd, visits, why } = draft;
      return { id: asId(ids()), name, from: start, to: end, fromEnd, toEnd, least, most, visits, why, plain: false };
    }),
  );
}

/** Numbers the waits that one written wait becomes: copy 2 is "#2" where it becomes one for each copy, further ones count on. */
function numbering(written: Written<"waits">, further: Map<string, number>, single: boolean): () => string {
  const { draft, copy } = written;
  if (single) return () => written.id;
  let first = copy !== null;
  return () => {
    if (first) {
      first = false;
      return written.id;
    }
    const next = (further.get(draft.id ?? "") ?? copy?.group.count ?? 0) + 1;
    further.set(draft.id ?? "", next);
    return `${draft.id}#${next}`;
  };
}

export function linkWait(written: Written<"waits">, further: Map<string, number>, context: Context): Wait[] {
  const { draft } = written;
  const speaker: Speaker = { list: "waits", id: draft.id ?? "", copy: written.copy };
  const key = (end: string): [string, string] => [end, ""];
  const ids: string[] = [];
  const waits = linkBetween(draft, () => "", context, speaker, key);
  const next = numbering(written, further, waits.length === 1);
  for (let i = 0; i < waits.length; i++) ids.push(next());
  return waits.map((wait, i) => ({ ...wait, id: asId(ids[i]) }));
}

export function linkChoice(draft: ChoiceDraft, context: Context): Choice {
  const speaker: Speaker = { list: "choices", id: draft.id, copy: null };
  return {
    id: asId(draft.id),
    name: draft.name,
    either: draft.either.map((side, i) => ({
      name: side.name,
      waits: side.waits.flatMap((wait, j) => {
        let count = 0;
        const ids = (): string => `${wait.id ?? `${draft.id}-${i + 1}-${j + 1}`}${count++ === 0 ? "" : `#${count}`}`;
        return linkBetween(wait, ids, context, speaker, (end) => ["either", `${i + 1}.waits.${j + 1}.${end}`]);
      }),
    })),
  };
}
