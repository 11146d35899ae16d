import type { RuleName } from "../../core/access";
import type { Display, Statement } from "../../core/base";
import type { Build } from "../../core/build";
import type { WindowRule } from "../../core/plan";
import { howMany, listed, readable, sentence, spelled, spelledFigure } from "../text";
import { type Detail, figure, hoursEndWords, list, text, type Voice, voice, workWords } from "../voice";

type Saying = (statement: Statement, voice: Voice, detail: Detail) => string;

const fullWay = ({ place, way }: Statement): string => (way?.includes(".") ? way : `${place ?? ""}.${way ?? ""}`);

/** "reach the pier steel with an arm and a tool, 60 in deep", or one of several. */
function aims(statement: Statement, voice: Voice, detail: Detail): string {
  if (statement.place !== undefined) return voice.gets(statement.place, statement.need, detail);
  const needs = list(detail, "needs");
  return listed(
    list(detail, "places").map((place, i) => voice.gets(place, needs[i], {})),
    "or",
  );
}

/** What a way that does not let it pass has instead: "from the top one reaches 24 in". */
function tooSmall(full: string, { need, detail = {} }: Statement, voice: Voice): string {
  const [place = "", id = ""] = full.split(".");
  const way = voice.build?.places[voice.build.at.place.get(place) ?? -1]?.ways.find((one) => one.id === id || one.full === full);
  const depth_mm = figure(detail, "depth_mm");
  if (
    way !== undefined &&
    (need === "hand" || need === "arm") &&
    way.depth_mm !== null &&
    way.depth_mm < depth_mm &&
    (way.passes.includes("hand") || way.passes.includes("arm"))
  )
    return `${voice.by(full)} one reaches ${voice.length(way.depth_mm)}`;
  if (way !== undefined && need === "unit" && way.opening_mm !== null && way.passes.includes("unit"))
    return `${voice.by(full)} the opening is ${voice.length(way.opening_mm.wide)} by ${voice.length(way.opening_mm.high)}`;
  return `not ${voice.by(full)}`;
}

/** ", at least 24 h and at most 3 days later"; strength is awaited, not counted. */
function between(detail: Detail, voice: Voice): string {
  const [least, most] = [text(detail, "least"), text(detail, "most")].map((amount) => (amount === "" ? "" : voice.amount(amount))) as [
    string,
    string,
  ];
  const strong = least.includes(strengthOf) ? `, once there is ${least}` : "";
  const parts = [least === "" || strong !== "" ? "" : `at least ${least}`, most === "" ? "" : `at most ${most}`].filter(
    (part) => part !== "",
  );
  return `${strong}${parts.length === 0 ? "" : `, ${listed(parts)} later`}`;
}

const strengthOf = " of the strength of ";

/** "the start of “A”" where it is not the usual end. */
function end(step: string, which: string, usual: string): string {
  return which === "" || which === usual ? step : `the ${which === "start" ? "start" : "end"} of ${step}`;
}

function waitName(id: string | undefined, voice: Voice): string {
  const wait = voice.build?.waits.find((one) => one.id === id);
  return wait === undefined || wait.plain || wait.name === "" || wait.name === wait.id.split("#")[0] ? "" : `${voice.inside(wait.name)}: `;
}

/** " for 24 h", ", at 70 % of the strength of “Pour the slab”" */
function onceWords(once: string, voice: Voice): string {
  if (once === "") return "";
  const amount = voice.amount(once);
  return amount.includes(strengthOf) ? `, at ${amount}` : ` for ${amount}`;
}

function apart({ id, step, other }: Statement, voice: Voice, detail: Detail): string {
  const first = end(voice.step(step), text(detail, "fromEnd"), "finish");
  const then = end(voice.step(other), text(detail, "toEnd"), "start");
  return `${waitName(id, voice)}${then} comes after ${first}${between(detail, voice)}`;
}

function setWords(set: string, voice: Voice): string {
  return voice.pieces(set.split(" and "));
}

/** Dates are worked out so far, as every clock of a plan has it. */
const years = 40;
function beyond(date: string, voice: Voice): string {
  const start = voice.build?.start;
  if (start === undefined || date.slice(0, 10) <= `${Number(start.slice(0, 4)) + years}${start.slice(4)}`) return "";
  return "; dates are worked out for forty years from the first day, no further";
}

function dated(verb: string): Saying {
  return ({ step, id }, voice, detail) => {
    const date = text(detail, "date");
    return `${step === undefined ? voice.any(id ?? "") : voice.step(step)} ${verb} ${voice.written(date)}${beyond(date, voice)}`;
  };
}

const due: Saying = ({ step, id }, voice, detail) =>
  `${step === undefined ? voice.any(id ?? "") : voice.step(step)} is to be done ${voice.due(text(detail, "date"))}`;

