import type { Build } from "../../core/build";
import type { Holder, Plan } from "../../core/plan";
import { amountLabel, waitName } from "../text/names";

/**
 * A few words for the gap before a step on the chalk line: what the build waits for there. Null where the gap needs none: the step simply follows,
 * or nobody is there on the days between, which the axis shows.
 */
export function gapReason(build: Build, plan: Plan, holder: Holder): string | null {
  switch (holder.kind) {
    case "wait":
      return waitReason(build, plan, holder.row);
    case "delivery":
      return build.deliveries[holder.delivery]?.name ?? "delivery";
    case "people":
      return holder.of === "hands" ? "hands" : (build.people[build.at.person.get(holder.of) ?? -1]?.name ?? holder.of);
    case "equipment":
      return `${build.equipment[build.at.equipment.get(holder.of) ?? -1]?.name ?? holder.of} in use`;
    case "stock":
      return `${build.stock[build.at.stock.get(holder.of) ?? -1]?.name ?? holder.of} back`;
    case "room":
    case "alone":
      return "place taken";
    case "booking":
      return "booked";
    case "notice":
      return "not booked yet";
    case "fixed":
      return "date fixed";
    case "resumes":
      return "goes on";
    case "done":
      return null;
    case "not-before":
      return "not before";
    case "window":
      return holder.calendar === build.usual ? null : (build.calendars[build.at.calendar.get(holder.calendar) ?? -1]?.name ?? null);
    case "on-purpose":
      return "placed late";
    case "kept":
      return "as kept";
    case "aim":
      return "waits on purpose";
    case "start-of-build":
      return null;
  }
}

function waitReason(build: Build, plan: Plan, row: number): string | null {
  const { arcs, amounts, statements } = plan.access;
  const least = arcs.least[row] ?? -1;
  if (least < 0) return null;
  const amount = amounts[least];
  if (!amount || amount.amount === 0) return null;
  const wait = build.waits.find((one) => one.id === statements[arcs.reason[row] ?? -1]?.id);
  const name = waitName(wait ?? null);
  const much = amountLabel(build, amount);
  return name === null ? much : `${name}, ${much}`;
}
