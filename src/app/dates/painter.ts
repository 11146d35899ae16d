import type { Mark } from "../../draw";

const space = "http://www.w3.org/2000/svg";

interface Drawn {
  readonly element: SVGElement;
  mark: Mark;
  pale: boolean;
  turn: number;
}

/**
 * Keeps the elements of a group in step with a list of marks. A sheet has a thousand of them, most of which stay as they are through a change: only what
 * became different is touched, and nothing is kept for each but the mark it shows.
 */
export class Painter {
  readonly #group: SVGGElement;
  readonly #drawn = new Map<string, Drawn>();
  #turn = 0;

  constructor(group: SVGGElement) {
    this.#group = group;
  }

  /** `marks` in drawing order, each id once; `faded`: which are drawn pale. */
  paint(marks: readonly Mark[], faded: ((mark: Mark) => boolean) | null): void {
    this.#turn += 1;
    const elements = marks.map((mark) => this.#draw(mark, faded?.(mark) ?? false));
    for (const [id, drawn] of this.#drawn) {
      if (drawn.turn === this.#turn) continue;
      drawn.element.remove();
      this.#drawn.delete(id);
    }
    let at = this.#group.firstChild;
    for (const element of elements) {
      if (element === at) at = at.nextSibling;
      else this.#group.insertBefore(element, at);
    }
  }

  #draw(mark: Mark, pale: boolean): SVGElement {
    const known = this.#drawn.get(mark.id);
    if (known?.mark.shape === mark.shape) {
      if (known.mark !== mark) change(known.element, known.mark, mark);
      if (known.pale !== pale) known.element.classList.toggle("faded", pale);
      known.mark = mark;
      known.pale = pale;
      known.turn = this.#turn;
      return known.element;
    }
    known?.element.remove();
    const element = document.createElementNS(space, mark.shape) as SVGElement;
    change(element, null, mark);
    if (pale) element.classList.add("faded");
    this.#drawn.set(mark.id, { element, mark, pale, turn: this.#turn });
    return element;
  }
}

function change(element: SVGElement, before: Mark | null, mark: Mark): void {
  if (before?.role !== mark.role) {
    if (before) element.classList.remove(`mark-${before.role}`);
    element.classList.add(`mark-${mark.role}`);
  }
  const [old, now] = [before === null ? {} : attributes(before), attributes(mark)];
  for (const name in now) if (old[name] !== now[name]) element.setAttribute(name, String(now[name]));
  if (mark.shape === "text" && (before?.shape !== "text" || before.text !== mark.text)) element.textContent = mark.text;
}

function attributes(mark: Mark): Readonly<Record<string, string | number>> {
  if (mark.shape === "rect") return { x: mark.x0, y: mark.y0, width: mark.x1 - mark.x0, height: mark.y1 - mark.y0 };
  if (mark.shape === "path") return { d: mark.d };
  return { x: mark.x, y: mark.y, "font-size": mark.size, "font-weight": mark.weight };
}