/** Each kind of statement as a fact of the build. */
const facts: Readonly<Record<RuleName | WindowRule, Saying>> = {
  ways: (statement, voice, detail) => {
    const passing = list(detail, "passing");
    const narrow = list(detail, "narrow");
    const place = voice.place(statement.place);
    const small = listed(narrow.map((full) => tooSmall(full, statement, voice)));
    if (passing.length === 0 && narrow.length === 0) return `there is no way in to ${place}`;
    if (passing.length === 0) return `No way in is enough to ${voice.gets(statement.place, statement.need, detail)}: ${small}`;
    return `${voice.canGet(statement.place, statement.need, detail)} only ${listed(passing.map(voice.by), "or")}${narrow.length === 0 ? "" : `; ${small}`}`;
  },
  through: (statement, voice, detail) => `${voice.way(fullWay(statement))} leads through ${voice.place(text(detail, "through"))}`,
  closes: (statement, voice) => `With ${voice.piece(statement.piece)} in place, ${voice.way(fullWay(statement))} is closed`,
  makes: (statement, voice) => `${voice.way(fullWay(statement))} is there only with ${voice.piece(statement.piece)} up`,
  fills: ({ piece, place }, voice) => `With ${voice.piece(piece)} in place, nothing gets to ${voice.place(place)} by any way`,
  "up-down": ({ piece, step, other }, voice) =>
    `${voice.step(other)} takes down ${voice.piece(piece)}, which ${voice.step(step)} puts up first`,
  work: ({ step }, voice, detail) => `${voice.step(step)} takes ${workWords(figure(detail, "minutes"))} at least`,
  reach: (statement, voice, detail) => `${voice.step(statement.step)} must ${aims(statement, voice, detail)}`,
  off: (statement, voice, detail) =>
    `To take down ${voice.piece(statement.piece)}, ${voice.step(statement.step)} must ${aims(statement, voice, detail)}`,
  leans: ({ step, piece }, voice, detail) => {
    const once = text(detail, "once");
    return `${voice.step(step)} needs ${voice.piece(piece)} in place${onceWords(once, voice)}`;
  },
  held: ({ piece }, voice, detail) => {
    const sets = list(detail, "sets").map((set) => setWords(set, voice));
    const claims = detail.claims === true ? "; saying that it holds itself is worth nothing without saying from when on" : "";
    return sets.length === 0
      ? `nothing is named to hold ${voice.piece(piece)}${claims}`
      : `${voice.piece(piece)} must be held by ${listed(sets, "or by")}${claims}`;
  },
  "hold-point": ({ step, place }, voice) =>
    `${voice.step(step)} stops the work at ${voice.place(place)} and must see it: nothing fills it before, and work there is done before or goes on while the place is closed`,
  done: ({ step, other }, voice) => `${voice.step(step)} is done already, so ${voice.step(other)} can only come after it`,
  "not-before": dated("does not begin before"),
  deadline: due,
  fixed: dated("is fixed for"),
  wait: apart,
  choice: ({ id, step, other }, voice, detail) => {
    const either = list(detail, "either");
    if (step !== undefined && other !== undefined) {
      const by = text(detail, "by");
      return `${by === "" ? "" : `${voice.inside(by)}: `}${voice.step(other)} comes after ${voice.step(step)}${between(detail, voice)}`;
    }
    const name = voice.build?.choices.find((one) => one.id === id)?.name;
    return `${name === undefined || name === id ? "one" : `${voice.inside(name)}: one`} of these has to hold: ${listed(either.map(voice.inside), "or")}`;
  },
  refused: (_, voice, detail) => {
    const [before, after] = [list(detail, "before"), list(detail, "after")];
    return `The dates do not allow that ${listed(before.map((id, i) => `${voice.step(id)} comes before ${voice.step(after[i])}`))}`;
  },
  asked: ({ step, other }, voice) => `You asked for ${voice.step(step)} before ${voice.step(other)}`,
  "window.release": dated("cannot begin before"),
  "window.due": due,
  "window.fixed": (statement, voice, detail) =>
    dated(text(detail, "of") === "booking" ? "is booked for" : "is fixed for")(statement, voice, detail),
  "window.least": (statement, voice, detail) => apart(statement, voice, { ...detail, least: text(detail, "amount") }),
  "window.most": (statement, voice, detail) => apart(statement, voice, { ...detail, most: text(detail, "amount") }),
  "window.length": ({ step, id }, voice, detail) =>
    `${step === undefined ? voice.any(id ?? "") : voice.step(step)} takes ${workWords(figure(detail, "minutes"))} of ${voice.thing("calendars", text(detail, "calendar"))}${detail.unbroken === true ? ", in one go" : ""}${detail.lastAt === undefined ? "" : `; ${hoursEndWords(detail, voice)}`}`,
  "window.needs": ({ step }, voice, detail) => `${voice.step(step)} needs ${voice.any(text(detail, "delivery"))}`,
  "window.people": (_, voice, detail) => {
    const roles = list(detail, "roles").map(readable);
    const what = roles.length === 0 ? "" : `for the ${listed(roles)} `;
    return `${what}there is nobody but ${voice.people(list(detail, "people"))}, and only at the hours written down`;
  },
  "window.equipment": (_, voice, detail) =>
    `there ${isOrAre(detail)} ${howMany(figure(detail, "number"))} of ${voice.any(text(detail, "of"))}`,
  "window.room": ({ place }, voice, detail) =>
    `there is room for ${spelled(figure(detail, "number"), "person", "people")} at ${voice.place(place)}`,
  "window.alone": ({ place }, voice) => `whoever needs ${voice.place(place)} alone shares it with nobody`,
  "window.stock": (_, voice, detail) =>
    `of ${voice.any(text(detail, "of"))} there ${figure(detail, "number") === 0 ? "are none" : `${isOrAre(detail)} never more than ${spelledFigure(figure(detail, "number"))}`}`,
};

const isOrAre = (detail: Detail): string => (figure(detail, "number") === 1 ? "is" : "are");

export function factClause(statement: Statement, voice: Voice): string {
  const saying = facts[statement.rule as RuleName];
  return saying === undefined
    ? `${voice.step(statement.step)} has its place in the order`
    : saying(statement, voice, statement.detail ?? {});
}

/** One thing the build says, as a member of a set that cannot all hold. */
export function statementSentence(statement: Statement, build: Build, display?: Display): string {
  return sentence(factClause(statement, voice(build, display)));
}
