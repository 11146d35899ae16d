import type { DocumentEdit } from "../../core/base";
import { aboutOf, sharedWords, type Usual, usualOf } from "./verbs";
import { append, idFrom, idsOf, listOf, objectsOf, textOf, type Written } from "./written";

/** What a new step of that name may start with. */
export interface Suggested {
  readonly usual: Usual;
  /** A place of the build that the name speaks of; null: a new one, called `newPlace`; "" with no name for a new one: none. */
  readonly place: { readonly id: string; readonly name: string } | null;
  readonly newPlace: string;
  /** The piece it would put up. */
  readonly piece: string;
  /** Pieces of the build that it would take down. */
  readonly takes: readonly { readonly id: string; readonly name: string }[];
}

const nameOf = (member: Written): string => textOf(member.name) || textOf(member.id);
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The member that shares most words with what is spoken of, the first of several; null where none shares any. */
function nearest(members: readonly Written[], about: readonly string[]): Written | null {
  let best: Written | null = null;
  let most = 0;
  for (const member of members) {
    const shared = sharedWords(about, aboutOf(nameOf(member)));
    if (shared > most) [best, most] = [member, shared];
  }
  return best;
}

/** Null where nothing is known of such a step, or it would add nothing. */
export function suggestedFor(document: unknown, name: string): Suggested | null {
  const found = usualOf(name);
  if (found === null) return null;
  const { usual, verb } = found;
  const about = aboutOf(name, verb);
  const spoken = usual.need === undefined ? null : nearest(listOf(document, "places"), about);
  const taken = new Set(listOf(document, "steps").flatMap((step) => idsOf(step.takes)));
  const removable = listOf(document, "pieces").filter(
    (piece) => usual.takes?.includes(textOf(piece.sort)) && !taken.has(textOf(piece.id)) && piece.goesAfter === undefined,
  );
  const down = nearest(removable, about);
  const what = capital(about.join(" "));
  const piece =
    usual.puts === undefined ? "" : sharedWords([usual.puts.called], about) > 0 ? what : capital([...about, usual.puts.called].join(" "));
  const suggested: Suggested = {
    usual,
    place: spoken ? { id: textOf(spoken.id), name: nameOf(spoken) } : null,
    newPlace: usual.need === undefined || spoken ? "" : what,
    piece,
    takes: down ? [{ id: textOf(down.id), name: nameOf(down) }] : [],
  };
  const adds = usual.sort !== undefined || suggested.place !== null || suggested.newPlace !== "" || piece !== "" || down !== null;
  return adds ? suggested : null;
}

/** The edits that add a step with what such a step usually has, in one change; `id`: of the step. */
export function withSuggested(
  document: unknown,
  name: string,
  suggested: Suggested,
): { readonly edits: readonly DocumentEdit[]; readonly id: string } {
  const { usual, place, newPlace, piece, takes } = suggested;
  const id = idFrom(name, document);
  const edits: DocumentEdit[] = [];
  let now: Written = {};
  const fresh = (called: string): string => {
    const made = idFrom(called, {
      ...(document as object),
      steps: [...listOf(document, "steps"), { id }, ...Object.keys(now).map((one) => ({ id: one }))],
    });
    now = { ...now, [made]: true };
    return made;
  };
  let where = place?.id ?? "";
  if (where === "" && newPlace !== "") {
    where = fresh(newPlace);
    edits.push(append("places", { id: where, name: newPlace, ways: [{ id: "in", name: "way in", passes: ["person"] }] }));
  }
  const puts = usual.puts !== undefined && piece !== "" ? fresh(piece) : "";
  if (usual.puts !== undefined && puts !== "") {
    const does =
      where === ""
        ? {}
        : usual.puts.does === "closes"
          ? { closes: closable(document, where) }
          : usual.puts.does === "fills"
            ? { fills: [where] }
            : {};
    edits.push(append("pieces", { id: puts, name: piece, sort: usual.puts.sort, ...does }));
  }
  const people = listOf(document, "people").length;
  const hands = usual.hands === undefined ? 1 : Math.min(usual.hands, Math.max(1, people));
  edits.push(
    append("steps", {
      id,
      name,
      ...(usual.sort === undefined ? {} : { sort: usual.sort }),
      ...(where === "" ? {} : { place: where, reaches: [{ place: where, ...(usual.need === "person" ? {} : { need: usual.need }) }] }),
      work: "2 h",
      ...(hands === 1 && usual.hands !== 0 ? {} : { hands: usual.hands === 0 ? 0 : hands }),
      ...(puts === "" ? {} : { puts: [puts] }),
      ...(takes.length === 0 ? {} : { takes: takes.map((one) => one.id) }),
      ...(usual.holdPoint && where !== "" ? { holdPoint: { places: [where] } } : {}),
    }),
  );
  return { edits, id };
}

/** One of several ways in, so that a first piece does not close the place altogether; the only one otherwise. */
function closable(document: unknown, place: string): readonly string[] {
  const ways = objectsOf(listOf(document, "places").find((one) => one.id === place)?.ways);
  const closed = new Set(listOf(document, "pieces").flatMap((piece) => idsOf(piece.closes)));
  const open = ways.map((way) => `${place}.${textOf(way.id)}`).find((way) => !closed.has(way));
  return [open ?? place];
}
