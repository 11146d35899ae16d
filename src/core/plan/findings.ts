import type { ElapsedMinute, Finding } from "../base";
import type { Build, Step } from "../build";
import { askedFor } from "./asked";
import type { Bound } from "./bound";
import type { PlanCode } from "./codes";
import { bookedFrom } from "./comes";
import { fromMoment } from "./moments";
import type { Plan } from "./plan";
import { workedDays } from "./worked-days";

type Detail = Finding["detail"];

export function finding(code: PlanCode, severity: Finding["severity"], where: Finding["where"], detail: Detail): Finding {
  return { code, severity, where, detail };
}

/** What can be said of a build's people, places, stock and equipment before any date is known. */
export function needsFindings(bound: Bound): Finding[] {
  const { build, crews } = bound;
  const out: Finding[] = [];
  if (build.people.length === 0 && build.steps.some((s) => s.hands.length > 0))
    out.push(finding("plan.nobody-named", "note", { list: "people" }, {}));
  build.steps.forEach((step, s) => {
    for (const { role, wanted, have } of crews.short(s))
      out.push(finding("plan.too-few-people", "stop", { list: "steps", id: step.id, key: "hands" }, { step: step.id, role, wanted, have }));
    for (const { of, number } of step.equipment) {
      const have = build.equipment[build.at.equipment.get(of)!]!.number;
      if (number > have)
        out.push(
          finding(
            "plan.equipment-short",
            "stop",
            { list: "steps", id: step.id, key: "equipment" },
            { step: step.id, of, wanted: number, have },
          ),
        );
    }
  });
  for (const [s, q] of bound.places.crowded) {
    const step = build.steps[s]!;
    const place = build.places[q]!;
    const people = step.hands.reduce((sum, h) => sum + h.number, 0);
    out.push(
      finding(
        "plan.room-too-small",
        "look",
        { list: "steps", id: step.id, key: "hands" },
        { step: step.id, place: place.id, people, room: place.room ?? 0 },
      ),
    );
  }
  const { stocks, spans } = bound.stores;
  const outAtOnce = stocks.map(() => new Map<number, number>());
  for (const x of spans) outAtOnce[x.stock]!.set(x.out, (outAtOnce[x.stock]!.get(x.out) ?? 0) + x.number);
  stocks.forEach((stock, i) => {
    const have = stock.inHand + stock.arrivals.reduce((sum, a) => sum + Math.max(0, a.number), 0);
    const wanted = Math.max(0, ...outAtOnce[i]!.values());
    const list = build.at.stock.has(stock.id) ? "stock" : "equipment";
    if (wanted > have) out.push(finding("plan.stock-short", "stop", { list, id: stock.id }, { of: stock.id, wanted, have }));
  });
  return out;
}

/** Steps that are not done though what was to come after them is: a tick forgotten, or something left out. */
export function historyFindings(build: Build): Finding[] {
  const stepAt = (id: string): Step | undefined => build.steps[build.at.step.get(id) ?? -1];
  const pairs = new Map<string, readonly [string, string]>();
  const note = (step: Step | undefined, other: Step | undefined): void => {
    if (step?.done === null && other && other.done !== null) pairs.set(`${step.id} ${other.id}`, [step.id, other.id]);
  };
  for (const { from, to, fromEnd, toEnd, least, most } of build.waits)
    if (fromEnd === "finish" && toEnd === "start" && (least !== null || most === null)) note(stepAt(from), stepAt(to));
  for (const { up, down, fills } of build.pieces) {
    note(build.steps[up], build.steps[down]);
    for (const step of build.steps) if (step.holdPoint?.places.some((place) => fills.includes(place))) note(step, build.steps[up]);
  }
  return [...pairs.values()].map(([step, other]) =>
    finding("plan.done-first", "look", { list: "steps", id: step, key: "done" }, { step, other }),
  );
}

