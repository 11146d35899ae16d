import type { ElapsedMinute, Finding } from "../base";
import type { Build } from "../build";
import { clocksOf, siteTime } from "../clock";
import type { CompareCode } from "./codes";
import type { ChainLink, Comparison, Moved, Plan } from "./plan";
import { workedDays } from "./worked-days";

/**
 * What moved between a plan that was kept and the one there is now; `build` is what the new plan was made of. Steps are matched by id, moments by the site's
 * own time, so that a build that begins on another day can still be compared. Both plans must have dates: else the comparison holds one finding.
 */
export function compare(kept: Plan, now: Plan, build: Build): Comparison {
  const clocks = clocksOf(build);
  const shift = siteTime(build.site.zone, kept.buildStart).epoch_utc_min - clocks.time.epoch_utc_min;
  const finishBefore = (kept.finish + shift) as ElapsedMinute;
  if (kept.status !== "planned" || now.status !== "planned") {
    const status = now.status !== "planned" ? now.status : kept.status;
    return {
      finishBefore,
      finishAfter: now.finish,
      siteDaysLost: 0,
      moved: [],
      stayed: 0,
      through: [],
      findings: [said("compare.no-plan", { status })],
    };
  }
  const place = new Map(kept.ids.map((id, i) => [id, i]));
  const moved: Moved[] = [];
  const movedSteps = new Set<number>();
  let stayed = 0;
  now.ids.forEach((id, s) => {
    const k = place.get(id);
    if (k === undefined) return;
    const before = kept.steps[k]!;
    const after = now.steps[s]!;
    const startBefore = (before.start + shift) as ElapsedMinute;
    if (startBefore === after.start && before.finish + shift === after.finish) {
      stayed++;
      return;
    }
    movedSteps.add(s);
    const siteDays = workedDays(clocks, build.usual, startBefore, after.start);
    moved.push({ step: id, startBefore, startAfter: after.start, siteDays, holder: after.holder });
  });
  const siteDaysLost = workedDays(clocks, build.usual, finishBefore, now.finish);
  const through = finishBefore === now.finish ? longest(now, moved, movedSteps) : fromCause(now.chain, movedSteps, now.steps.length);
  return {
    finishBefore,
    finishAfter: now.finish,
    siteDaysLost,
    moved,
    stayed,
    through,
    findings: verdict(kept, now, shift, { finishBefore, siteDaysLost, moved: moved.length }),
  };
}

/** The part of a chain from the last job before the first that moved. */
function fromCause(chain: readonly ChainLink[], moved: ReadonlySet<number>, steps: number): readonly ChainLink[] {
  const first = chain.findIndex((link) => moved.has(link.job));
  if (first < 0) return [];
  return chain.slice(first > 0 && chain[first - 1]!.job >= steps ? first - 1 : first);
}

/** Where the finish stays: back from the step that moved furthest, through what holds it, as long as that moved too. */
function longest(now: Plan, moved: readonly Moved[], set: ReadonlySet<number>): readonly ChainLink[] {
  let last = -1;
  let most = 0;
  const place = new Map(now.ids.map((id, i) => [id, i]));
  for (const m of moved) {
    const by = Math.abs(m.startAfter - m.startBefore);
    if (by <= most) continue;
    most = by;
    last = place.get(m.step)!;
  }
  const out: ChainLink[] = [];
  for (let s = last; s >= 0 && !out.some((link) => link.job === s); ) {
    const { holder, start } = now.steps[s]!;
    out.push({ job: s, holder, ready: start });
    if (holder.kind === "delivery") {
      const d = now.deliveries[holder.delivery]!;
      out.push({ job: now.steps.length + holder.delivery, holder: { kind: "not-before", date: d.arrives }, ready: d.arrives });
      break;
    }
    const before = "job" in holder ? holder.job : -1;
    s = before >= 0 && before < now.steps.length && set.has(before) ? before : -1;
  }
  return out.reverse();
}

interface Sum {
  readonly finishBefore: ElapsedMinute;
  readonly siteDaysLost: number;
  readonly moved: number;
}

function verdict(kept: Plan, now: Plan, shift: number, sum: Sum): Finding[] {
  const { finishBefore, siteDaysLost } = sum;
  const finishAt = now.finish;
  if (finishAt > finishBefore) return [said("compare.later", { finishAt, beforeAt: finishBefore, siteDays: siteDaysLost })];
  if (finishAt < finishBefore) return [said("compare.earlier", { finishAt, beforeAt: finishBefore, siteDays: -siteDaysLost })];
  if (sum.moved > 0) return [said("compare.inside-slack", { moved: sum.moved, finishAt })];
  const arrived = new Map((kept.deliveryIds ?? []).map((id, i) => [id, kept.deliveries[i]!.arrives + shift]));
  const same: Finding[] = [said("compare.same", { finishAt })];
  now.deliveries.forEach(({ arrives, firstStep }, i) => {
    const delivery = now.deliveryIds?.[i] ?? "";
    const beforeAt = arrived.get(delivery);
    if (beforeAt === undefined || beforeAt === arrives || firstStep < 0) return;
    same.push(said("compare.before-next-site-day", { delivery, beforeAt, arrivesAt: arrives, nextAt: now.steps[firstStep]!.start }));
  });
  return same;
}

function said(code: CompareCode, detail: Finding["detail"]): Finding {
  return { code, severity: "note", where: {}, detail };
}
