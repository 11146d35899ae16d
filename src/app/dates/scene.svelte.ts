import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import { dayWidthFor, indexMarks, linkMarks, type Mark, neighbours, roomBeside, sheet, sheetBase, weekendsIn } from "../../draw";
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
  /** The instant that the structure is drawn for, where one was chosen. */
  readonly at: number | null;
  /** Steps of the part of the structure that was chosen. */
  readonly lit: ReadonlySet<string> | null;
}

/** The window moves in steps of this, so that most scrolling changes no mark. px */
const windowStep = 80;
/** Lanes take the height of what is in sight only once the sheet has come to rest, so that nothing moves up or down under a scrolling hand. ms */
const restAfter = 160;
/** How far one may scroll on what was drawn for the last rest. px */
const beyondRest = 1500;

/** What of the sheet is on the screen: the drawing, the marks in the window, what is lit. */
export class Scene {
  readonly #desk: Desk;
  readonly #props: () => SceneProps;
  width = $state(1000);
  height = $state(600);
  scrollX = $state(0);
  /** Where the sheet was when it last came to rest. */
  #rest = $state(0);
  #resting: ReturnType<typeof setTimeout> | undefined;
  scrollY = $state(0);
  /** The step that the arrow keys stand on. */
  current = $state<string | null>(null);

  constructor(desk: Desk, props: () => SceneProps) {
    this.#desk = desk;
    this.#props = props;
  }

  /** The build and the plan that stand, whatever is tried out. */
  get standing(): { readonly build: Build; readonly plan: Plan } {
    return this.#props();
  }

  /** While something is tried out the sheet shows what would follow, with ghosts of what is; what leaves no dates is only told. */
  readonly shown = $derived.by(() => {
    const { build, plan } = this.#props();
    const { trial } = this.#desk;
    return trial?.plan.status === "planned"
      ? { build: trial.build, plan: trial.plan, before: { build, plan } }
      : { build, plan, before: null };
  });

  readonly time = $derived(siteTime(this.shown.build.site.zone, this.shown.build.start));

  readonly #type = $derived.by(() => {
    const { phone } = this.#props();
    return { elevation: !phone && this.width > 700, text: phone ? 16 : 14, flagRows: phone ? 3 : 4 };
  });

  /** Of the plan that stands: days do not change their width under something that is dragged. */
  readonly #fitting = $derived.by(() => {
    const { build, plan } = this.#props();
    return dayWidthFor({ build, plan, scale: "weekends", ...this.#type }, this.width);
  });

  readonly #asked = $derived.by(() => {
    const { view, today } = this.#props();
    return {
      ...this.shown,
      ...this.#type,
      scale: view.scale,
      unfolded: view.unfolded,
      slack: view.slack,
      units: this.#desk.units,
      today,
      dayWidth: Math.max(24, Math.round(this.#fitting * 1.3 ** view.zoom)),
    };
  });

  readonly #base = $derived(sheetBase(this.#asked));
  /** Before anything is drawn on it. */
  readonly axis = $derived(this.#base.axis);
  readonly #room = $derived(Math.max(100, roomBeside(this.#asked, this.width)));

  /** The name of the scale as it stands: how many weekends are in sight together. */
  readonly weekends = $derived(weekendsIn(this.axis, this.time, this.#room));

  scrolled(x: number, y: number): void {
    this.scrollX = x;
    this.scrollY = y;
    clearTimeout(this.#resting);
    if (Math.abs(x - this.#rest) > beyondRest) this.settle();
    else if (x !== this.#rest) this.#resting = setTimeout(() => this.settle(), restAfter);
  }

  /** The sheet has come to rest, or is taken to have. */
  settle(): void {
    clearTimeout(this.#resting);
    this.#rest = this.scrollX;
  }

  /** Lanes take the height of what is in sight. */
  readonly sheet = $derived.by(() => {
    const whole = this.#asked.scale === "whole";
    const { axis } = this;
    const sight = whole ? null : { from: axis.t(this.#rest), to: axis.t(this.#rest + this.#room) };
    return sheet({ ...this.#asked, sight }, this.#base);
  });

  readonly selected = $derived.by(() => (this.#desk.selected?.list === "steps" ? this.#desk.selected.id : null));
  readonly place = $derived.by(() => (this.#desk.selected?.list === "places" ? this.#desk.selected.id : null));
  readonly #index = $derived(this.selected === null ? null : (this.shown.build.at.step.get(this.selected) ?? null));
  readonly #near = $derived(this.#index === null ? null : neighbours(this.shown.plan, this.#index));

  /** Lines from the causes of the chosen step and to its consequences. */
  readonly links = $derived(
    this.#index === null || !this.#near || this.#asked.scale === "whole" ? [] : linkMarks(this.sheet, this.#index, this.#near),
  );

  readonly #lit = $derived.by(() => {
    if (!this.#near || this.#index === null) return this.#props().lit;
    return new Set(
      [this.#index, ...this.#near.causes, ...this.#near.consequences].map((step) => this.shown.build.steps[step]!.id as string),
    );
  });

  /** Which marks are drawn pale; null while nothing is chosen. The chalk line stays. */
  readonly faded = $derived.by(() => {
    const lit = this.#lit;
    return lit ? (mark: Mark) => mark.of?.list === "steps" && !lit.has(mark.of.id) && !mark.role.startsWith("chalk") : null;
  });

  /** What is drawn, from left to right: what is in sight and a little more. */
  readonly left = $derived(Math.floor(this.scrollX / windowStep) * windowStep - windowStep);
  readonly right = $derived(this.left + this.width + 3 * windowStep);
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

  /** The day up to which the elevation is built: that of the chosen step, else today. */
  readonly builtTo = $derived.by(() => {
    const { today, plan } = this.#props();
    return this.#index === null ? today : (plan.steps[this.#index]?.finish ?? today);
  });
  readonly structure = $derived(this.sheet.structure(this.builtTo));

  /** Where the day of the structure stands on the sheet. */
  readonly dayX = $derived.by(() => {
    const { at } = this.#props();
    return at === null ? null : this.axis.x(at);
  });

  /** Line from the elevation to the lane of the chosen place. */
  readonly leader = $derived(
    this.place === null ? null : (this.sheet.leaders.find(({ places }) => places.includes(this.place ?? "")) ?? null),
  );
}
