import type { Finding, Statement } from "../base";
import type { Build } from "../build";

/**
 * The build without what blocked findings ask of its steps: what must be reached, leaned on, held or looked at; where a block asks nothing of the kind, without its
 * links. What is still refuted then is refuted in the whole build. Null where a block has nothing of either.
 */
export function setAside(build: Build, blocks: readonly Finding[]): Build | null {
  const gone: Statement[] = [];
  for (const { because } of blocks) {
    if (because === undefined) continue;
    const asked = because.filter((s) => asks.has(s.rule));
    const dropped = asked.length > 0 ? asked : because.filter((s) => links.has(s.rule));
    if (dropped.length === 0) return null;
    gone.push(...dropped);
  }
  const said = (rule: string, about: Partial<Statement>): boolean =>
    gone.some((s) => s.rule === rule && Object.entries(about).every(([key, value]) => s[key as keyof Statement] === value));
  return {
    ...build,
    steps: build.steps.map((step) => ({
      ...step,
      reaches: step.reaches.filter((_, k) => !said("reach", { step: step.id, id: String(k + 1) })),
      leansOn: step.leansOn.filter(({ piece }) => !said("leans", { step: step.id, piece })),
      holdPoint:
        step.holdPoint === null ? null : { places: step.holdPoint.places.filter((place) => !said("hold-point", { step: step.id, place })) },
    })),
    pieces: build.pieces.map((piece) => ({
      ...piece,
      off: piece.off.filter((_, k) => !said("off", { piece: piece.id, id: String(k + 1) })),
      heldBy: said("held", { piece: piece.id }) ? [] : piece.heldBy,
    })),
    waits: build.waits.filter(({ id }) => !said("wait", { id })),
    choices: build.choices.filter(({ id }) => !said("choice", { id })),
  };
}

const asks = new Set(["reach", "off", "leans", "held", "hold-point"]);
const links = new Set(["wait", "choice"]);
