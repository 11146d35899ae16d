import { type Candidate, type Maker, visitors } from "./candidate";
import { add, anHour, crewOf, edit, freeId, writtenId, writtenNeed } from "./written";

const small = ["sight", "hand", "arm", "hose"];

/**
 * Cut a clean-out: one more way into the place for what must pass, with a cover that closes it again. A new step puts the cover up after the work behind
 * it, and whatever fills the place leans on the cover. It never opens what is filled already.
 */
export const cleanOut: Maker = (blocked) =>
  visitors(blocked).flatMap(({ step, says }): Candidate[] => {
    const { build } = blocked;
    const q = build.at.place.get(says.place ?? "");
    const place = q === undefined ? undefined : build.places[q];
    if (place === undefined || !small.includes(says.need ?? "")) return [];
    const need = [...step.reaches, ...offOf(says.piece)]
      .flatMap((r) => r.any)
      .find((a) => a.place === place.id && a.need.kind === says.need)?.need;
    if (need === undefined) return [];
    const way = place.ways.some((w) => w.id === "clean-out") ? `clean-out-${place.ways.length + 1}` : "clean-out";
    const { depth } = writtenNeed(need);
    const cover = freeId(build, `${writtenId(place.id)}-${way}-cover`);
    const shut = {
      id: freeId(build, `${writtenId(place.id)}-${way}-shut`),
      name: `Close the clean-out of ${place.name}`,
      ...crewOf(step, build),
      work: anHour,
      puts: [cover],
      after: [writtenId(step.id)],
    };
    const fillers = build.pieces.filter((p) => p.fills.includes(place.id) && p.up >= 0);
    const written = { id: way, name: "by the clean-out", passes: [need.kind], ...(depth === undefined ? {} : { depth }) };
    return [
      {
        kind: "clean-out",
        detail: { place: place.id, step: step.id },
        edits: [
          edit("places", place.id, ["ways", `id=${way}`], written),
          ...add(
            "pieces",
            { id: cover, ...{ name: `Cover of the clean-out of ${place.name}`, closes: [`${writtenId(place.id)}.${way}`] } },
            place.group,
          ),
          ...add("steps", shut, step.group ?? place.group),
          ...fillers.map((p) => edit("steps", build.steps[p.up]?.id ?? "", ["leansOn", "+999"], { piece: cover })),
        ],
      },
    ];

    function offOf(piece: string | undefined) {
      return build.pieces[build.at.piece.get(piece ?? "") ?? -1]?.off ?? [];
    }
  });
