import { toVersion1 } from "./0001-usual-calendar-and-sets-of-holders";

export type Migration = (document: Readonly<Record<string, unknown>>) => Readonly<Record<string, unknown>>;

/** The migration at position n brings a document of version n to version n + 1. Never change one that was published: add the next. */
export const migrations: readonly Migration[] = [toVersion1];

/** Brings an older document up to the present version, one version after the other; the one handed in stays as it is. */
export function migrate(document: Readonly<Record<string, unknown>>, from: number): Readonly<Record<string, unknown>> {
  return migrations.slice(from).reduce((older, one) => one(older), document);
}
