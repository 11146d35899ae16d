import type { Statement, WayOut } from "../../base";
import type { Build, Piece, Step } from "../../build";
import { reachesOf } from "../compile/steps";

/** A block as the makers of candidates see it. */
export interface Blocked {
  readonly build: Build;
  readonly because: readonly Statement[];
}

/** A change worth trying. Nothing is known of it yet. */
export type Candidate = WayOut;

export type Maker = (blocked: Blocked) => Candidate[];

/** Statements of the block by one of these rules. */
export const saying = ({ because }: Blocked, ...rules: string[]): Statement[] => because.filter((s) => rules.includes(s.rule));

export const stepOf = ({ build }: Blocked, id: string | undefined): Step | undefined => build.steps[build.at.step.get(id ?? "") ?? -1];
export const pieceOf = ({ build }: Blocked, id: string | undefined): Piece | undefined => build.pieces[build.at.piece.get(id ?? "") ?? -1];

/** Steps that must get somewhere in this block, each with the statement that says so; an inspection that stops the work must see its place. */
export function visitors(blocked: Blocked): { readonly step: Step; readonly says: Statement }[] {
  return saying(blocked, "reach", "off", "hold-point").flatMap((says) => {
    const step = stepOf(blocked, says.step);
    if (step === undefined) return [];
    return [{ step, says: says.rule === "hold-point" ? { ...says, need: "sight" } : says }];
  });
}

/** Steps that do more than look at a place, those first that the block speaks of. */
export function workersAt(blocked: Blocked, place: string): Step[] {
  const { build, because } = blocked;
  const named = new Set(because.flatMap((s) => [s.step, s.other]));
  const workers = build.steps.filter((_, s) =>
    reachesOf(build, s).some(({ any }) => any.some((a) => a.place === place && a.need.kind !== "sight")),
  );
  return [...workers.filter(({ id }) => named.has(id)), ...workers.filter(({ id }) => !named.has(id))];
}

/** The two steps of what was asked, where something was. */
export const askedOf = (blocked: Blocked): readonly (string | undefined)[] => saying(blocked, "asked").flatMap((s) => [s.step, s.other]);

export interface Closer {
  readonly piece: Piece;
  readonly by: Step;
  readonly says: Statement;
}

/** Pieces that close or fill something in this block and that a step puts up. */
export function closers(blocked: Blocked): Closer[] {
  return saying(blocked, "closes", "fills").flatMap((says) => {
    const piece = pieceOf(blocked, says.piece);
    const by = piece === undefined ? undefined : blocked.build.steps[piece.up];
    return piece === undefined || by === undefined ? [] : [{ piece, by, says }];
  });
}
