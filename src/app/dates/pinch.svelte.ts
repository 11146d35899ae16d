import { untrack } from "svelte";
import { on } from "svelte/events";
import { alike } from "../state/same";
import type { InHand } from "./in-hand.svelte";
import type { Scene } from "./scene.svelte";
import type { Scroll } from "./scroll.svelte";
import type { SheetView } from "./view.svelte";
import { stepOfZoom, stepsOfZoom } from "./zoom";

const apart = ([one, other]: readonly Touch[]): number => (one && other ? Math.abs(one.clientX - other.clientX) : 0);
const middle = ([one, other]: readonly Touch[]): number => (one && other ? (one.clientX + other.clientX) / 2 : 0);
/** Fingers nearer to each other than this tell no width. px */
const nearest = 24;

/**
 * Two fingers on the sheet make days wider or narrower. While they move the drawing is stretched as it is, which costs the page nothing; it is drawn anew once,
 * when they let go, and stays stretched until that is there.
 */
export class Pinch {
  readonly #scene: Scene;
  readonly #scroll: Scroll;
  readonly #hand: InHand;
  readonly #view: () => SheetView;
  /** How far the fingers were apart, and where between them the sheet stays, from the left edge. px */
  #from: { readonly apart: number; readonly at: number } | null = null;
  #times = 1;
  #stretched: readonly SVGElement[] = [];

  constructor(scene: Scene, scroll: Scroll, hand: InHand, view: () => SheetView) {
    this.#scene = scene;
    this.#scroll = scroll;
    this.#hand = hand;
    this.#view = view;
    $effect(() => {
      if (alike(view().look, scene.look)) untrack(() => this.#loosen());
    });
  }

  readonly watch = (frame: HTMLElement): (() => void) => {
    const off = [
      on(frame, "touchstart", (event) => this.#start(frame, [...event.touches]), { passive: true }),
      on(
        frame,
        "touchmove",
        (event) => {
          if (!this.#from) return;
          if (event.cancelable) event.preventDefault();
          this.#stretch(apart([...event.touches]) / this.#from.apart);
        },
        { passive: false },
      ),
      on(frame, "touchend", () => this.#end(true)),
      on(frame, "touchcancel", () => this.#end(false)),
    ];
    return () => {
      for (const one of off) one();
    };
  };

  #start(frame: HTMLElement, touches: readonly Touch[]): void {
    // A third finger ends it, and what is in hand stays in hand.
    if (this.#from) this.#end(true);
    else if (touches.length === 2) this.#take(frame, touches);
  }

  #take(frame: HTMLElement, touches: readonly Touch[]): void {
    if (this.#hand.held || touches.some(({ target }) => (target as Element).closest(".head"))) return;
    this.#hand.release(false);
    this.#loosen();
    const left = frame.getBoundingClientRect().left + this.#scene.sheet.part.side.width;
    this.#from = { apart: Math.max(nearest, apart(touches)), at: Math.max(0, middle(touches) - left) };
    this.#stretched = [...frame.querySelectorAll<SVGElement>(".head > svg, .body > svg, .foot > svg")];
    const origin = `${this.#scene.scrollX + this.#from.at}px 0`;
    for (const { style } of this.#stretched) [style.willChange, style.transformOrigin] = ["transform", origin];
  }

  #stretch(times: number): void {
    const { zoom, scale } = this.#view();
    // As far as there are steps of zoom, and a little more, so that one feels the end.
    const least = scale === "whole" ? 1 : stepOfZoom ** (stepsOfZoom(0.01, zoom) - 0.3);
    const most = scale === "whole" ? stepOfZoom : stepOfZoom ** (stepsOfZoom(100, zoom) + 0.3);
    this.#times = Math.max(least, Math.min(most, times));
    for (const { style } of this.#stretched) style.transform = `scaleX(${this.#times})`;
  }

  #end(keep: boolean): void {
    const from = this.#from;
    if (!from) return;
    this.#from = null;
    const view = this.#view();
    const steps = view.scale === "whole" ? Math.sign(stepsOfZoom(this.#times, 0)) : stepsOfZoom(this.#times, view.zoom);
    const by = keep ? steps : 0;
    if (by !== 0) {
      this.#scroll.fix(from.at);
      view.closer(by);
    }
    if (alike(view.look, this.#scene.look)) this.#loosen();
  }

  #loosen(): void {
    for (const { style } of this.#stretched) [style.transform, style.transformOrigin, style.willChange] = ["", "", ""];
    this.#stretched = [];
    this.#times = 1;
  }
}
