import { limits } from "../../base";
import type { GroupDraft } from "../read/drafts";
import type { ReadLists } from "../read/members";
import type { ListName } from "../schema/document";
import { type GroupsByMember, membersOf } from "./groups";
import type { Names, Sort } from "./names";

const sorts: readonly (readonly [ListName, Sort])[] = [
  ["places", "place"],
  ["pieces", "piece"],
  ["steps", "step"],
  ["calendars", "calendar"],
  ["people", "person"],
  ["stock", "stock"],
  ["equipment", "equipment"],
  ["deliveries", "delivery"],
  ["bookings", "booking"],
];

const grouped: readonly ListName[] = ["places", "pieces", "steps", "waits"];
const numbered = (id: string, count: number): string[] => Array.from({ length: count }, (_, i) => `${id}#${i + 1}`);

/** Enters every id of the document with what it is read as. */
export function register(read: ReadLists, names: Names): GroupsByMember {
  const groups: readonly GroupDraft[] = read.lists.groups.map((group) => group.draft);
  const groupOf = membersOf(groups, names);
  for (const [list, sort] of sorts) {
    if (read.unread.has(list)) {
      names.unreadable(sort);
      // Steps make pieces by closing something; what a piece uses is stock or equipment.
      if (list === "steps") names.unreadable("piece");
      if (list === "equipment") names.unreadable("stock");
    }
    const mayBeGrouped = grouped.includes(list);
    for (const id of read.ids.get(list)?.keys() ?? []) {
      const group = mayBeGrouped ? (groupOf.get(id) ?? null) : null;
      names.add(sort, id, { group, all: group ? numbered(id, group.count) : [id] });
    }
  }
  if (read.unread.has("groups")) names.unreadable("group");
  registerSteps(read, groupOf, names);
  checkMembers(read, groups, names);
  return groupOf;
}

/** Trials in rounds, and the pieces that steps make by closing something. */
function registerSteps(read: ReadLists, groupOf: GroupsByMember, names: Names): void {
  for (const { id, draft } of read.lists.steps) {
    const group = groupOf.get(id) ?? null;
    const rounds = draft.trial?.rounds ?? 1;
    const where = { list: "steps", id };
    if (rounds > 1 && group) names.say("build.rounds-in-group", { ...where, key: "trial" }, { group: group.id });
    else if (rounds > 1) names.add("step", id, { group: null, all: numbered(id, rounds) });
    if (draft.closes.length === 0) continue;
    if (read.ids.get("pieces")?.has(id)) names.say("build.closes-named", { ...where, key: "closes" }, { piece: id });
    else names.add("piece", id, { group, all: group ? numbered(id, group.count) : [id] });
  }
}

function checkMembers(read: ReadLists, groups: readonly GroupDraft[], names: Names): void {
  if (groups.length === 0) return;
  if (grouped.some((list) => read.unread.has(list))) names.unreadable("group-member");
  const known = new Set(grouped.flatMap((list) => [...(read.ids.get(list)?.keys() ?? [])]));
  const copies = new Map<ListName, number>();
  for (const group of groups) {
    group.members.forEach((member, i) => {
      if (!known.has(member))
        names.unknown("group-member", member, known, { list: "groups", id: group.id, copy: null }, "members", String(i + 1));
      for (const list of grouped) if (read.ids.get(list)?.has(member)) copies.set(list, (copies.get(list) ?? 0) + group.count);
    });
  }
  const most = limits.membersInAList.most;
  for (const [what, count] of copies) if (count > most) names.say("build.too-many", { list: "groups" }, { what, count, most });
}
