import type { Answers, Ask, Given, Unknown } from "./kit";

/** A question whose answer takes something off the list of what is not known yet. */
export const saidAsk = (key: string, label: string, when?: (answers: Answers) => boolean): Ask => ({
  key,
  label,
  help: "And who says so. Empty: it stays on the list of what is not known.",
  kind: "text",
  usual: "",
  ...(when ? { when } : {}),
});

/** The unknown while nothing was answered to its question. */
export const unsaid = ({ answers, part }: Given, key: string, code: string): readonly Unknown[] =>
  answers.text(key).trim() === "" ? [{ code, part }] : [];
