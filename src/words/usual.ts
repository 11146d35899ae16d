import { listed, quoted, sentence } from "./text";

/** What a new step would start with, as it is offered. */
interface Usual {
  readonly sort?: string | undefined;
  readonly need?: string | undefined;
  /** Name of the place, and whether it is a new one. */
  readonly place: string;
  readonly isNewPlace: boolean;
  readonly piece: string;
  readonly does: "closes" | "fills" | "nothing";
  readonly takes: readonly string[];
  readonly holdPoint: boolean;
}

const sorts: Readonly<Record<string, string>> = {
  embed: "is something cast in",
  check: "is a check",
  photograph: "is a photograph",
  inspection: "is an inspection",
  pour: "is a pour",
  office: "is a request or booking",
};
const needs: Readonly<Record<string, string>> = {
  person: "gets at",
  sight: "must see",
  hand: "gets a hand to",
  arm: "gets an arm with a tool to",
  hose: "gets a hose to",
  machine: "gets a machine to",
};
const acts = { closes: ", which closes a way in", fills: ", which fills it", nothing: "" } as const;

/** What steps of that name usually are, reach and put up, in one sentence. */
export function usualSentence({ sort, need, place, isNewPlace, piece, does, takes, holdPoint }: Usual): string {
  const parts = [
    sort === undefined ? "" : (sorts[sort] ?? ""),
    place === "" || need === undefined ? "" : `${needs[need] ?? "gets at"} ${isNewPlace ? "a new place, " : ""}${quoted(place)}`,
    holdPoint && place !== "" ? "comes after the work there and before it is closed" : "",
    piece === "" ? "" : `puts up ${quoted(piece)}${place === "" ? "" : acts[does]}`,
    takes.length === 0 ? "" : `takes down ${listed(takes.map(quoted))}`,
  ].filter((part) => part !== "");
  return sentence(`A step like this usually ${listed(parts)}`);
}
