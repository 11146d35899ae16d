import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dateLabel } from "../../draw";
import type { Desk } from "../state";
import { shownName } from "../state/names";
import { isMovable, moveStep, type StepMove } from "./step-move";
import { whyNot } from "./why-not";

interface Given {
  readonly build: Build;
  readonly plan: Plan;
}
type Held = { readonly id: string; readonly date: string | null; readonly move: StepMove | null };

/** A finger rests so long before it drags, ms: else it scrolls. So far a mouse moves first, px. */
const rest_ms = 350;
const slack_px = 5;
/** Within so much of the edge the column rolls on under the hand, px, by so much at a time. */
const edge_px = 90;
const roll_px = 14;

/** A job of the column of weekends that is taken in hand and carried to another day. */
export class ColumnHand {
  readonly #desk: Desk;
  readonly #given: () => Given;
  readonly #tell: (sentence: string) => void;
  held = $state.raw<Held | null>(null);
  #pressed: { readonly id: string; readonly y: number; readonly touch: boolean; readonly scroller: Element | null } | null = null;
  #at: readonly [x: number, y: number] = [0, 0];
  #resting: ReturnType<typeof setTimeout> | undefined;
  #rolling: ReturnType<typeof setInterval> | undefined;
  #dragged = false;

  constructor(desk: Desk, given: () => Given, tell: (sentence: string) => void) {
    this.#desk = desk;
    this.#given = given;
    this.#tell = tell;
  }

  /** True once, after a drag: its click means nothing. */
  takeClick(): boolean {
    const was = this.#dragged;
    this.#dragged = false;
    return was;
  }

  press(event: PointerEvent, id: string): void {
    this.#dragged = false;
    const { build, plan } = this.#given();
    const step = build.steps[build.at.step.get(id as never) ?? -1];
    if (event.button !== 0 || this.held || this.#desk.readOnly || this.#desk.redoing || plan.status !== "planned") return;
    if (!step || !isMovable(step)) return;
    const touch = event.pointerType === "touch";
    this.#at = [event.clientX, event.clientY];
    this.#pressed = { id, y: event.clientY, touch, scroller: (event.currentTarget as Element).closest("main") };
    if (touch) this.#resting = setTimeout(() => this.#take(id), rest_ms);
    else (event.currentTarget as Element).setPointerCapture(event.pointerId);
  }

  drag(event: PointerEvent): void {
    const pressed = this.#pressed;
    if (!pressed) return;
    this.#at = [event.clientX, event.clientY];
    if (!this.held) {
      if (Math.abs(event.clientY - pressed.y) < slack_px) return;
      if (pressed.touch) {
        this.release(false);
        return;
      }
      this.#take(pressed.id);
    }
    this.#over();
  }

  release(keep: boolean): void {
    clearTimeout(this.#resting);
    clearInterval(this.#rolling);
    this.#pressed = null;
    const { held } = this;
    if (!held) return;
    const [cannot, name] = [whyNot(this.#desk), this.#nameOf(held.id)];
    this.held = null;
    this.#dragged = true;
    this.#desk.tryOut(null);
    if (keep && cannot !== "") this.#tell(`${name} stays where it was. ${cannot}`);
    else if (keep && held.move?.asEarlyAsItCan) this.#tell(`${name} starts as early as it can already; its Why tells what holds it.`);
    else if (keep && held.move && held.move.edits.length > 0) this.#desk.edit(held.move.edits, held.move.words);
    else this.#desk.say(`${name} stays.`);
  }

  /** Where it would go, and why not where it cannot. */
  get words(): string {
    const { held } = this;
    if (!held) return "";
    const { build } = this.#given();
    const time = siteTime(build.site.zone, build.start);
    const to = held.date === null ? "carry it to another day" : dateLabel(time, time.minuteOf(held.date) ?? 0);
    return [`${this.#nameOf(held.id)}: ${to}.`, whyNot(this.#desk)].filter((part) => part !== "").join(" ");
  }

  #nameOf(id: string): string {
    const { build } = this.#given();
    return shownName(build.steps[build.at.step.get(id as never) ?? -1]);
  }

  #take(id: string): void {
    this.held = { id, date: null, move: null };
    this.#rolling = setInterval(() => this.#roll(), 16);
    this.#desk.say(`${this.#nameOf(id)} in hand.`);
  }

  #roll(): void {
    const { scroller } = this.#pressed ?? {};
    if (!scroller) return;
    const { top, bottom } = scroller.getBoundingClientRect();
    const y = this.#at[1];
    const by = y < top + edge_px ? -roll_px : y > bottom - edge_px ? roll_px : 0;
    if (by === 0) return;
    scroller.scrollTop += by;
    this.#over();
  }

  /** The day under the hand. */
  #over(): void {
    const { held } = this;
    if (!held) return;
    const day = document
      .elementsFromPoint(...(this.#at as [number, number]))
      .map((element) => element.closest<HTMLElement>("[data-day]"))
      .find((found) => found !== null);
    const date = day?.dataset.day ?? null;
    if (date === held.date || date === null) return;
    const { build, plan } = this.#given();
    const time = siteTime(build.site.zone, build.start);
    const stands = time.local(plan.steps[build.at.step.get(held.id as never) ?? -1]?.start ?? 0).date;
    const move = date === stands ? null : moveStep(build, plan, time, held.id, { date, place: null, fixed: false });
    this.held = { ...held, date, move };
    this.#desk.tryOut(move && move.edits.length > 0 ? move.edits : null);
  }
}
