import type { Build, Delivery, LocalMoment, Step, Wait } from "../build";
import { isDate } from "./moments";
import { plainWait } from "./plain-wait";

const none: readonly never[] = [];
const known = new WeakMap<Build, Build>();
/** By the step as it is planned from: who was asked for. It goes with the step into every build that is made of that one for a try. */
const askedOf = new WeakMap<Step, Step["hands"]>();

/**
 * The build as it is to be planned from here: a step that is done keeps what it put up and took down and when, and asks for nothing any more. Nobody and nothing
 * is needed for it, no wait leads to it, and what it was to be waited for goes on from its real finish. The same build where nothing is done.
 */
export function asDone(build: Build): Build {
  if (build.steps.every((step) => step.done === null)) return build;
  let made = known.get(build);
  if (made === undefined) {
    made = withoutHistory(build);
    known.set(build, made);
  }
  return made;
}

/** Edits tried on a build that is then taken as done so far: what ways out are checked with. */
export const asDoneAfter =
  <Edits>(apply: (edits: Edits) => Build | null) =>
  (edits: Edits): Build | null => {
    const next = apply(edits);
    return next && asDone(next);
  };

/** Hands as they were asked for, and when they were busy. */
export interface HandsDone {
  readonly start: LocalMoment;
  readonly finish: LocalMoment;
  readonly hands: Step["hands"];
}

/** Who was busy when, of what is done. */
export function handsDone(build: Build): readonly HandsDone[] {
  const busy: HandsDone[] = [];
  for (const step of build.steps) {
    const hands = askedOf.get(step) ?? none;
    if (step.done !== null && hands.length > 0) busy.push({ ...doneAt(step.done), hands });
  }
  return busy;
}

const atClock = (moment: LocalMoment, time: string): LocalMoment => (isDate(moment) ? `${moment}T${time}` : moment);

/** When a step was begun and finished; a date alone is all of that day. */
export function doneAt({ start, finish }: NonNullable<Step["done"]>): { readonly start: LocalMoment; readonly finish: LocalMoment } {
  return { start: atClock(start, "00:00"), finish: atClock(finish, "23:59") };
}

function settled(step: Step): Step {
  // A build made of one that was taken as done so far is taken so again.
  if (step.done === null || askedOf.has(step)) return step;
  const made: Step = {
    ...step,
    hands: none,
    notAlone: false,
    unbroken: false,
    reaches: none,
    leansOn: none,
    alone: none,
    needs: none,
    equipment: none,
    notBefore: null,
    deadline: null,
    fixed: doneAt(step.done).start,
    weather: null,
    holdPoint: null,
  };
  askedOf.set(made, step.hands);
  return made;
}

function withoutHistory(build: Build): Build {
  const isDone = (id: string): boolean => (build.steps[build.at.step.get(id) ?? -1]?.done ?? null) !== null;
  const open = (wait: Wait): boolean => !isDone(wait.to);
  return {
    ...build,
    steps: build.steps.map(settled),
    pieces: build.pieces.map((piece) => (build.steps[piece.down]?.done ? { ...piece, off: none } : piece)),
    waits: [...build.waits.filter(open), ...afterDone(build)],
    choices: build.choices
      .map((choice) => ({ ...choice, either: choice.either.map((e) => ({ ...e, waits: e.waits.filter(open) })) }))
      .filter((choice) => choice.either.every((e) => e.waits.length > 0)),
    bookings: build.bookings.map((booking) => (isDone(booking.step) ? { ...booking, date: null } : booking)),
    deliveries: build.deliveries.map((delivery) => arrived(delivery, build)),
    ...enough(build),
  };
}

/**
 * What is not done yet and closes, fills or takes away what somebody was at or leaned on who is done comes after that, unless a date is written for it. Such orders
 * follow from what a step reaches, which is not asked of what is done.
 */
