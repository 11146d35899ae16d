import { asId, type Finding, limits, nearest } from "../base";
import { checkHolidays, checkSkipped } from "../clock";
import { withFirstDay } from "./check/first-day";
import { checkHands, checkStock } from "./check/numbers";
import { checkHolding, checkLeaning, checkStanding, joinSteps } from "./check/pieces";
import { checkReaches, checkWays } from "./check/places";
import { pourOfSteps, removalsOf } from "./check/pours";
import { checkWaits } from "./check/waits";
import { bars } from "./codes";
import type { Context } from "./link/context";
import { frameOf } from "./link/frame";
import { writeOut } from "./link/groups";
import { Names } from "./link/names";
import { linkBooking, linkDelivery, linkKept, linkPerson } from "./link/others";
import { linkPiece, pieceOfStep } from "./link/pieces";
import { linkPlace } from "./link/places";
import { withPours } from "./link/pour-steps";
import { linkPour, stepOfPour } from "./link/pours";
import { register } from "./link/register";
import { linkSolid } from "./link/solids";
import { linkStep } from "./link/steps";
import { linkChoice, linkWait } from "./link/waits";
import type { Build, Indexes, Wait } from "./model";
import { type Head, readHead, readKept, readServed } from "./read/head";
import { type ReadLists, readLists } from "./read/members";

const positions = (list: readonly { readonly id: string }[]): ReadonlyMap<string, number> =>
  new Map(list.map((member, i) => [member.id, i]));

/** So that references can still be checked in a document whose head cannot be read. */
const blank: Head = {
  id: "build",
  name: "",
  site: { zone: "UTC", latitude: 0, longitude: 0, units: "us", sides: [], usualTemperatures_C: null, days_C: [] },
  start: "2000-01-01",
  usual: null,
  resumes: null,
  pressure: null,
  aim: null,
};

interface Read {
  readonly build: Build | null;
  readonly findings: readonly Finding[];
}

/** Reads a document of the current version, puts it together and checks it. */
export function assemble(document: Readonly<Record<string, unknown>>): Read {
  const { head, findings: headFindings } = readHead(document);
  const read = readLists(document);
  const kept = readKept(Object.hasOwn(document, "kept") ? document.kept : undefined);
  const served = readServed(Object.hasOwn(document, "served") ? document.served : undefined);
  const names = new Names();
  const groupOf = register(read, names);
  const before = [...headFindings, ...read.findings, ...kept.findings, ...served.findings];
  if (names.findings.some((finding) => finding.code === "build.too-many")) return { build: null, findings: [...before, ...names.findings] };
  const ofCopies: Finding[] = [];
  const written = {
    places: writeOut("places", read.lists.places, groupOf, ofCopies),
    pieces: writeOut("pieces", read.lists.pieces, groupOf, ofCopies),
    steps: writeOut("steps", read.lists.steps, groupOf, ofCopies),
    waits: writeOut("waits", read.lists.waits, groupOf, ofCopies),
  };
  const build = link(head ?? blank, read, written, names, kept.raw);
  if (names.isFull) {
    const most = limits.references.most;
    names.say("build.too-many", { list: "groups" }, { what: "references", count: most + 1, most });
  }
  const found = [...before, ...ofCopies, ...(head ? checkClocks(head, read) : []), ...names.findings];
  const findings = head ? withFirstDay(found, head) : found;
  return { build: head && !findings.some(bars) ? { ...build, served: served.served, aim: head.aim } : null, findings };
}

/** What the clocks can tell of a document: holiday tables that do not exist or end too early, times of day that the site's clocks skip. */
function checkClocks(head: Head, read: ReadLists): Finding[] {
  const findings: Finding[] = [];
  for (const { id, draft } of read.lists.calendars) {
    if (draft.holidays !== null)
      findings.push(...checkHolidays(draft.holidays, Number(head.start.slice(0, 4)), { list: "calendars", id, key: "holidays" }));
  }
  const check = (list: string, id: string, key: string, moment: string | null): void => {
    if (moment?.includes("T")) findings.push(...checkSkipped(moment, head.site.zone, { list, id, key }));
  };
  for (const { id, draft } of read.lists.steps)
    for (const key of ["notBefore", "deadline", "fixed"] as const) check("steps", id, key, draft.own[key]);
  for (const { id, draft } of read.lists.deliveries) check("deliveries", id, "promised", draft.promised);
  for (const { id, draft } of read.lists.bookings) check("bookings", id, "date", draft.date);
  return findings;
}

type Written = {
  readonly [L in "places" | "pieces" | "steps" | "waits"]: ReturnType<typeof writeOut<L>>;
};

