import type { Build } from "../../core/build";
import { siteTime } from "../../core/clock";
import type { Plan } from "../../core/plan";
import {
  dayWidthFor,
  findMarks,
  indexMarks,
  type Mark,
  type MarkIndex,
  roomBeside,
  type Sheet,
  type SheetAsked,
  type SheetBase,
  type Slices,
  sheet,
  sheetBase,
  sheetBaseSlices,
  sheetSlices,
  weekendsIn,
} from "../../draw";
import type { Desk } from "../state";
import { alike } from "../state/same";
import { Ahead } from "./ahead";
import type { Look, SheetView } from "./view.svelte";
import { stepOfZoom } from "./zoom";

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

/** Lanes take the height of what is in sight only once the sheet has come to rest, so that nothing moves up or down under a scrolling hand. ms */
const restAfter = 160;
/** How far one may scroll on what was drawn for the last rest before it is drawn anew meanwhile, and before that is done at once. px */
const [beyondRest, beyondDrawn] = [1200, 1560];

/** A sheet worked out before it is shown, with the questions it answers. */
interface Ready {
  readonly asked: SheetAsked;
  readonly base: SheetBase;
  readonly sight: SheetAsked["sight"];
  readonly sheet: Sheet;
  readonly found: Found;
}

/** The marks of each part by where they stand. */
type Found = Readonly<Record<(typeof windowed)[number], MarkIndex>>;
const windowed = ["head", "side", "body", "foot"] as const;
const foundBy = (find: (marks: readonly Mark[]) => MarkIndex, { part }: Sheet): Found => ({
  head: find(part.head.marks),
  side: find(part.side.marks),
  body: find(part.body.marks),
  foot: find(part.foot.marks),
});

/** What is in sight from so many px on; null: all. */
function sightOf(asked: SheetAsked, { axis }: SheetBase, x: number, room: number): { readonly from: number; readonly to: number } | null {
  return asked.scale === "whole" ? null : { from: axis.t(x), to: axis.t(x + room) };
}

/** The sheet as it is drawn: for which build, at which width of a day, for what is in sight. */
export class Drawn {
  protected readonly desk: Desk;
  protected readonly props: () => SceneProps;
  width = $state(1000);
  height = $state(600);
  scrollX = $state(0);
  /** Where the sheet was when it last came to rest. */
  #rest = $state(0);
  #resting: ReturnType<typeof setTimeout> | undefined;
  scrollY = $state(0);

  constructor(desk: Desk, props: () => SceneProps) {
    this.desk = desk;
    this.props = props;
  }

  /** The build and the plan that stand, whatever is tried out. */
  get standing(): { readonly build: Build; readonly plan: Plan } {
    return this.props();
  }

  /** While something is tried out the sheet shows what would follow, with ghosts of what is; what leaves no dates is only told. */
  readonly shown = $derived.by(() => {
    const { build, plan } = this.props();
    const { trial } = this.desk;
    return trial?.plan.status === "planned"
      ? { build: trial.build, plan: trial.plan, before: { build, plan } }
      : { build, plan, before: null };
  });

  readonly time = $derived(siteTime(this.shown.build.site.zone, this.shown.build.start));