function afterDone(build: Build): Wait[] {
  const booked = new Set(build.bookings.flatMap(({ step, date }) => (date === null ? [] : [step])));
  const done = build.steps
    .flatMap((step) => (step.done === null ? [] : [{ step, finish: doneAt(step.done).finish }]))
    .sort((a, b) => (a.finish > b.finish ? -1 : a.finish < b.finish ? 1 : 0))
    .map(({ step: { id, reaches, leansOn } }) => ({
      id,
      places: new Set<string>(reaches.flatMap(({ any }) => any.map(({ place }) => place))),
      leaned: new Set<string>(leansOn.map(({ piece }) => piece)),
    }));
  return build.steps.flatMap(({ id, done: ticked, fixed, deadline, puts, takes }) => {
    if (ticked !== null || fixed !== null || deadline !== null || booked.has(id)) return [];
    const places = [...puts, ...takes].flatMap((piece) => {
      const { closes, fills, makes } = build.pieces[build.at.piece.get(piece)!]!;
      return [...closes, ...makes].map(({ place }): string => place).concat(fills);
    });
    const last = done.find(
      ({ places: there, leaned }) => places.some((place) => there.has(place)) || takes.some((piece) => leaned.has(piece)),
    );
    return last === undefined ? [] : [plainWait(last.id, id, `${last.id}-before-${id}`)];
  });
}

/** What a done step needed was there when it began. */
function arrived(delivery: Delivery, build: Build): Delivery {
  let first: LocalMoment | null = null;
  for (const { needs, done } of build.steps) {
    if (done === null || !needs.includes(delivery.id)) continue;
    const { start } = doneAt(done);
    if (first === null || start < first) first = start;
  }
  if (first === null || (delivery.promised !== null && delivery.promised <= first)) return delivery;
  return { ...delivery, promised: first };
}

/** Stock and equipment that was out with what is up was in hand, whatever the list says: the most that was out at once and had not been brought. */
function enough(build: Build): Pick<Build, "stock" | "equipment"> {
  const most = new Map([...changesOf(build)].map(([of, changes]) => [of, highest(changes)]));
  return {
    stock: build.stock.map((one) => ({ ...one, inHand: Math.max(one.inHand, most.get(one.id) ?? 0) })),
    equipment: build.equipment.map((one) => ({ ...one, number: Math.max(one.number, most.get(one.id) ?? 0) })),
  };
}

const later = (a: LocalMoment, b: LocalMoment): LocalMoment => [a, b].sort()[1] as LocalMoment;

type Change = readonly [t: LocalMoment, by: number];

/** What went out with pieces that are up, came back with what is down but for its loss, and was brought. */
function changesOf(build: Build): Map<string, Change[]> {
  const changes = new Map<string, Change[]>();
  const change = (of: string, t: LocalMoment, by: number): void => {
    const known = changes.get(of);
    if (known === undefined) changes.set(of, [[t, by]]);
    else known.push([t, by]);
  };
  const doneIn = (s: number) => {
    const done = build.steps[s]?.done ?? null;
    return done === null ? null : doneAt(done);
  };
  for (const { up, down, uses } of build.pieces) {
    const [out, back] = [doneIn(up), doneIn(down)];
    if (out === null) continue;
    for (const { of, number, loss } of uses) {
      change(of, out.start, number);
      if (back !== null) change(of, later(back.finish, out.start), Math.min(loss, number) - number);
    }
  }
  for (const { promised, brings } of build.deliveries)
    if (promised !== null) for (const { of, number } of brings) change(of, promised, -number);
  return changes;
}

/** The most that the sum of changes ever comes to, all of one moment together. */
function highest(changes: readonly Change[]): number {
  const sorted = changes.toSorted(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0));
  let [sum, most] = [0, 0];
  sorted.forEach(([t, by], at) => {
    sum += by;
    if (sorted[at + 1]?.[0] !== t) most = Math.max(most, sum);
  });
  return most;
}
