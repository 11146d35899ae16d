/** stop: cannot be built or planned as written. look: somebody should look before going on. note: good to know. */
export type Severity = "stop" | "look" | "note";

export type DetailValue = string | number | boolean | readonly string[] | readonly number[];

/** Where in the document: the list and id of the thing, and the key inside it, as far as they are known. */
export interface Where {
  readonly list?: string;
  readonly id?: string;
  readonly key?: string;
  /** Counted from 1, for a member of a list whose id is not known. */
  readonly position?: number;
}

/**
 * What was found, as a value: a code, where, and figures. Sentences are made from it in `src/words`, never here.
 * `because` holds the statements of a minimal set that cannot hold together; `waysOut` what was tried and works.
 */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly where: Where;
  readonly detail: Readonly<Record<string, DetailValue>>;
  readonly because?: readonly Statement[];
  readonly waysOut?: readonly WayOut[];
}

/**
 * One thing the build says about order or time, in the form it is told to the builder and used as a reason.
 * `rule` names the kind (see core/access/README); the ids are those it speaks of.
 */
export interface Statement {
  readonly rule: string;
  readonly step?: string;
  readonly other?: string;
  readonly place?: string;
  readonly way?: string;
  readonly piece?: string;
  readonly pieces?: readonly string[];
  readonly need?: string;
  readonly id?: string;
  readonly detail?: Readonly<Record<string, DetailValue>>;
}

/** The closed list of kinds of ways out. Every one offered has been tried on the whole build and works. */
export type WayOutKind =
  | "bench"
  | "leave-face-off"
  | "clean-out"
  | "split"
  | "later"
  | "down-between"
  | "second-inspection"
  | "tick"
  | "untick"
  | "move-date"
  | "asked-for"
  | "drop-wait"
  | "one-more";

/** A change that was checked. `edits` applied to the document in turn make the finding go away. */
export interface WayOut {
  readonly kind: WayOutKind;
  readonly detail: Readonly<Record<string, DetailValue>>;
  readonly edits: readonly DocumentEdit[];
}

/** One edit of the document as plain data: put `value` (absent: remove) at the keys; list members are named by "id=...". */
export interface DocumentEdit {
  readonly path: readonly string[];
  readonly value?: unknown;
}