function contextOf(head: Head, read: ReadLists, written: Written, names: Names): Context {
  const first = read.lists.calendars[0]?.id ?? "";
  const calendars = read.ids.get("calendars");
  const readable = !read.unread.has("calendars");
  if (readable && calendars?.size === 0) names.say("build.no-calendar", { list: "calendars" }, {});
  if (readable && head.usual !== null && !calendars?.has(head.usual)) {
    const meant = nearest(head.usual, calendars?.keys() ?? []) ?? "";
    names.say("build.unknown-id", { key: "usual" }, { part: "", sort: "calendar", value: head.usual, nearest: meant });
  }
  return {
    names,
    usual: asId(head.usual ?? first),
    start: head.start,
    units: head.site.units,
    calendars: read.lists.calendars.map((calendar) => calendar.draft),
    pours: poured(read, written, names),
    waysOf: new Map(written.places.map((place) => [place.id, place.draft.ways])),
    pieces: new Map(written.pieces.map((piece) => [piece.id, piece.draft])),
  };
}

/** What each step pours, by the id it is read as: what it says itself, or what the pour says that is done in it. */
function poured(read: ReadLists, written: Written, names: Names): Context["pours"] {
  // Of a pour that cannot be read nobody knows in which step it is done.
  if (read.unread.has("pours") || read.ids.get("pours")!.size > read.lists.pours.length) names.unreadable("pour");
  const pours = new Map(written.steps.flatMap(({ id, draft }) => (draft.own.pour ? [[id, draft.own.pour] as const] : [])));
  for (const { draft } of read.lists.pours) {
    const step = stepOfPour(draft, { names });
    if (step !== null) pours.set(step, { strength_MPa: draft.mix.strength_MPa, cement: draft.mix.cement ?? "I" });
  }
  return pours;
}

/** The same step named twice in an `after`, or after a trial that decides it anyway, is one wait. */
function onceEach(waits: readonly Wait[]): Wait[] {
  const seen = new Set<string>();
  return waits.filter((wait) => !seen.has(wait.id) && seen.add(wait.id));
}

function link(head: Head, read: ReadLists, written: Written, names: Names, kept: ReturnType<typeof readKept>["raw"]): Build {
  const context = contextOf(head, read, written, names);
  const { lists } = read;
  const frame = frameOf(read, context.usual, context.start, context.units);
  const places = written.places.map((place) => frame.once(place, names, () => linkPlace(place, context)));
  const linked = written.steps.map((step) => frame.once(step, names, () => linkStep(step, context)));
  const bare = linked.flatMap((one) => one.steps);
  const pours = lists.pours.map(({ draft, id }) =>
    frame.once({ id, draft, copy: null, membership: null }, names, () => linkPour(draft, context)),
  );
  const made = written.steps.filter((step) => step.draft.closes.length > 0 && !read.ids.get("pieces")?.has(step.draft.id));
  const loose = [
    ...written.pieces.map((piece) => frame.once(piece, names, () => linkPiece(piece, context))),
    ...made.map((step) => pieceOfStep(step.id, step, context)),
  ];
  const further = new Map<string, number>();
  const said = [...onceEach(linked.flatMap((one) => one.waits)), ...written.waits.flatMap((wait) => linkWait(wait, further, context))];
  const keptPlan = kept && linkKept(kept);
  const stepAt = positions(bare);
  const removals = removalsOf({ pours, steps: bare, at: stepAt, waits: said, start: context.start, kept: keptPlan, names });
  const waits = removals.waits.length === 0 ? said : [...said, ...removals.waits];
  const pourOf = pourOfSteps(pours, bare, stepAt, names);
  const steps = withPours(bare, written.steps, pourOf, removals.notBefore, names);
  const equipment = lists.equipment.map((item) => item.draft);
  const stock = lists.stock.map((item) => item.draft);
  const people = lists.people.map((person) => linkPerson(person.draft, context));
  const deliveries = lists.deliveries.map((delivery) => linkDelivery(delivery.draft, context));
  const bookings = lists.bookings.map((booking) => linkBooking(booking.draft, context));
  const at: Indexes = {
    place: positions(places),
    piece: positions(loose),
    step: stepAt,
    calendar: positions(context.calendars),
    person: positions(people),
    equipment: positions(equipment),
    stock: positions(stock),
    delivery: positions(deliveries),
    booking: positions(bookings),
    pour: positions(pours),
  };
  const pieces = joinSteps(loose, steps, at.piece, names);
  checkHolding(pieces, at.piece, names);
  checkStanding(pieces, steps, names);
  checkLeaning(steps, names);
  checkWays(places, at.place, names);
  checkReaches(places, at.place, steps, pieces, names);
  checkWaits(steps, waits, at.step, names);
  checkHands(people, steps, names);
  checkStock(stock, equipment, deliveries, steps, pieces, names);
  return {
    id: head.id,
    name: head.name,
    site: head.site,
    start: head.start,
    resumes: head.resumes,
    usual: context.usual,
    calendars: context.calendars,
    people,
    equipment,
    stock,
    places,
    pieces,
    steps,
    waits,
    choices: lists.choices.map((choice) => linkChoice(choice.draft, context)),
    deliveries,
    bookings,
    groups: lists.groups.map(({ draft }) => ({ id: asId(draft.id), name: draft.name, count: draft.count })),
    pours,
    solids: lists.solids.map(({ draft }) => linkSolid(draft, names)),
    parts: lists.parts.map(({ draft }) => draft),
    pressure: head.pressure ?? "aci-us",
    kept: keptPlan,
    at,
  };
}
