import type { Statement, WayOut } from "../../base";
import type { Build, Piece, Step } from "../../build";

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

/** Steps that must get somewhere in this block, each with the statement that says so; what was asked to come after counts too. */
export function visitors(blocked: Blocked): { readonly step: Step; readonly says: Statement }[] {
  return saying(blocked, "reach", "off").flatMap((says) => {
    const step = stepOf(blocked, says.step);
    return step === undefined ? [] : [{ step, says }];
  });
}

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
