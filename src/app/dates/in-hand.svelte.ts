import type { Sheet } from "../../draw";
import { dateLabel } from "../../draw";
import type { Desk } from "../state";
import { shownName } from "../state/names";
import { dayLater } from "./flag-move";
import type { Scene } from "./scene.svelte";
import { isMovable, laneAt, laneNext, moveStep, type StepAim, type StepMove } from "./step-move";
import { whyNot } from "./why-not";

type Held = { readonly id: string; readonly by: "pointer" | "keys"; readonly aim: StepAim; readonly move: StepMove | null };

interface Pressed {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly touch: boolean;
  /** The sheet as it was taken hold of: under the hand nothing shifts. */
  readonly axis: Sheet["axis"];
  readonly lanes: Sheet["lanes"];
  readonly grip: readonly [x: number, y: number];
  readonly lane: string;
}

/** So far a pointer moves before it is a drag, px; a finger rests so long before it is one, ms: else it scrolls. */
const slack_px = 5;
const rest_ms = 350;

/** A step of the sheet that is taken in hand, by pointer, finger or keys: what would follow is shown until it is let go or given up. */
export class InHand {
  readonly #desk: Desk;
  readonly #scene: Scene;
  readonly #tell: (sentence: string) => void;
  held = $state.raw<Held | null>(null);
  #pressed: Pressed | null = null;
  #resting: ReturnType<typeof setTimeout> | undefined;
  /** A drag ends with a click that means nothing. */
  #dragged = false;

  constructor(desk: Desk, scene: Scene, tell: (sentence: string) => void) {
    this.#desk = desk;
    this.#tell = tell;
    this.#scene = scene;
  }

  mayMove(id: string): boolean {
    const { build, plan } = this.#scene.standing;
    const step = build.steps[build.at.step.get(id as never) ?? -1];
    return !this.#desk.readOnly && !this.#desk.redoing && plan.status === "planned" && step !== undefined && isMovable(step);
  }

  /** True once, after a drag. */
  takeClick(): boolean {
    const was = this.#dragged;
    this.#dragged = false;
    return was;
  }

