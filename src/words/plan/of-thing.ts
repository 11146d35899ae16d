import { spelledFigure } from "../text";
import type { Voice } from "../voice";

/** "one more saw", "two more of the form sheets": of equipment or of a stock, which is often named as many. */
export function ofThing(id: string, number: number, say: Voice): string {
  const name = say.any(id).replace(/^the /, "");
  const isStock = say.build?.at.stock.has(id as never) === true;
  return number === 1 && !isStock ? `one more ${name}` : `${spelledFigure(number)} more of the ${name}`.replace("the “", "“");
}
