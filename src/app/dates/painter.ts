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
  if (mark.shape === "rect") {
    const old = before?.shape === "rect" ? before : null;
    put(element, "x", old?.x0, mark.x0);
    put(element, "y", old?.y0, mark.y0);
    put(element, "width", old ? old.x1 - old.x0 : undefined, mark.x1 - mark.x0);
    put(element, "height", old ? old.y1 - old.y0 : undefined, mark.y1 - mark.y0);
  } else if (mark.shape === "path") {
    if (before?.shape !== "path" || before.d !== mark.d) element.setAttribute("d", mark.d);
  } else {
    const old = before?.shape === "text" ? before : null;
    put(element, "x", old?.x, mark.x);
    put(element, "y", old?.y, mark.y);
    put(element, "font-size", old?.size, mark.size);
    put(element, "font-weight", old?.weight, mark.weight);
    if (old?.text !== mark.text) element.textContent = mark.text;
  }
}

/** To a hundredth of a px: a number with all its decimals takes as long to write down and to read as all else that is done for its element. */
function put(element: SVGElement, name: string, before: number | undefined, now: number): void {
  const value = Math.round(now * 100) / 100;
  if (before === undefined || Math.round(before * 100) / 100 !== value) element.setAttribute(name, String(value));
}