  readonly #type = $derived.by(() => {
    const { phone } = this.props();
    return { elevation: !phone && this.width > 700, text: phone ? 16 : 14, flagRows: phone ? 3 : 4 };
  });

  /** Of the plan that stands: days do not change their width under something that is dragged. */
  readonly #fitting = $derived.by(() => {
    const { build, plan } = this.props();
    return dayWidthFor({ build, plan, scale: "weekends", ...this.#type }, this.width);
  });

  /** How the sheet is drawn. What the view wants instead is worked out first, in slices, and shown when it is there. */
  #look = $state.raw<Look>({ scale: "weekends", unfolded: false, zoom: 0 });
  get look(): Look {
    return this.#look;
  }
  readonly #ahead = new Ahead();
  /** What is worked out is another look, not only what is in sight. */
  #turning = false;
  #ready: Ready | null = null;

  /** Beside the names; a little less than there is, so that nothing has to be scrolled. */
  readonly #wholeRoom = $derived.by(() => {
    const { build, plan } = this.props();
    return Math.max(100, roomBeside({ build, plan, scale: "whole", ...this.#type }, this.width)) - 20;
  });

  readonly #asked = $derived.by(() => this.#askedAt(this.#look));

  #askedAt(look: Look): SheetAsked {
    const { view, today } = this.props();
    return {
      ...this.shown,
      ...this.#type,
      scale: look.scale,
      unfolded: look.unfolded,
      slack: view.slack,
      units: this.desk.units,
      today,
      fill: look.scale === "whole" ? this.#wholeRoom : 0,
      dayWidth: Math.max(24, Math.round(this.#fitting * stepOfZoom ** look.zoom)),
    };
  }

  readonly #base = $derived.by(() => {
    const [asked, ready] = [this.#asked, this.#ready];
    return ready && alike(ready.asked, asked) ? ready.base : sheetBase(asked);
  });
  /** Before anything is drawn on it. */
  readonly axis = $derived(this.#base.axis);
  readonly #room = $derived(Math.max(100, roomBeside(this.#asked, this.width)));

  /** The name of the scale as it stands: how many weekends are in sight together. */
  readonly weekends = $derived(weekendsIn(this.axis, this.time, this.#room));

  scrolled(x: number, y: number): void {
    this.scrollX = x;
    this.scrollY = y;
    clearTimeout(this.#resting);
    const far = Math.abs(x - this.#rest);
    if (far > beyondDrawn) this.settle();
    else if (far > beyondRest) {
      if (!this.#ahead.busy) this.#restAt(x);
    } else if (x !== this.#rest) this.#resting = setTimeout(() => this.#restAt(this.scrollX), restAfter);
  }

  /** The sheet has come to rest, or is taken to have. */
  settle(): void {
    clearTimeout(this.#resting);
    if (this.#rest === this.scrollX) return;
    if (!this.#turning) this.#ahead.stop();
    this.#rest = this.scrollX;
  }

  #restAt(x: number): void {
    // Another look settles where it is scrolled to.
    if (this.#turning) return;
    this.#ahead.run(
      this.#slices(this.#asked, this.#base, () => x),
      (ready) => {
        this.#showReady(ready);
        this.#rest = x;
      },
    );
  }

  /** Draws the sheet as the view has it: the first time at once. `restOn`: how far it is to be scrolled, px. */
  follow(look: Look, restOn: (axis: SheetBase["axis"]) => number, first: boolean): void {
    const same = alike(look, this.#look);
    if (this.#turning) this.#ahead.stop();
    this.#turning = !same && !first;
    if (first) this.#look = look;
    if (!this.#turning) return;
    this.#ahead.run(
      this.#slices(this.#askedAt(look), null, ({ axis }) => restOn(axis)),
      (ready) => {
        this.#turning = false;
        this.#showReady(ready);
        this.#look = look;
      },
    );
  }

  *#slices(asked: SheetAsked, known: SheetBase | null, restOn: (base: SheetBase) => number): Slices<Ready> {
    const base = known ?? (yield* sheetBaseSlices(asked));
    const sight = sightOf(asked, base, restOn(base), Math.max(100, roomBeside(asked, this.width)));
    const made = yield* sheetSlices({ ...asked, sight }, base);
    yield;
    return { asked, base, sight, sheet: made, found: foundBy(indexMarks, made) };
  }

  /** Nothing is worked out for a sheet that is gone. */
  leave(): void {
    clearTimeout(this.#resting);
    this.#ahead.stop();
  }

  /** Lanes take the height of what is in sight. */
  readonly sheet = $derived.by(() => {
    const [base, ready] = [this.#base, this.#ready];
    const sight = sightOf(this.#asked, base, this.#rest, this.#room);
    if (ready && ready.base === base && (sight === ready.sight || (sight && ready.sight && alike(sight, ready.sight)))) return ready.sheet;
    return sheet({ ...this.#asked, sight }, base);
  });

  readonly found = $derived(this.#ready?.sheet === this.sheet ? this.#ready.found : foundBy(findMarks, this.sheet));

  /** For one frame after a sheet that was worked out ahead is shown, or the sheet was scrolled by hand. */
  late = $state(false);
  /** For two frames after a sheet that was worked out ahead is shown: only what is on the screen is drawn of it. */
  bare = $state(false);
  #showReady(ready: Ready): void {
    this.#ready = ready;
    this.late = true;
    this.bare = true;
    requestAnimationFrame(() => {
      this.late = false;
      requestAnimationFrame(() => {
        this.bare = false;
      });
    });
  }

  /** Said as the page tells that it was scrolled, which is before the frame it is drawn in. */
  movedByHand(): void {
    if (this.late) return;
    this.late = true;
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        this.late = false;
      }),
    );
  }
}
