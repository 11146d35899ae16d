import { type Shop, views } from "../state";

const inside = (target: EventTarget | null, selector: string): boolean => target instanceof Element && target.closest(selector) !== null;

/** True where a key belongs to what has the focus: a field, a list to pick from, an open dialog. */
export const isTyping = (target: EventTarget | null): boolean => inside(target, "input, textarea, select, [contenteditable], dialog[open]");

/** Fields that can take back what was typed in them; a date, a list or a box cannot. */
const hasUndo = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement || (target instanceof HTMLInputElement && ["text", "search", "number"].includes(target.type));

/** Keys that hold in every view. */
export class Keys {
  readonly #shop: Shop;
  /** The field that text was typed in since it got the focus: its own undo goes first. */
  #typedIn: EventTarget | null = null;

  constructor(shop: Shop) {
    this.#shop = shop;
  }

  /** For every change of a field. */
  typed(field: EventTarget | null): void {
    this.#typedIn = field;
  }

  /** For every field that is left, or whose text was taken. */
  left(): void {
    this.#typedIn = null;
  }

  press(event: KeyboardEvent): void {
    if (event.defaultPrevented || event.altKey) return;
    if (event.ctrlKey || event.metaKey) this.#command(event);
    else if (event.key === "Escape") this.#escape(event.target);
    else if (this.#shop.settings.viewKeys && !isTyping(event.target) && this.#single(event.key)) event.preventDefault();
  }

  #command(event: KeyboardEvent): void {
    const shop = this.#shop;
    const key = event.key.toLowerCase();
    if (key === "s") void shop.saveFile();
    else if (key === "o") shop.showStart();
    else if (key === "d" && !isTyping(event.target)) this.#duplicate();
    else if (key !== "z" && key !== "y") return;
    else if (hasUndo(event.target) && event.target === this.#typedIn) return;
    else if (key === "y" || event.shiftKey) shop.desk.redo();
    else shop.desk.undo();
    event.preventDefault();
  }

  /** Only where something is chosen: else the browser's own meaning holds. */
  #duplicate(): void {
    const { desk, picked } = this.#shop;
    const steps = picked.size > 0 ? [...picked.ids] : desk.selected?.list === "steps" ? [desk.selected.id] : [];
    this.#shop.duplicate(steps);
  }

  #escape(target: EventTarget | null): void {
    if (!inside(target, "dialog[open], [popover]:popover-open")) this.#shop.escape();
  }

  /** False for a key that is none of these. */
  #single(key: string): boolean {
    const shop = this.#shop;
    const view = views.find((one) => one.key === key);
    if (view && shop.isOpen) shop.look(view.id);
    else if (key.toLowerCase() === "a" && shop.isOpen && !shop.desk.readOnly) shop.add();
    else if (key === "?") shop.showKeys();
    else if (key === "/" && shop.isOpen) shop.findShown = true;
    else return shop.viewKey(key);
    return true;
  }
}
