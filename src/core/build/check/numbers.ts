import { nearest, writtenId } from "../../base";
import type { Names } from "../link/names";
import type { Delivery, Equipment, Person, Piece, Step, Stock } from "../model";

/** Roles that nobody has, and more people than there are: said once a role, at the step that asks for most. */
export function checkHands(people: readonly Person[], steps: readonly Step[], names: Names): void {
  const there = new Map<string, number>([["hands", people.length]]);
  for (const person of people)
    for (const role of new Set(person.roles)) there.set(role, (there.get(role) ?? 0) + (role === "hands" ? 0 : 1));
  const worst = new Map<string, { step: Step; number: number }>();
  for (const step of steps) {
    for (const need of step.hands) {
      if (need.number > (there.get(need.role) ?? 0) && need.number > (worst.get(need.role)?.number ?? 0))
        worst.set(need.role, { step, number: need.number });
    }
  }
  for (const [role, { step, number }] of worst) {
    const meant = there.has(role) ? "" : (nearest(role, there.keys()) ?? "");
    names.say(
      "build.nobody-can",
      { list: "steps", id: writtenId(step.id), key: "hands" },
      { role, wanted: number, there: there.get(role) ?? 0, nearest: meant },
    );
  }
}

/** More of an equipment or a stock than there is or is brought. */
export function checkStock(
  stock: readonly Stock[],
  equipment: readonly Equipment[],
  deliveries: readonly Delivery[],
  steps: readonly Step[],
  pieces: readonly Piece[],
  names: Names,
): void {
  const there = new Map<string, number>();
  for (const item of equipment) there.set(item.id, item.number);
  for (const item of stock) there.set(item.id, item.inHand);
  for (const { brings } of deliveries) for (const { of, number } of brings) there.set(of, (there.get(of) ?? 0) + number);
  const check = (list: string, id: string, key: string, of: string, number: number): void => {
    const most = there.get(of);
    if (most !== undefined && number > most)
      names.say("build.too-few", { list, id: writtenId(id), key }, { of, wanted: number, there: most });
  };
  for (const step of steps) for (const { of, number } of step.equipment) check("steps", step.id, "equipment", of, number);
  for (const piece of pieces) for (const { of, number } of piece.uses) check("pieces", piece.id, "uses", of, number);
}
