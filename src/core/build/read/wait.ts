import type { Member } from "../schema/document";
import { maybeAmount, type RawAmount } from "./amounts";
import type { ChoiceDraft, WaitDraft } from "./drafts";
import type { Notes } from "./notes";
import { elapsed_min, inside, type Spot, spot } from "./quantities";

type Raw = Member<"choices">["either"][number]["waits"][number];

/** Least and most are compared where both count the same thing. */
function orderOf(least: ReturnType<typeof maybeAmount>, most: ReturnType<typeof maybeAmount>): boolean {
  if (!least || !most) return true;
  if (least.kind === "elapsed" && most.kind === "elapsed") return least.amount <= most.amount;
  const same = least.kind === "working" && most.kind === "working" && least.calendar === most.calendar;
  return !same || least.amount <= most.amount;
}

function readOne(raw: Raw, at: Spot, prefix: string): WaitDraft {
  const place = (part: string): Spot => (prefix === "" ? spot(at.notes, part) : inside(at, part));
  const least = maybeAmount(place("least"), raw.least as RawAmount | undefined);
  const most = maybeAmount(place("most"), raw.most as RawAmount | undefined);
  if (!orderOf(least, most))
    at.notes.say("build.most-under-least", prefix === "" ? "most" : at.key, { least: least?.text ?? "", most: most?.text ?? "" });
  const { visits } = raw;
  return {
    id: raw.id ?? null,
    name: raw.name ?? raw.id ?? "",
    from: raw.from,
    to: raw.to,
    fromEnd: raw.fromEnd ?? "finish",
    toEnd: raw.toEnd ?? "start",
    least,
    most,
    visits: visits
      ? {
          every_min: elapsed_min(inside(place("visits"), "every"), visits.every),
          lasts_min: elapsed_min(inside(place("visits"), "lasts"), visits.lasts),
          who: visits.who ?? "",
          for: visits.for ?? "",
        }
      : null,
    why: raw.why ?? "",
  };
}

export const readWait = (raw: Member<"waits">, notes: Notes): WaitDraft => readOne(raw, spot(notes, "least"), "");

export function readChoice(raw: Member<"choices">, notes: Notes): ChoiceDraft {
  if (raw.either.length === 0) notes.say("build.empty", "either", { part: "" });
  return {
    id: raw.id,
    name: raw.name ?? raw.id,
    either: raw.either.map((side, i) => ({
      name: side.name ?? "",
      waits: side.waits.map((wait, j) => readOne(wait, spot(notes, "either", `${i + 1}.waits.${j + 1}`), "either")),
    })),
  };
}
