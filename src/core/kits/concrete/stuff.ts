import { choiceAsk, yesAsk } from "../asks";
import type { Ask } from "../kit";
import type { Making } from "../making";
import type { Lumber } from "./lay";

/** What is asked of the stuff of every form whose face shows. */
export const formAsks: readonly Ask[] = [
  choiceAsk("lumber", "Lumber and sheets of the form", { bought: "bought", salvaged: "salvaged" }),
  yesAsk("trial", "A small trial casting decides release agent and sealant first", false),
];

export const lumberOf = (making: Making): Lumber => making.given.answers.choice("lumber") as Lumber;

/**
 * Where the stuff of a form comes from: bought, with its delivery; or salvaged, looked over first. Gives the deliveries its first step needs and the pieces that step leans on.
 */
export function addStuff(making: Making, area_m2: number): { readonly needs: readonly string[]; readonly leansOn: readonly object[] } {
  const { given } = making;
  if (lumberOf(making) === "bought") {
    const comes = making.add("deliveries", "lumber-comes", {
      name: `Lumber and sheets for ${given.name}`,
      calendar: given.common("lumber-yard"),
      lead: { is: `5 days of ${given.common("lumber-yard")}`, from: "own guess" },
      ordered: false,
    });
    return { needs: [comes], leansOn: [] };
  }
  const picked = making.add("pieces", "picked", { name: `picked lumber for ${given.name}`, sort: "other" });
  making.add("steps", "pick", {
    name: `Look over salvaged lumber for ${given.name}`,
    sort: "check",
    place: given.common("store"),
    work: given.hours("clean", area_m2),
    reaches: [{ place: given.common("store") }],
    puts: [picked],
    tools: ["magnet or metal finder", "pry bar"],
    notes: "Nails out, cracked and rotten pieces aside, sizes measured: the form is judged as lumber of no known grade.",
  });
  return { needs: [], leansOn: [{ piece: picked }] };
}

/** A trial casting in two rounds, if one was asked for, on which these steps rest. */
export function addTrial(making: Making, decides: readonly string[]): void {
  const { given } = making;
  if (!given.answers.yes("trial")) return;
  making.add("steps", "trial", {
    name: `Trial casting for ${given.name}`,
    place: given.common("store"),
    work: given.hours("trial", 1),
    reaches: [{ place: given.common("store") }],
    materials: ["2 bags of mix each"],
    notes: "A corner with the same sheets, sealant and release agent; strip after three days, look at it dry.",
    trial: { rounds: 2, gap: { is: "6 d", from: "own guess" }, decides, what: "Release agent and sealant of the faces that stay visible" },
  });
}

/** A release agent is good for so long under cover (common practice; its sheet rules). */
export const coatLasts = { is: "28 d", from: "own guess" };
