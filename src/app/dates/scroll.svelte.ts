import { tick, untrack } from "svelte";
import type { Scene, SceneProps } from "./scene.svelte";

/** Where the sheet is scrolled to: what opens it, what brings a step into sight, what keeps things in their place when lanes or scale change. */
export class Scroll {
  readonly #scene: Scene;
  readonly #props: () => SceneProps;
  frame = $state<HTMLDivElement>();
  /** The instant at the left edge. */
  #leftmost = 0;
  #opened = false;
  #shape = "";
  #anchor: { readonly key: string; readonly y0: number } | null = null;

  constructor(scene: Scene, props: () => SceneProps) {
    this.#scene = scene;
    this.#props = props;
    $effect(() => this.#holdMiddle());
    $effect.pre(() => this.#holdDay());
    $effect(() => this.#showChosen());
    $effect(() => this.#open());
  }

  readonly moved = (): void => {
    if (!this.frame) return;
    this.#scene.scrolled(this.frame.scrollLeft, this.frame.scrollTop);
    this.#leftmost = this.#scene.sheet.axis.t(this.#scene.scrollX);
  };

  #settle(): void {
    this.moved();
    this.#scene.settle();
  }

  /** Brings a step into sight: sideways first, since that may change the height of the lanes. */
  async reveal(step: number): Promise<void> {
    const { frame } = this;
    const { sheet, width } = this.#scene;
    const block = sheet.blocks.get(step);
    if (!block || !frame) return;
    const roomX = width - sheet.part.side.width;
    if (block.x0 < frame.scrollLeft + 20 || block.x1 > frame.scrollLeft + roomX - 60) frame.scrollLeft = Math.max(0, block.x0 - roomX / 3);
    this.#settle();
    await tick();
    const { part, blocks } = this.#scene.sheet;
    const { y0, y1 } = blocks.get(step) ?? block;
    const roomY = this.#scene.height - part.head.height - (this.#props().phone ? 0 : part.foot.height);
    if (y0 < frame.scrollTop + 10 || y1 > frame.scrollTop + roomY - 10) frame.scrollTop = Math.max(0, y0 - roomY / 2);
    this.moved();
  }

  /** To a step by the arrow keys: it comes into sight and takes the focus. */
  async goTo(step: number): Promise<void> {
    const id = this.#scene.shown.build.steps[step]!.id;
    this.#scene.current = id;
    await this.reveal(step);
    await tick();
    this.frame?.querySelector<SVGElement>(`[data-step="${CSS.escape(id)}"]`)?.focus({ preventScroll: true });
  }

  /** Lanes change their height once the sheet comes to rest: what stands in the middle of the screen stays there. */
  #holdMiddle(): void {
    const { lanes, part } = this.#scene.sheet;
    untrack(() => {
      const { frame } = this;
      if (!frame) return;
      const kept = this.#anchor === null ? undefined : lanes.find(({ key }) => key === this.#anchor?.key);
      if (kept && this.#anchor && kept.y0 !== this.#anchor.y0) {
        frame.scrollTop += kept.y0 - this.#anchor.y0;
        this.moved();
      }
      const middle = frame.scrollTop + (this.#scene.height - part.head.height) / 2;
      const lane = lanes.find(({ y1 }) => y1 >= middle);
      this.#anchor = lane ? { key: lane.key, y0: lane.y0 } : null;
    });
  }

  /** Another scale, or wider days: the same day stays at the left edge. */
  #holdDay(): void {
    const { view } = this.#props();
    const now = `${view.scale} ${view.unfolded} ${view.zoom}`;
    const { axis } = this.#scene.sheet;
    untrack(() => {
      if (now !== this.#shape && this.#shape !== "") {
        const x = axis.x(this.#leftmost);
        const inside = this.frame?.contains(document.activeElement) ?? false;
        void tick().then(() => {
          const { frame } = this;
          if (!frame) return;
          frame.scrollLeft = x;
          this.#settle();
          // The step that had the focus may not be drawn at this scale; the keys go on working.
          if (inside && !frame.contains(document.activeElement)) frame.focus({ preventScroll: true });
        });
      }
      this.#shape = now;
    });
  }

  /** What is chosen elsewhere, in a list or the side sheet, is brought into sight here. */
  #showChosen(): void {
    const id = this.#scene.selected;
    if (id === null) return;
    untrack(() => {
      const step = this.#scene.shown.build.at.step.get(id);
      if (step !== undefined) void this.reveal(step);
    });
  }

  /** Opens a little before today, with the next step in sight; after the last day at the end. */
  #open(): void {
    if (this.#opened || !this.frame) return;
    this.#opened = true;
    untrack(() => {
      const { frame } = this;
      if (!frame) return;
      const { columns, x, width } = this.#scene.sheet.axis;
      const { today, plan } = this.#props();
      if (today >= columns[columns.length - 1]!.to) frame.scrollLeft = width;
      else if (today > columns[0]!.from) frame.scrollLeft = Math.max(0, x(today) - 120);
      this.#settle();
      const next = plan.steps.reduce(
        (best, { start, finish }, step) => (finish > today && (best < 0 || start < plan.steps[best]!.start) ? step : best),
        -1,
      );
      if (next >= 0) void this.reveal(next);
    });
  }
}
