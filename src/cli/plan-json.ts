import { never } from "../core/base";
import type { Build } from "../core/build";
import { siteTime } from "../core/clock";
import type { Plan } from "../core/plan";
import {
  assumptionSentence,
  buildCautions,
  chainSentences,
  closingSentences,
  deferral,
  findingSentence,
  heldClause,
  holdPointSentences,
  voice,
} from "../words";

/** The plan for other programs: local moments as text, amounts in minutes, reasons as sentences. Keys are kept from version to version. */
export function planJson(build: Build, plan: Plan): object {
  const time = siteTime(build.site.zone, build.start);
  const say = voice(build);
  const moment = (t: number | null): string | null => (t === null || Math.abs(t) >= never ? null : time.momentOf(t));
  const findings = plan.findings.map((finding) => ({
    code: finding.code,
    severity: finding.severity,
    says: findingSentence(finding, build),
  }));
  const head = { build: build.id, name: build.name, zone: build.site.zone, engine: plan.engine, status: plan.status, findings };
  if (plan.status !== "planned") return head;
  return {
    ...head,
    finish: moment(plan.finish),
    hand_min: plan.handMinutes,
    steps: build.steps.map((step, i) => {
      const dates = plan.steps[i];
      return dates === undefined
        ? { id: step.id, name: step.name }
        : {
            id: step.id,
            name: step.name,
            start: moment(dates.start),
            finish: moment(dates.finish),
            latestFinish: moment(dates.latestFinish),
            slack_min: dates.slack,
            onChain: dates.onChain,
            people: dates.people,
            held: heldClause(i, plan, say),
          };
    }),
    deliveries: build.deliveries.map(({ id, name }, i) => {
      const dates = plan.deliveries[i];
      return {
        id,
        name,
        arrives: moment(dates?.arrives ?? null),
        neededBy: moment(dates?.neededBy ?? null),
        orderBy: moment(dates?.orderBy ?? null),
      };
    }),
    bookings: build.bookings.map(({ id, name }, i) => ({
      id,
      name,
      at: moment(plan.bookings[i]?.at ?? null),
      bookBy: moment(plan.bookings[i]?.bookBy ?? null),
    })),
    chain: chainSentences(plan, build),
    closings: closingSentences(plan, build),
    holdPoints: holdPointSentences(plan, build),
    cautions: [...buildCautions(build), ...(build.steps.length === 0 ? [] : [{ says: deferral, steps: [] }])],
    assumes: plan.assumes.map(assumptionSentence),
  };
}
