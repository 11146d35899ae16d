import type { EdgeFormSpec } from "../build";
import { lumberMember } from "../concrete";
import { type FormAsk, type FormJudged, Tally } from "./form-ask";
import { between_kN_m, type Head, thrust_kN_m, thrustAt_mm } from "./form-head";
import { judgeLift, lid_kPa } from "./form-lift";
import { sags } from "./form-stuff";
import { inches, mmOfInches, poundsPerFoot } from "./form-units";
import { member, spansIn } from "./members";

/** Boards on stakes: the lowest board takes the pressure on its own width, a stake all of it between its neighbours. */
export function judgeEdge(ask: FormAsk, form: EdgeFormSpec): FormJudged {
  const tally = new Tally(ask);
  const head = ask.head as Head;
  const long_mm = Math.max(ask.upright?.long_mm ?? 0, ask.upright?.wide_mm ?? 0);
  const span_mm = Math.min(form.stakes.spacing_mm, long_mm);
  const boards = tally.stuff("boards", form.boards, "beam", false, true);
  if (boards !== null) {
    const width_mm = Math.min(head.high_mm, mmOfInches(boards.section.wide_in));
    const line = between_kN_m(head, 0, width_mm);
    tally.add(
      member({
        part: "boards",
        stuff: boards.label,
        pieces: boards.pieces,
        result: lumberMember(boards.section, 1, boards.allowed, spansIn(long_mm, span_mm), inches(span_mm), poundsPerFoot(line), sags),
        span_mm,
        load: { value: line, unit: "kN/m" },
        documents: ["NDS"],
        doubts: boards.doubts,
        source: boards.lumber.from,
      }),
    );
  }
  const thrust = thrust_kN_m(head);
  tally.fastener("stakes", form.stakes.by, (thrust * span_mm) / 1000, [], "look");
  const plan_m = (ask.upright?.wide_mm ?? 0) / 1000;
  return {
    members: tally.members,
    thrust,
    thrustAt_mm: thrustAt_mm(head),
    oneSided: false,
    lift: judgeLift(tally, lid_kPa(tally, head) * plan_m, "metre", form, 1),
    bracing_kN_m: 0,
    findings: tally.findings,
  };
}
