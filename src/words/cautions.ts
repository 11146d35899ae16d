import { type Build, isCure, type Piece, type Step } from "../core/build";
import { sentence } from "./text";
import { voice } from "./voice";

/*
 * The one place for the usual cautions. They follow from what the build is made of, whether or not its builder wrote one down, and they defer to the local
 * code and to licensed people. Common practice, no source, but for the 5 ft of a trench: 29 CFR 1926.652(a)(1), from memory.
 */
const cautions = {
  shore:
    "Shores carry what can fall on people: have their size, spacing, footing and bracing checked by someone qualified before they are loaded.",
  overPeople: "Nobody under it until it is known to hold: have whoever is qualified for it look at the shores and the form first.",
  scaffold: "What people stand on or under needs guards, a sound footing and a look by someone competent before each day's work.",
  hole: "Nobody goes into a cut 5 ft (1.5 m) or deeper that is neither shored nor sloped; a shallower one can cave in too. Have it looked at by someone competent, and keep spoil and machines off its edge.",
  filled:
    "Fresh concrete presses hard on a form: fill no faster than it was made for, keep a watch on ties, bands and braces, and have the form checked by someone qualified before.",
  brace: "What it holds can fall: no brace comes off before something else holds, and nobody stands where it would fall.",
  strength: "The strength is expected, not shown: have it tested or ask your engineer before anything relies on it.",
} as const;

type Caution = keyof typeof cautions;

/** Stands once below cautions. */
export const deferral = "Local code, the inspector and licensed people decide.";

/** In which order they are told: the gravest first. */
const gravity: readonly Caution[] = ["strength", "overPeople", "shore", "hole", "filled", "scaffold", "brace"];

const bySort: Readonly<Record<string, Caution>> = { shore: "shore", scaffold: "scaffold", hole: "hole", brace: "brace" };

const pieceOf = (build: Build, id: string): Piece | undefined => build.pieces[build.at.piece.get(id) ?? -1];

function ofPiece(build: Build, piece: Piece): Caution[] {
  const held = piece.heldBy.flat().some((id) => pieceOf(build, id)?.sort === "shore");
  const own = bySort[piece.sort];
  return [...(own === undefined ? [] : [own]), ...(held ? (["overPeople"] as const) : [])];
}

/** Whether a step relies on a strength: by what it leans on, a wait, or by taking down what holds something until it has it. */
function reliesOnStrength(build: Build, step: Step): boolean {
  if (step.leansOn.some(({ once }) => isCure(once))) return true;
  if (build.waits.some(({ to, least }) => to === step.id && isCure(least))) return true;
  return step.takes.some((taken) =>
    build.pieces.some(({ heldBy, holdsItself }) => isCure(holdsItself) && heldBy.some((set) => set.includes(taken))),
  );
}

const dug = new WeakMap<Build["pieces"], ReadonlySet<string>>();

/** Places that one gets at only since something was dug. */
function placesDug({ pieces }: Build): ReadonlySet<string> {
  const places = dug.get(pieces) ?? new Set(pieces.flatMap(({ sort, makes }) => (sort === "hole" ? makes.map(({ place }) => place) : [])));
  dug.set(pieces, places);
  return places;
}

/** Whether somebody goes down into a cut for it. */
const goesDown = (build: Build, { reaches }: Step): boolean =>
  reaches.some(({ any }) => any.some(({ place, need }) => need.kind === "person" && placesDug(build).has(place)));

function ofStep(build: Build, step: Step): Caution[] {
  const pieces = [...step.puts, ...step.takes].flatMap((id) => pieceOf(build, id) ?? []);
  const leans = step.leansOn.flatMap(({ piece }) => pieceOf(build, piece) ?? []);
  const pours = step.sort === "pour" || step.pour !== null;
  return [
    ...(reliesOnStrength(build, step) ? (["strength"] as const) : []),
    ...(pours && leans.some(({ sort }) => sort === "form") ? (["filled"] as const) : []),
    ...(pours && leans.some(({ sort }) => sort === "shore") ? (["overPeople"] as const) : []),
    ...(leans.some(({ sort }) => sort === "hole") || goesDown(build, step) ? (["hole"] as const) : []),
    ...pieces.flatMap((piece) => ofPiece(build, piece)),
  ];
}

const inOrder = (found: readonly Caution[]): string[] => gravity.filter((one) => found.includes(one)).map((one) => cautions[one]);

/** What to keep in mind at a step, by what it puts up, takes down, pours and relies on; first what the builder wrote. */
export function stepCautions(build: Build, step: Step): string[] {
  return [...step.cautions.map(sentence), ...inOrder(ofStep(build, step))];
}

/** As `stepCautions` of a piece, put up or there already. */
export function pieceCautions(build: Build, piece: Piece): string[] {
  return inOrder([...ofPiece(build, piece), ...(isCure(piece.holdsItself) ? (["strength"] as const) : [])]);
}

/** Every caution of a build once, the gravest first, with the steps it is about; what the builder wrote follows step by step. */
export function buildCautions(build: Build): { readonly says: string; readonly steps: readonly string[] }[] {
  const say = voice(build);
  const about = new Map<string, string[]>();
  for (const step of build.steps) {
    for (const says of inOrder(ofStep(build, step))) about.set(says, [...(about.get(says) ?? []), say.step(step.id)]);
  }
  const derived = inOrder(gravity).flatMap((says) => {
    const steps = about.get(says);
    return steps === undefined ? [] : [{ says, steps }];
  });
  const written = build.steps.flatMap((step) => step.cautions.map((says) => ({ says: sentence(says), steps: [say.step(step.id)] })));
  return [...derived, ...written];
}
