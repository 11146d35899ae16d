import { tick, untrack } from "svelte";
import type { Scene, SceneProps } from "./scene.svelte";

/** Where the sheet is scrolled to: what opens it, what brings a step into sight, what keeps things in their place when lanes or scale change. */
export class Scroll {
  readonly #scene: Scene;
  readonly #props: () => SceneProps;
  frame = $state<HTMLDivElement>();
  /** The instant at the left edge. */
  #leftmost = 0;
  /** What stays under the fingers when the days change their width: an instant, so many px from the left edge. */
  #fixed: { readonly t: number; readonly from: number } | null = null;
  #opened = false;
  #shape = "";
  /** The sheet was held somewhere else than it is scrolled to; `focus`: the focus was in it. */
  #held: { readonly focus: boolean } | null = null;
  #anchor: { readonly key: string; readonly y0: number } | null = null;

  constructor(scene: Scene, props: () => SceneProps) {
    this.#scene = scene;
    this.#props = props;
    $effect.pre(() => {
      const { look } = this.#props().view;
      untrack(() => scene.follow(look, (axis) => this.#restsOn(axis), this.#shape === ""));
    });
    $effect.pre(() => this.#hold());
    $effect(() => () => scene.leave());
    $effect(() => this.#follow());
    $effect(() => this.#showChosen());
    $effect(() => this.#open());
  }

  /** The next change of the width of a day leaves what stands so many px from the left edge where it is. */
  fix(from: number): void {
    this.#fixed = { t: this.#scene.axis.t(this.#scene.scrollX + from), from };
  }

  /** How far the sheet is scrolled on another axis, px. */
  #restsOn(axis: Scene["axis"]): number {
    const { t, from } = this.#fixed ?? { t: this.#leftmost, from: 0 };
    return Math.max(0, Math.round(axis.x(t) - from));
  }

  readonly onscroll = (): void => {
    const { frame } = this;
    // What the sheet itself was put to is known already, and must be there to be touched at once.
    if (frame && (frame.scrollLeft !== this.#scene.scrollX || frame.scrollTop !== this.#scene.scrollY)) this.#scene.movedByHand();
    this.#moved();
  };

  #moved(): void {
    if (!this.frame) return;
    const { scrollLeft, scrollTop } = this.frame;
    // Where the sheet itself was put, the day at the edge is known better than from whole pixels.
    if (scrollLeft !== this.#scene.scrollX) this.#leftmost = this.#scene.axis.t(scrollLeft);
    this.#scene.scrolled(scrollLeft, scrollTop);
  }

  #settle(): void {
    this.#moved();
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
    this.#moved();
  }

  /** To a step by the arrow keys: it comes into sight and takes the focus. */
  async goTo(step: number): Promise<void> {
    const id = this.#scene.shown.build.steps[step]!.id;
    this.#scene.current = id;
    await this.reveal(step);
    this.#scene.late = false;
    await tick();
    this.frame?.querySelector<SVGElement>(`[data-step="${CSS.escape(id)}"]`)?.focus({ preventScroll: true });
  }

  /**
   * Another scale, or wider days: the same day stays at the left edge. Lanes that change their height: what stands in the middle of the screen stays there.
   * Worked out before anything is drawn, so that it is drawn once.
   */
  #hold(): void {
    const scene = this.#scene;
    const { axis, look } = scene;
    const shape = `${look.scale} ${look.unfolded} ${look.zoom}`;
    untrack(() => {
      if (shape !== this.#shape && this.#shape !== "" && this.frame) {
        scene.scrollX = this.#restsOn(axis);
        if (this.#fixed) this.#leftmost = axis.t(scene.scrollX);
        this.#fixed = null;
        scene.settle();
        this.#held = { focus: this.frame.contains(document.activeElement) };
      }
      this.#shape = shape;
    });
    const { lanes, part } = scene.sheet;
    untrack(() => {
      const kept = this.#anchor === null ? undefined : lanes.find(({ key }) => key === this.#anchor?.key);
      if (this.frame && kept && this.#anchor && kept.y0 !== this.#anchor.y0) {
        scene.scrollY = Math.max(0, Math.round(scene.scrollY + kept.y0 - this.#anchor.y0));
        this.#held ??= { focus: false };
      }
      const middle = scene.scrollY + (scene.height - part.head.height) / 2;
      const lane = lanes.find(({ y1 }) => y1 >= middle);
      this.#anchor = lane ? { key: lane.key, y0: lane.y0 } : null;
    });
  }

  /** What is scrolled follows, once the sheet has its new size. */
  #follow(): void {
    void this.#scene.sheet;
    untrack(() => {
      const [{ frame }, held] = [this, this.#held];
      this.#held = null;
      if (!frame || !held) return;
      const { scrollX, scrollY } = this.#scene;
      frame.scrollTo(scrollX, scrollY);
      // There may be less to scroll than was wanted.
      if (Math.abs(frame.scrollLeft - scrollX) > 1 || Math.abs(frame.scrollTop - scrollY) > 1) this.#settle();
      // The step that had the focus may not be drawn at this scale; the keys go on working.
      if (held.focus && !frame.contains(document.activeElement)) frame.focus({ preventScroll: true });
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
      const { today, plan, build } = this.#props();
      if (today >= columns[columns.length - 1]!.to) frame.scrollLeft = width;
      else if (today > columns[0]!.from) frame.scrollLeft = Math.max(0, x(today) - 120);
      this.#settle();
      const next = plan.steps.reduce(
        (best, { start, finish }, step) =>
          finish > today && !build.steps[step]?.done && (best < 0 || start < plan.steps[best]!.start) ? step : best,
        -1,
      );
      if (next >= 0) void this.reveal(next);
    });
  }
}