/** What the dates of a plan give cause to say. */
export function dateFindings(bound: Bound, plan: Omit<Plan, "findings">): Finding[] {
  const { build, clocks } = bound;
  const out: Finding[] = [];
  const goesOnAt = build.resumes === null ? null : fromMoment(clocks, build.resumes);
  build.deliveries.forEach((delivery, d) => {
    const dates = plan.deliveries[d]!;
    const where = { list: "deliveries", id: delivery.id };
    const order = { delivery: delivery.id, orderAt: dates.orderBy ?? 0 };
    if (dates.orderBy !== null && goesOnAt === null && dates.orderBy < 0) out.push(finding("plan.order-by-past", "look", where, order));
    const waiting = plan.steps.findIndex(({ holder }) =>
      holder.kind === "delivery" ? holder.delivery === d : holder.kind === "stock" && holder.job === build.steps.length + d,
    );
    // What is promised was asked for.
    if (dates.orderBy !== null && goesOnAt !== null && delivery.promised === null && waiting >= 0)
      out.push({
        ...finding("plan.waits-for-order", "look", where, {
          delivery: delivery.id,
          step: build.steps[waiting]!.id,
          arrivesAt: dates.arrives,
          goesOnAt,
        }),
        waysOut: [askedFor({ list: "deliveries", id: delivery.id })],
      });
    const link = plan.chain.find((l) => l.holder.kind === "delivery" && l.holder.delivery === d);
    if (link === undefined || delivery.promised === null) return;
    const step = link.job;
    const { start } = plan.steps[step]!;
    const readyAt = readyWithout(bound, plan, step, d);
    const siteDays = workedDays(clocks, build.usual, readyAt, start);
    if (siteDays > 0) {
      out.push(
        finding("plan.delivery-late", "note", where, {
          delivery: delivery.id,
          step: build.steps[dates.firstStep]!.id,
          arrivesAt: dates.arrives,
          readyAt,
          siteDays,
        }),
      );
    }
  });
  build.bookings.forEach((booking, b) => {
    const { bookBy, at } = plan.bookings[b]!;
    const where = { list: "bookings", id: booking.id };
    const book = { booking: booking.id, bookAt: bookBy ?? 0 };
    if (bookBy !== null && goesOnAt === null && bookBy < 0) out.push(finding("plan.book-by-past", "look", where, book));
    if (bookBy === null || goesOnAt === null) return;
    const waysOut = [askedFor({ list: "bookings", id: booking.id })];
    const { holder } = plan.steps[build.at.step.get(booking.step)!]!;
    if (holder.kind === "notice" && holder.date === bookedFrom(build, clocks, booking)) {
      const detail = { booking: booking.id, step: booking.step, fromAt: holder.date, goesOnAt };
      out.push({ ...finding("plan.waits-for-booking", "look", where, detail), waysOut });
    } else if (bookBy < goesOnAt && at >= goesOnAt)
      out.push({ ...finding("plan.book-overdue", "look", where, { ...book, goesOnAt }), waysOut });
  });
  return out;
}

/** When the step could have started by everything it waits for but this delivery. */
function readyWithout(bound: Bound, plan: Omit<Plan, "findings">, step: number, delivery: number): number {
  const { problem, build } = bound;
  const { links } = problem;
  let ready = problem.release[step]!;
  for (let l = 0; l < links.count; l++) {
    if (links.to[l] !== step || links.least[l]! < 0 || links.from[l] === build.steps.length + delivery) continue;
    const from = links.from[l]!;
    const dates = from < build.steps.length ? plan.steps[from]! : null;
    const end = dates === null ? plan.deliveries[from - build.steps.length]!.arrives : links.fromEnd[l] === 0 ? dates.start : dates.finish;
    ready = Math.max(ready, problem.clocks[links.clock[l]!]!.advance(end, links.least[l]!));
  }
  return problem.clocks[problem.clock[step]!]!.begin(ready as ElapsedMinute);
}
