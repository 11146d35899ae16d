import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dayWidthFor, indexMarks, linkMarks, type Mark, neighbours, sheet, sheetBase } from "../../draw";
import type { Desk } from "../state";
import type { SheetView } from "./view.svelte";

export interface SceneProps {
  readonly view: SheetView;
  readonly build: Build;
  readonly plan: Plan;
  /** An instant. */
  readonly today: number;
  /** Held sideways: larger type, no elevation. */
  readonly phone: boolean;
}

/** The window moves in steps of this, so that most scrolling changes no mark. px */
const windowStep = 320;
/** What is in sight is looked at anew in steps of this. px */
const sightStep = 160;
/** The names of the lanes take at least this of the width. px */
const sideWidth = 140;

/** What of the sheet is on the screen: the drawing, the marks in the window, what is lit. */
export class Scene {
  readonly #desk: Desk;
  readonly #props: () => SceneProps;
  width = $state(1000);
  height = $state(600);
  scrollX = $state(0);
  scrollY = $state(0);
  /** The step that the arrow keys stand on. */
  current = $state<string | null>(null);

  constructor(desk: Desk, props: () => SceneProps) {
    this.#desk = desk;
    this.#props = props;
  }

  /** While something is tried out the sheet shows what would follow, with ghosts of what is. */
  readonly shown = $derived.by(() => {
    const { build, plan } = this.#props();
    const { trial } = this.#desk;
    return trial ? { build: trial.build, plan: trial.plan, before: { build, plan } } : { build, plan, before: null };
  });

  readonly #asked = $derived.by(() => {
    const { view, today, phone } = this.#props();
    const fitting = dayWidthFor(this.width - (phone ? 170 : 300));
    return {
      ...this.shown,
      scale: view.scale,
      unfolded: view.unfolded,
      slack: view.slack,
      units: this.#desk.units,
      elevation: !phone && this.width > 760,
      today,
      text: phone ? 16 : 14,
      flagRows: phone ? 3 : 6,
      dayWidth: Math.max(28, Math.round(fitting * 1.3 ** view.zoom)),
    };
  });

  readonly #base = $derived(sheetBase(this.#asked));
  readonly #sightAt = $derived(Math.floor(this.scrollX / sightStep) * sightStep);

  readonly #sightTo = $derived(this.#sightAt + this.width - sideWidth + sightStep);

  /** Lanes take the height of what is in sight. */
  readonly sheet = $derived.by(() => {
    const [from, to] = [this.#sightAt, this.#sightTo];
    const whole = this.#asked.scale === "whole";
    const { axis } = this.#base;
    return sheet({ ...this.#asked, sight: whole ? null : { from: axis.t(from), to: axis.t(to) } }, this.#base);
  });

  readonly time = $derived(siteTime(this.shown.build.site.zone, this.shown.build.start));
  readonly selected = $derived.by(() => (this.#desk.selected?.list === "steps" ? this.#desk.selected.id : null));
  readonly place = $derived.by(() => (this.#desk.selected?.list === "places" ? this.#desk.selected.id : null));
  readonly #index = $derived(this.selected === null ? null : (this.shown.build.at.step.get(this.selected) ?? null));
  readonly #near = $derived(this.#index === null ? null : neighbours(this.shown.plan, this.#index));

  /** Lines from the causes of the chosen step and to its consequences. */
  readonly links = $derived(
    this.#index === null || !this.#near || this.#asked.scale === "whole" ? [] : linkMarks(this.sheet, this.#index, this.#near),
  );

  readonly #lit = $derived(
    this.#near && this.#index !== null
      ? new Set([this.#index, ...this.#near.causes, ...this.#near.consequences].map((step) => this.shown.build.steps[step]!.id as string))
      : null,
  );

  /** Which marks are drawn pale; null while nothing is chosen. The chalk line stays. */
  readonly faded = $derived.by(() => {
    const lit = this.#lit;
    return lit ? (mark: Mark) => mark.of?.list === "steps" && !lit.has(mark.of.id) && !mark.role.startsWith("chalk") : null;
  });

  /** What is drawn, from left to right: what is in sight, and a little more where that costs no height. */
  readonly left = $derived.by(() => {
    const whole = this.#asked.scale === "whole";
    return whole ? Math.floor(this.scrollX / windowStep) * windowStep - windowStep : this.#sightAt;
  });
  readonly right = $derived.by(() => {
    const whole = this.#asked.scale === "whole";
    return whole ? this.left + this.width + 3 * windowStep : this.#sightTo;
  });
  readonly #top = $derived(Math.floor(this.scrollY / windowStep) * windowStep - windowStep);
  readonly #bottom = $derived(this.#top + this.height + 3 * windowStep);

  readonly #indexes = $derived({
    head: indexMarks(this.sheet.part.head.marks),
    body: indexMarks(this.sheet.part.body.marks),
    foot: indexMarks(this.sheet.part.foot.marks),
  });

  readonly marks = $derived.by(() => {
    const across = { x0: this.left, x1: this.right, y0: 0, y1: 10_000 };
    const kept = new Set([this.selected, this.current].flatMap((id) => (id === null ? [] : [`steps ${id}`])));
    return {
      head: this.#indexes.head.within(across),
      body: this.#indexes.body.within({ ...across, y0: this.#top, y1: this.#bottom }, kept),
      foot: this.#indexes.foot.within(across),
    };
  });

  /** Blocks in the window, and always the chosen one and the one the keys stand on. */
  readonly blocks = $derived.by(() => {
    const idOf = (step: number) => this.shown.build.steps[step]!.id as string;
    const near = ({ from, to, y0, y1 }: { from: number; to: number; y0: number; y1: number }) =>
      to >= this.left && from <= this.right && y1 >= this.#top && y0 <= this.#bottom;
    return (
      [...this.sheet.blocks.values()]
        .filter((block) => near(block) || idOf(block.step) === this.current || idOf(block.step) === this.selected)
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

  /**
   * The elevation stays in sight and its leader lines follow the lanes. It is built up to the step that is chosen, else to today.
   */
  readonly structure = $derived.by(() => {
    const { head, foot, body } = this.sheet.part;
    const room = Math.max(80, this.height - head.height - (this.#props().phone ? 0 : foot.height));
    const built = this.#index === null ? this.#props().today : (this.shown.plan.steps[this.#index]?.finish ?? this.#props().today);
    return this.sheet.structure({ from: this.scrollY, to: Math.min(this.scrollY + room, Math.max(body.height, this.scrollY + 80)) }, built);
  });
}
