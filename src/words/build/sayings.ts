import type { Statement, Where } from "../../core/base";
import type { Detail, Voice } from "../voice";

/** What a saying is made of: where the finding is (in words), its detail, and how things are named. */
export interface Told {
  readonly at: string;
  readonly where: Where;
  readonly detail: Detail;
  /** The statements of a set that cannot all hold; empty where there is none. */
  readonly because: readonly Statement[];
  readonly voice: Voice;
}

/** Sentences by code, without a capital in front or a stop behind. */
export type Sayings = Readonly<Record<string, (told: Told) => string>>;
