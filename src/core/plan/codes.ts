/**
 * Every finding of this room, with the keys of its detail; words are complete against this table. Moments are minutes since the build's epoch
 * (keys ending in `At`), lengths minutes.
 */
export const planCodes = {
  /** Dates that cannot be met, told without people: `because` is a minimal set. `otherOrders`: how many more orders dates have refuted. */
  "plan.windows": ["otherOrders"],
  /** So too, where all that is in the way is that a step's hours end with `lastAt`; `people`: its calendar goes on, but not with the people it asks for. */
  "plan.hours-end": ["step", "lastAt", "people", "otherOrders"],
  /** No plan was found; without people, equipment, room and stock the dates could be met by `boundAt`. `lacks`: people, equipment, room, alone, stock, deadline, wait, calendar. */
  "plan.not-found": ["step", "lacks", "of", "boundAt"],
  /** Every order and every date was ruled out, people, places and stock included; `because`: of which, where `minimal`, none can be left out. */
  "plan.ruled-out": ["minimal"],
  /** A step's calendar (with the people it asks for) never has the time it takes. */
  "plan.calendar-never": ["step", "calendar", "minutes", "unbroken"],
  /** More people asked for than the build has. */
  "plan.too-few-people": ["step", "role", "wanted", "have"],
  /** The step asks for more people than its place has room for. */
  "plan.room-too-small": ["step", "place", "people", "room"],
  /** More of a stock or of equipment is out than there ever is. */
  "plan.stock-short": ["of", "wanted", "have"],
  "plan.equipment-short": ["step", "of", "wanted", "have"],
  /** A promised delivery that sets the finish: everything else its step waits for is ready `siteDays` before the step starts. */
  "plan.delivery-late": ["delivery", "step", "arrivesAt", "readyAt", "siteDays"],
  /** To be there in time it would have to be ordered before the build begins. */
  "plan.order-by-past": ["delivery", "orderAt"],
  "plan.book-by-past": ["booking", "bookAt"],
  /** Nobody has said that it was ordered: it can be when work goes on, no sooner, and a step waits for it. */
  "plan.waits-for-order": ["delivery", "step", "arrivesAt", "goesOnAt"],
  "plan.waits-for-booking": ["booking", "step", "fromAt", "goesOnAt"],
  /** Nobody has said that it was booked for that date, and the last day to do so is past when work goes on. */
  "plan.book-overdue": ["booking", "bookAt", "goesOnAt"],
  /** Nobody is named in the build: it is planned by its calendars alone. */
  "plan.nobody-named": [],
  /** People enough are there, but nobody could be named for all of the step without a hand-over in the middle. */
  "plan.hand-over": ["step", "wanted"],
  /** `other` is done, though `step`, which is not, was to come before it. */
  "plan.done-first": ["step", "other"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type PlanCode = keyof typeof planCodes;

/** Findings of a comparison. */
export const compareCodes = {
  "compare.same": ["finishAt"],
  "compare.later": ["finishAt", "beforeAt", "siteDays"],
  "compare.earlier": ["finishAt", "beforeAt", "siteDays"],
  /** Steps moved, the finish did not. */
  "compare.inside-slack": ["moved", "finishAt"],
  /** A delivery moved and no step did: its first step starts only on the next site day. */
  "compare.before-next-site-day": ["delivery", "beforeAt", "arrivesAt", "nextAt"],
  "compare.no-plan": ["status"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type CompareCode = keyof typeof compareCodes;

/** Rules of the statements in `because` of "plan.windows" and "plan.ruled-out", beside those of access. */
export const windowRules = {
  "window.release": ["date", "of"],
  "window.due": ["date", "of"],
  "window.fixed": ["date", "of"],
  "window.least": ["amount", "fromEnd", "toEnd", "because"],
  "window.most": ["amount", "fromEnd", "toEnd", "because"],
  /** `lastAt`, `people`: see "plan.hours-end"; only where they end. */
  "window.length": ["minutes", "calendar", "unbroken"],
  "window.needs": ["delivery"],
  /** These people and no others, when they are there, for those who are asked for as `roles` (empty: anybody). */
  "window.people": ["people", "roles"],
  "window.equipment": ["of", "number"],
  "window.room": ["number"],
  "window.alone": [],
  "window.stock": ["of", "number"],
} as const satisfies Readonly<Record<string, readonly string[]>>;

export type WindowRule = keyof typeof windowRules;

/** What a plan may rest on. */
export const assumptions = ["plan.strength-at-site", "plan.strength-at-20", "plan.nobody-named"] as const;