  press(event: PointerEvent, id: string): void {
    this.#dragged = false;
    if (event.button !== 0 || this.held || !this.mayMove(id)) return;
    const { sheet, standing } = this.#scene;
    const block = sheet.blocks.get(standing.build.at.step.get(id as never) ?? -1);
    if (!block) return;
    const touch = event.pointerType === "touch";
    this.#pressed = {
      id,
      x: event.clientX,
      y: event.clientY,
      touch,
      axis: sheet.axis,
      lanes: sheet.lanes,
      grip: [block.x0, (block.y0 + block.y1) / 2],
      lane: sheet.lanes[block.lane]?.key ?? "",
    };
    this.#scene.current = id;
    if (touch) this.#resting = setTimeout(() => this.#take("pointer", id), rest_ms);
    else (event.currentTarget as Element).setPointerCapture(event.pointerId);
  }

  drag(event: PointerEvent): void {
    const pressed = this.#pressed;
    if (!pressed) return;
    const [dx, dy] = [event.clientX - pressed.x, event.clientY - pressed.y];
    if (!this.held) {
      if (Math.max(Math.abs(dx), Math.abs(dy)) < slack_px) return;
      // A finger that moves before it has rested scrolls the sheet.
      if (pressed.touch) {
        this.release(false);
        return;
      }
      this.#take("pointer", pressed.id);
    }
    const lane = laneAt(pressed.lanes, pressed.grip[1] + dy);
    const stands = this.#standsOn(pressed.id);
    const date = this.#scene.time.local(pressed.axis.t(pressed.grip[0] + dx)).date;
    this.#aim({
      date: Math.abs(dx) < slack_px || date === stands ? null : date,
      place: lane === null || lane.key === pressed.lane ? null : lane.place,
      fixed: event.altKey,
    });
  }

  /** Lets go: kept, or given up. */
  release(keep: boolean): void {
    clearTimeout(this.#resting);
    this.#pressed = null;
    const { held } = this;
    if (!held) return;
    const [cannot, name] = [whyNot(this.#desk), this.#nameOf(held.id)];
    this.held = null;
    this.#dragged = held.by === "pointer";
    this.#desk.tryOut(null);
    const { move } = held;
    // What leaves no dates is told and not done: a hand that slips takes no plan away.
    if (keep && cannot !== "") this.#tell(`${name} stays where it was. ${cannot}`);
    else if (keep && move && move.edits.length > 0) this.#desk.edit(move.edits, move.words);
    else this.#desk.say(`${name} stays.`);
  }

  /** False for a key that means nothing to it. */
  key(event: KeyboardEvent, id: string): boolean {
    const mine = this.held?.by === "keys" && this.held.id === id ? this.held : null;
    if (!mine) {
      if (event.key !== " " || !this.mayMove(id)) return false;
      this.#scene.current = id;
      this.#take("keys", id);
      return true;
    }
    const days = { ArrowLeft: -1, ArrowRight: 1, PageUp: -7, PageDown: 7 }[event.key];
    if (event.key === " " || event.key === "Enter") this.release(true);
    else if (event.key === "Escape") this.release(false);
    else if (event.key.toLowerCase() === "f") this.#aim({ ...mine.aim, date: mine.aim.date ?? this.#standsOn(id), fixed: !mine.aim.fixed });
    else if (days !== undefined) this.#aim({ ...mine.aim, date: this.#later(mine, days) });
    else if (event.key === "ArrowUp" || event.key === "ArrowDown") this.#toLane(mine, event.key === "ArrowUp" ? -1 : 1);
    else return event.key.length === 1;
    return true;
  }

  #later({ id, aim }: Held, days: number): string {
    const { build } = this.#scene.standing;
    const to = dayLater(this.#scene.time, aim.date ?? this.#standsOn(id), days);
    if (to < build.start) return build.start;
    return to;
  }

  #toLane({ id, aim }: Held, by: 1 | -1): void {
    const { lanes } = this.#scene.sheet;
    const { build } = this.#scene.standing;
    const step = build.steps[build.at.step.get(id as never) ?? -1];
    const here = aim.place ?? step?.place ?? "";
    const next = laneNext(lanes, here === "" ? "none" : here, by);
    if (next) this.#aim({ ...aim, place: next.place < 0 ? "" : next.key });
  }

  #standsOn(id: string): string {
    const { build, plan } = this.#scene.standing;
    return this.#scene.time.local(plan.steps[build.at.step.get(id as never) ?? -1]?.start ?? 0).date;
  }

  #nameOf(id: string): string {
    const { build } = this.#scene.standing;
    return shownName(build.steps[build.at.step.get(id as never) ?? -1]);
  }

  #take(by: Held["by"], id: string): void {
    this.held = { id, by, aim: { date: null, place: null, fixed: false }, move: null };
    const how =
      by === "keys"
        ? "Left and right move it by a day, Page Up and Page Down by a week, up and down to another place; F fixes it to the day; space lets go, Escape puts it back."
        : "";
    this.#desk.say(`${this.#nameOf(id)} in hand. ${how}`.trim());
  }

  #aim(aim: StepAim): void {
    const { held } = this;
    if (!held || (held.aim.date === aim.date && held.aim.place === aim.place && held.aim.fixed === aim.fixed)) return;
    const { build, plan } = this.#scene.standing;
    const move = moveStep(build, plan, this.#scene.time, held.id, aim);
    this.held = { ...held, aim, move };
    this.#desk.tryOut(move && move.edits.length > 0 ? move.edits : null);
    if (held.by === "keys") this.#desk.say(`${this.words} ${this.#desk.trial?.sentences[0] ?? ""}`.trim());
  }

  /** Where it would go, and why not where it cannot; what would follow stands at the foot of the page. */
  get words(): string {
    const { held } = this;
    if (!held) return "";
    const { time } = this.#scene;
    const { build } = this.#scene.standing;
    const { date, place, fixed } = held.aim;
    const to = [
      date === null ? "" : `${dateLabel(time, time.minuteOf(date) ?? 0)}${fixed ? " exactly" : ""}`,
      place === null ? "" : shownName(build.places[build.at.place.get(place as never) ?? -1]) || "no one place",
    ].filter((part) => part !== "");
    const where = `${this.#nameOf(held.id)}: ${to.length === 0 ? "where it is" : to.join(", ")}.`;
    const why = held.move?.asEarlyAsItCan ? "It starts as early as it can already; its Why tells what holds it." : whyNot(this.#desk);
    return why === "" ? where : `${where} ${why}`;
  }
}
