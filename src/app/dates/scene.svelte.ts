import { type Block, linkMarks, type Mark, neighbours, type Sheet } from "../../draw";
import { Drawn } from "./drawn.svelte";

export type { SceneProps } from "./drawn.svelte";

/** The window moves in steps of this, so that most scrolling changes no mark. px */
const windowStep = 80;

/** What of the sheet is on the screen: the marks in the window, what is lit, what is touched. */
export class Scene extends Drawn {
  /** The step that the arrow keys stand on. */
  current = $state<string | null>(null);

  readonly selected = $derived.by(() => (this.desk.selected?.list === "steps" ? this.desk.selected.id : null));
  readonly place = $derived.by(() => (this.desk.selected?.list === "places" ? this.desk.selected.id : null));
  readonly #index = $derived(this.selected === null ? null : (this.shown.build.at.step.get(this.selected) ?? null));
  readonly #near = $derived(this.#index === null ? null : neighbours(this.shown.plan, this.#index));

  /** Lines from the causes of the chosen step and to its consequences. */
  readonly links = $derived(
    this.#index === null || !this.#near || this.look.scale === "whole" ? [] : linkMarks(this.sheet, this.#index, this.#near),
  );

  readonly #lit = $derived.by(() => {
    if (!this.#near || this.#index === null) return this.props().lit;
    return new Set(
      [this.#index, ...this.#near.causes, ...this.#near.consequences].map((step) => this.shown.build.steps[step]!.id as string),
    );
  });

  /** Which marks are drawn pale; null while nothing is chosen. The chalk line stays. */
  readonly faded = $derived.by(() => {
    const lit = this.#lit;
    return lit ? (mark: Mark) => mark.of?.list === "steps" && !lit.has(mark.of.id) && !mark.role.startsWith("chalk") : null;
  });

  /** What is drawn: what is in sight and, unless it was only just shown, a little more. */
  readonly left = $derived(this.bare ? this.scrollX : Math.floor(this.scrollX / windowStep) * windowStep - windowStep);
  // Beside the names there is less room than the frame is wide: what begins to be scrolled to is drawn all the same.
  readonly right = $derived(this.bare ? this.scrollX + this.width - this.sheet.part.side.width : this.left + this.width + windowStep);
  readonly #top = $derived(this.bare ? this.scrollY : Math.floor(this.scrollY / windowStep) * windowStep - windowStep);
  readonly #bottom = $derived(this.#top + this.height + (this.bare ? 0 : 2 * windowStep));

  readonly marks = $derived.by(() => {
    const across = { x0: this.left, x1: this.right, y0: 0, y1: 10_000 };
    const kept = new Set([this.selected, this.current].flatMap((id) => (id === null ? [] : [`steps ${id}`])));
    const up = { y0: this.#top, y1: this.#bottom };
    return {
      head: this.found.head.within(across),
      side: this.found.side.within({ x0: 0, x1: 10_000, ...up }),
      body: this.found.body.within({ ...across, ...up }, kept),
      foot: this.found.foot.within(across),
    };
  });

  /** What is touched is not seen: after a sheet that was worked out ahead, or a push, it follows a frame later, so that neither frame has all the work. */
  #touched: { readonly sheet: Sheet; readonly left: number; readonly right: number } | null = null;
  readonly touched = $derived.by(() => {
    const { sheet, left, right } = this;
    const before = this.#touched;
    if (before === null || (!this.late && (before.sheet !== sheet || before.left !== left || before.right !== right)))
      this.#touched = { sheet, left, right };
    return this.#touched as NonNullable<typeof before>;
  });
  #blocks: readonly { readonly block: Block; readonly id: string }[] = [];

  /** Blocks in the window, and always the chosen one and the one the keys stand on. */
  readonly blocks = $derived.by(() => {
    if (!this.late) this.#blocks = this.#blocksNow;
    return this.#blocks;
  });

  readonly #blocksNow = $derived.by(() => {
    const { steps, at } = this.shown.build;
    const idOf = (step: number) => steps[step]!.id as string;
    const always = [this.current, this.selected].map((id) => (id === null ? undefined : at.step.get(id)));
    const [left, right, top, bottom] = [this.left, this.right, this.#top, this.#bottom];
    return (
      [...this.sheet.blocks.values()]
        .filter(({ step, from, to, y0, y1 }) => (to >= left && from <= right && y1 >= top && y0 <= bottom) || always.includes(step))
        // In the order of the document: an element that changes its place among others loses the focus.
        .sort((a, b) => a.step - b.step)
        .map((block) => ({ block, id: idOf(block.step) }))
    );
  });

  /** The one step that the Tab key enters at. */
  readonly entry = $derived.by(() => {
    const known = [this.current, this.selected].find((id) => id !== null && this.shown.build.at.step.has(id));
    const first = this.blocks.reduce<(typeof this.blocks)[number] | null>(
      (best, one) => (best && best.block.x0 <= one.block.x0 ? best : one),
      null,
    );
    return known ?? first?.id ?? null;
  });

  /** The day up to which the elevation is built: that of the chosen step, else today. */
  readonly builtTo = $derived.by(() => {
    const { today, plan } = this.props();
    return this.#index === null ? today : (plan.steps[this.#index]?.finish ?? today);
  });
  readonly structure = $derived(this.sheet.structure(this.builtTo));

  /** Where the day of the structure stands on the sheet. */
  readonly dayX = $derived.by(() => {
    const { at } = this.props();
    return at === null ? null : this.axis.x(at);
  });

  /** Line from the elevation to the lane of the chosen place. */
  readonly leader = $derived(
    this.place === null ? null : (this.sheet.leaders.find(({ places }) => places.includes(this.place ?? "")) ?? null),
  );
}
