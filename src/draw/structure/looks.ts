import type { Build, Solid } from "../../core/build";
import { type Plan, type SolidStage, statesAt } from "../../core/plan";
import { isPassing, matterOf } from "./matter";
import type { BodyLook } from "./paint";

/** The end of a build: whatever comes has come. */
const atLast = Number.MAX_SAFE_INTEGER;

/** How each body is drawn at an instant; without dates as it will stand, without an instant as it stands at the end. */
export function bodyLooks(
  build: Build,
  solids: readonly Solid[],
  plan: Plan | null,
  minute: number | null,
  lit: ReadonlySet<string>,
): BodyLook[] {
  const dated = plan?.status === "planned" ? plan : null;
  const stages = dated ? statesAt(build, dated, minute ?? atLast, solids) : null;
  const passing = solids.map((solid) => isPassing(build, solid));
  const isAllPassing = passing.every(Boolean);
  return solids.map((solid, index) => {
    const stage = stages?.[index] ?? (passing[index] && !isAllPassing ? away : standing(solid));
    return {
      id: solid.id,
      matter: matterOf(build, solid),
      state: stage.state,
      form: stage.form,
      passing: passing[index] === true,
      lit: lit.has(solid.id),
    };
  });
}

/** What is there for a while only is not part of a build as it will stand, unless there is nothing else. */
const away: SolidStage = { from: 0, state: "gone", form: false };

const standing = ({ pour }: Solid): SolidStage => ({ from: 0, state: pour === null ? "stands" : "carrying", form: false });
