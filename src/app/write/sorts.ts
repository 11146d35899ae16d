/** Kinds of steps and pieces, as the forms name them. */
export const stepSorts = [
  { id: "work", name: "work" },
  { id: "embed", name: "something cast in" },
  { id: "check", name: "a check" },
  { id: "photograph", name: "a photograph" },
  { id: "inspection", name: "an inspection" },
  { id: "pour", name: "a pour" },
  { id: "office", name: "a request or booking" },
] as const;

export const pieceSorts = [
  { id: "other", name: "something else" },
  { id: "form", name: "form" },
  { id: "concrete", name: "concrete" },
  { id: "earth", name: "earth" },
  { id: "shore", name: "shore" },
  { id: "brace", name: "brace" },
  { id: "scaffold", name: "scaffold" },
  { id: "hole", name: "hole" },
  { id: "cover", name: "cover" },
] as const;
