import { asId, toModel, type WaitId } from "../../base";
import { sides_h, soffit_days, soffitShoresStay_days } from "../../concrete";
import type { Amount, Pour, Removal, Wait } from "../model";
import { thousandths } from "../read/amounts";

type Ground = NonNullable<Wait["removal"]>["ground"];

/** What a removal waits for, on one ground. */
interface Grounded {
  readonly ground: Ground;
  readonly least: Amount | null;
}

/** Strength at which a face that carries nothing may be bared, psi (the strength that survives one freeze, quoting ACI 306R; ACI 347R itself gives hours). */
const bare_psi = 500;
/** Expected share for what carries, thousandths (ACI 347R: 70 % where nothing is specified, from memory). */
const usualShare = 700;
/** Own rule on the safe side: without evidence, forms that carry stay 28 warm days (common practice: not under about 28 to 30 days). */
const stays_days = 28;
/** Not before so many days: earth against a wall; a load on anchors (common practice, no source). */
const backfill_days = 7;
const anchors_days = 3;

const day_min = 1440;

function warm(pour: Pour, hours: number): Amount {
  const text = hours % 24 === 0 ? `${hours / 24} warm ${hours === 24 ? "day" : "days"}` : `${hours} warm ${hours === 1 ? "hour" : "hours"}`;
  return { on: { kind: "warm", pour: pour.step }, amount: hours * 60, text: `${text} of ${pour.step}`, from: null };
}

const elapsed = (days: number): Amount => ({ on: { kind: "elapsed" }, amount: days * day_min, text: `${days} d`, from: null });

/** Thousandths of the specified strength at which a removal may go ahead; null: its days alone decide. */
export function shareOf(pour: Pour, removal: Removal): number | null {
  if (removal.share !== null) return removal.share;
  if (removal.sort === "anchors") return null;
  return removal.sort === "sides" ? thousandths(toModel("pressure", bare_psi, "psi") / pour.mix.strength_MPa) : usualShare;
}

function curve(pour: Pour, removal: Removal): Grounded[] {
  const share = shareOf(pour, removal);
  if (share === null) return [];
  const said = removal.share === null && removal.sort === "sides" ? `${bare_psi} psi` : `${share / 10} %`;
  return [
    { ground: "curve", least: { on: { kind: "strength", pour: pour.step }, amount: share, text: `${said} of ${pour.step}`, from: null } },
  ];
}

/** Whether somebody stands for a figure: a guess of one's own is nobody. */
export const isVouched = (by: string | null): boolean => by !== null && by.trim() !== "" && by !== "own guess";

/** Over 20 ft, the last row of the table: what holds where nobody says the span. */
const longestSpan_ft = 21;

function table(pour: Pour, removal: Removal): Grounded {
  const span_ft = removal.span_mm === null ? longestSpan_ft : removal.span_mm / 304.8;
  const days = removal.shoresStay
    ? soffitShoresStay_days(removal.soffit, span_ft, removal.liveExceedsDead)
    : soffit_days(removal.soffit, span_ft, removal.liveExceedsDead).days;
  return { ground: "table", least: warm(pour, days * 24) };
}

/**
 * What carries: days that somebody stands for take the place of the table and the 28 days, and a share written beside them still has to be expected. Days that nobody
 * stands for shorten nothing, nor do none at all.
 */
function carrying(pour: Pour, removal: Removal, said: readonly Grounded[], asked: readonly Grounded[]): readonly Grounded[] {
  const isSaid = said.some(({ least }) => least !== null && least.amount > 0);
  if (isSaid && isVouched(removal.saidBy)) return removal.share === null ? said : [...said, ...curve(pour, removal)];
  return [...asked, ...curve(pour, removal), { ground: "28 days", least: warm(pour, stays_days * 24) }, ...said];
}

/** Whether a pour is a vault with nothing of it that earth could stand beside. */
export function isVault({ elements }: Pour): boolean {
  const kinds = elements.map(({ shape }) => shape.kind);
  return kinds.includes("barrel") && !kinds.some((kind) => kind === "wall" || kind === "column" || kind === "pier" || kind === "footing");
}

/** Whether it is made to carry. Earth over a vault lies on it: whatever it is called, it is no backfill beside a wall. */
export const isLoad = (pour: Pour, { sort }: Removal): boolean => sort === "load" || (sort === "backfill" && isVault(pour));

/** Whether it stays a hold until its strength is shown; all else may go ahead on what is expected. */
export const isHeldUntilShown = (pour: Pour, removal: Removal): boolean =>
  removal.sort === "soffit" || removal.sort === "shores" || isLoad(pour, removal);

/** Everything a removal waits for after the finish of its pour: all of it holds. */
function groundsOf(pour: Pour, removal: Removal): readonly Grounded[] {
  const said: Grounded[] = removal.days === null ? [] : [{ ground: "days", least: removal.days }];
  switch (removal.sort) {
    case "sides":
      return [...(said.length > 0 ? said : [{ ground: "12 h" as const, least: warm(pour, sides_h) }]), ...curve(pour, removal)];
    case "soffit":
    case "shores":
      return carrying(pour, removal, said, [table(pour, removal)]);
    case "load":
      return carrying(pour, removal, said, []);
    case "backfill":
      if (isLoad(pour, removal)) return carrying(pour, removal, said, []);
      return [...(said.length > 0 ? said : [{ ground: "days" as const, least: elapsed(backfill_days) }]), ...curve(pour, removal)];
    default:
      return [...(said.length > 0 ? said : [{ ground: "days" as const, least: elapsed(anchors_days) }]), ...curve(pour, removal)];
  }
}

/** Whether the table of least days is asked and has to be read at its longest span, as nobody says the clear span. */
export function lacksSpan(removal: Removal): boolean {
  const asked = (removal.days === null || !isVouched(removal.saidBy)) && (removal.sort === "soffit" || removal.sort === "shores");
  return asked && removal.soffit !== "arch" && removal.span_mm === null;
}

/** A wait of each ground, or of the break that shows the strength: then only the order is left, and the day is the step's. */
export function waitsOf(pour: Pour, removal: Removal, shown: boolean, ids: (stem: string) => WaitId): Wait[] {
  const grounds: readonly Grounded[] = shown ? [{ ground: "shown", least: null }] : groundsOf(pour, removal);
  return grounds.map(
    ({ ground, least }): Wait => ({
      id: ids(`${pour.id}>${removal.sort}>${ground}`),
      name: "",
      from: pour.step,
      to: removal.step,
      fromEnd: "finish",
      toEnd: "start",
      least,
      most: null,
      visits: null,
      why: removal.saidBy ?? "",
      plain: true,
      removal: { pour: pour.id, sort: removal.sort, ground },
    }),
  );
}

/** Ids that no builder can write (they hold a ">"), each once: the second of a kind is "#2". */
export function numbering(): (stem: string) => WaitId {
  const counts = new Map<string, number>();
  return (stem) => {
    const count = (counts.get(stem) ?? 0) + 1;
    counts.set(stem, count);
    return asId(count === 1 ? stem : `${stem}#${count}`);
  };
}
