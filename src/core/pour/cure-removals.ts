import { type ElapsedMinute, type Finding, never, toModel } from "../base";
import { type Amount, isLoad, isVault, isVouched, type Pour, type Removal, type Wait } from "../build";
import { type CureContext, later } from "./cure-context";
import { found } from "./found";
import type { RemovalSheet } from "./result";

/** What carries, or is made to: it holds until its strength is shown. */
const carries = (pour: Pour, removal: Removal): boolean => removal.sort === "soffit" || removal.sort === "shores" || isLoad(pour, removal);

/** Where no share is written. */
const usual_share = 700;
const bare_psi = 500;

/**
 * Everything that waits for the pour, with every ground looked at. The grounds are those of the waits that the build made of it, so that what is told is what
 * was planned by.
 */
export function removalSheets(c: CureContext): RemovalSheet[] {
  const waits = c.build.waits.filter((wait) => wait.removal?.pour === c.pour.id);
  return c.pour.removals.flatMap((removal): RemovalSheet[] => {
    const step = c.build.at.step.get(removal.step);
    const planned = step === undefined ? undefined : c.dates.start[step];
    if (step === undefined || planned === undefined) return [];
    const grounds = waits
      .filter((wait) => wait.removal?.sort === removal.sort && wait.to === removal.step)
      .map((wait) => groundOf(c, removal, wait));
    let governs = grounds.length === 0 ? -1 : 0;
    grounds.forEach(({ at }, i) => {
      if (at > (grounds[governs]?.at ?? 0)) governs = i;
    });
    const spoken = grounds.some(({ by }) => by === "shown") || (removal.days !== null && isVouched(removal.saidBy));
    return [{ removal, step, planned, grounds, governs, hold: carries(c.pour, removal) && !spoken, saidBy: removal.saidBy }];
  });
}

type Ground = RemovalSheet["grounds"][number];

function groundOf(c: CureContext, removal: Removal, { least, removal: made }: Wait): Ground {
  const by = made?.ground ?? "days";
  if (by === "shown") return { by, at: shownAt(c, removal), detail: { share: shareOf(c.pour, removal) } };
  const at = least === null ? c.placed : c.clocks.of(least.on).advance(c.placed, least.amount);
  const span: Record<string, number> = by === "table" && removal.span_mm !== null ? { span_mm: removal.span_mm } : {};
  return { by, at: Math.min(never, at) as ElapsedMinute, detail: { ...figureOf(least), ...span } };
}

function figureOf(least: Amount | null): Readonly<Record<string, number>> {
  if (least === null) return {};
  if (least.on.kind === "strength") return { share: least.amount };
  return { days: least.on.kind === "days" ? least.amount : Math.round((100 * least.amount) / 1440) / 100 };
}

/** As the build has it: 500 psi for faces that carry nothing. */
function shareOf({ mix }: Pour, { share, sort }: Removal): number {
  return share ?? (sort === "sides" ? Math.ceil((1000 * toModel("pressure", bare_psi, "psi")) / mix.strength_MPa - 1e-6) : usual_share);
}

/** When a result first showed the share asked for. */
function shownAt(c: CureContext, removal: Removal): ElapsedMinute {
  const wanted = (shareOf(c.pour, removal) / 1000) * c.pour.mix.strength_MPa;
  const times = c.pour.breaks
    .filter((b) => isVouched(b.by) && b.strength_MPa >= wanted - 1e-9)
    .map(({ at }) => c.clocks.time.minuteOf(at) ?? c.placed);
  return Math.max(c.placed, Math.min(...times, never)) as ElapsedMinute;
}

/** What is to be asked before something is stacked or stood on it. */
export function loadFindings(c: CureContext, sheets: readonly RemovalSheet[]): Finding[] {
  const bare = sheets.filter(({ removal }) => removal.sort === "shores" || (removal.sort === "soffit" && !removal.shoresStay));
  return sheets
    .filter(({ removal }) => isLoad(c.pour, removal))
    .map(({ step, planned }) => {
      const shored = bare.length > 0 && bare.every((other) => other.planned > planned);
      return found(c.pour, "cure.load", "look", { step: c.build.steps[step]?.id ?? "", shored, vault: isVault(c.pour) }, "removals");
    });
}

/** A wall bears earth once it is anchored at its top or braced (IRC R404.1.7, read), whatever its strength: told for every wall that is filled against. */
export function backfillFindings({ build, pour }: CureContext, sheets: readonly RemovalSheet[]): Finding[] {
  if (!pour.elements.some(({ shape }) => shape.kind === "wall")) return [];
  return sheets
    .filter(({ removal }) => removal.sort === "backfill")
    .map(({ step }) => found(pour, "cure.backfill", "look", { step: build.steps[step]?.id ?? "" }, "removals"));
}

/** Below this a day does not count: 50 °F, as in the table of ACI 347R. */
const counts_C = 10;

/** Days said for what carries are meant for ordinary weather: told where many of them are cold. Days under covers that hold the warmth count. */
export function coldDayFindings(c: CureContext, sheets: readonly RemovalSheet[]): Finding[] {
  const { held_C, heldFor_min } = c.pour.cure;
  const { time } = c.clocks;
  const first = time.dayOf(c.placed);
  const kept = held_C !== null && held_C >= counts_C ? Math.floor((heldFor_min ?? 0) / 1440) : 0;
  return sheets.flatMap(({ removal, step, grounds }) => {
    const ground = grounds.find(({ by }) => by === "days");
    if (ground === undefined || !carries(c.pour, removal) || !isVouched(removal.saidBy) || ground.at >= never) return [];
    const days = Math.round((ground.at - c.placed) / 1440);
    const mild = Array.from({ length: days }, (_, i) => {
      const { low_C, high_C } = c.air.day(first + i);
      return i < kept || (low_C + high_C) / 2 >= counts_C;
    });
    const warm_days = mild.filter(Boolean).length;
    return warm_days >= days
      ? []
      : [found(c.pour, "cure.days-cold", "look", { step: c.build.steps[step]?.id ?? "", days, warm_days }, "removals")];
  });
}

/** The last instant that anything waits for, or shows. */
export function lastOf(c: CureContext, sheets: readonly RemovalSheet[], least: ElapsedMinute): ElapsedMinute {
  const most = later(c.placed, mostShown_days * 1440);
  const times = sheets.flatMap(({ planned, grounds }) => [planned, ...grounds.map(({ at }) => at)]);
  return Math.max(least, ...times.map((t) => Math.min(t, most))) as ElapsedMinute;
}

/** Longer curves are flat. */
const mostShown_days = 120;
