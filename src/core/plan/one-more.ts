import type { Apply } from "../access";
import { type DocumentEdit, type ElapsedMinute, never } from "../base";
import type { Build, Served } from "../build";
import { clocksOf } from "../clock";
import { type Choice, type Offer, type OfferKind, offersOf } from "./one-more-offers";
import type { Plan } from "./plan";
import { plan } from "./plan-of";
import { workedDays } from "./worked-days";

/** What one more of something would buy, and a second: one row for each thing a builder can have more of. */
export interface OneMoreTable {
  /** Of the best plan found for the build as it stands; `never` where it has no dates, and then there are no rows. */
  readonly finish: ElapsedMinute;
  /** Of its plan without a search: later where another order of the work alone is better. */
  readonly planned: ElapsedMinute;
  readonly rows: readonly OneMoreRow[];
  readonly done: boolean;
  /** Plans made, and how many there will be as far as is known; a search counts as one. */
  readonly made: number;
  readonly toMake: number;
}

export interface OneMoreRow {
  readonly kind: OfferKind;
  readonly id: string;
  readonly who: readonly string[];
  readonly number: number;
  /** How many dates were tried for the first; 0 where there is none to choose. */
  readonly dates: number;
  /** What the first buys and, where that is something, what a second buys on top. */
  readonly bought: readonly Bought[];
}

export interface Bought {
  /** Local date of the best of those tried, the first of equals. */
  readonly date: string | null;
  /** Finish of the changed build, planned afresh. */
  readonly finish: ElapsedMinute;
  /** Site days gained over what was there before it, 0 where it buys nothing or less than a site day. */
  readonly siteDays: number;
  /** Minutes by which the finish comes earlier; 0 where it buys nothing. */
  readonly earlier_min: number;
  /** From the document as it stands to the changed one, planned as it was found. */
  readonly edits: readonly DocumentEdit[];
}

/** How builds are planned: the one as it stands and every changed one alike. */
export interface Planners {
  /** Finish of a quick plan, by which one of many dates is chosen; `never` where it finds none. */
  quick(build: Build): ElapsedMinute;
  /** The best plan found by a search that always goes equally far, in portions, and the order of serving that leads to it where that is new. */
  search(build: Build): Generator<void, { readonly plan: Plan; readonly served: Served | null }>;
}

/**
 * Works the table out in portions, so that whoever asks can show how far it is and stop. Every answer is that of the changed document searched afresh. What
 * more of something allows, allows the plan there is too: where the fresh plan ends later it is told as having bought nothing.
 */
export class OneMore {
  private readonly rows: OneMoreRow[] = [];
  private readonly work: Generator<void, void>;
  private finish = never as ElapsedMinute;
  private planned = never as ElapsedMinute;
  private made = 0;
  private toMake = 1;
  private over = false;

  /** @param from local date before which nothing can be added any more */
  constructor(
    private readonly build: Build,
    private readonly edited: Apply,
    private readonly planners: Planners,
    private readonly from = "",
  ) {
    this.work = this.run();
  }

  /** Goes on for so many plans. */
  step(plans: number): void {
    for (let k = 0; k < plans && !this.over; k++) this.over = this.work.next().done === true;
  }

  table(): OneMoreTable {
    const { finish, planned, made, over } = this;
    return { finish, planned, rows: [...this.rows], done: over, made, toMake: over ? made : Math.max(made, this.toMake) };
  }

  private *run(): Generator<void, void> {
    const { plan: now } = yield* this.planners.search(this.build);
    this.made++;
    yield;
    if (now.status !== "planned") return;
    this.finish = now.finish;
    this.planned = plan(this.build).finish;
    const offers = offersOf(this.build, now.finish, this.from).map((offer) => ({ offer, choices: offer.choices(this.build) }));
    for (const { choices } of offers) this.toMake += plansFor(choices);
    for (const { offer, choices } of offers) yield* this.row(offer, choices);
  }

  private *row(offer: Offer, choices: readonly Choice[]): Generator<void, void> {
    const first = yield* this.best(choices, [], this.finish);
    if (first === null) return;
    const { kind, id, who, number } = offer;
    const dates = choices.filter(({ date }) => date !== null).length;
    const at = this.rows.length;
    this.rows[at] = { kind, id, who, number, dates, bought: [first.bought] };
    if (first.bought.earlier_min === 0) return;
    const again = offer.choices(first.build);
    this.toMake += plansFor(again);
    const second = yield* this.best(again, first.bought.edits, first.bought.finish);
    if (second !== null) this.rows[at] = { ...this.rows[at], bought: [first.bought, second.bought] };
  }

  /** The best of the choices by a quick plan, then searched as everything that is answered. */
  private *best(choices: readonly Choice[], before: readonly DocumentEdit[], finish: ElapsedMinute): Generator<void, Best | null> {
    let picked: { readonly build: Build; readonly date: string | null; readonly edits: readonly DocumentEdit[] } | null = null;
    let earliest: number = never;
    for (const { date, edits } of choices) {
      const all = [...before, ...edits];
      const build = this.edited(all);
      if (build === null) continue;
      if (choices.length > 1) {
        const quick = this.planners.quick(build);
        this.made++;
        yield;
        if (picked !== null && quick >= earliest) continue;
        earliest = quick;
      }
      picked = { build, date, edits: all };
    }
    if (picked === null) return null;
    const { plan: found, served } = yield* this.planners.search(picked.build);
    this.made++;
    yield;
    const { build, date } = picked;
    const edits = served === null ? picked.edits : [...picked.edits, { path: ["served"], value: served }];
    return { build: served === null ? build : { ...build, served }, bought: { date, ...this.gain(found, finish), edits } };
  }

  private gain({ status, finish: at }: Plan, before: ElapsedMinute): Pick<Bought, "finish" | "siteDays" | "earlier_min"> {
    const finish = status === "planned" ? at : (never as ElapsedMinute);
    if (finish >= before) return { finish, siteDays: 0, earlier_min: 0 };
    return { finish, siteDays: workedDays(clocksOf(this.build), this.build.usual, finish, before), earlier_min: before - finish };
  }
}

interface Best {
  readonly build: Build;
  readonly bought: Bought;
}

/** One for each date to choose among, and one for the answer. */
function plansFor({ length }: readonly Choice[]): number {
  return length > 1 ? length + 1 : length;
}
