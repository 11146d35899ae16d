import { type Shop, views } from "../state";

/** True where a key belongs to what has the focus: a field, a list to pick from, an open dialog. */
function typing(target: EventTarget | null): boolean {
  return target instanceof Element && target.closest("input, textarea, select, [contenteditable], dialog[open]") !== null;
}

/** Keys that hold in every view. A field's own undo stays the field's. */
export function onKey(shop: Shop, event: KeyboardEvent): void {
  if (event.defaultPrevented || event.altKey) return;
  const key = event.key.toLowerCase();
  const done = (): void => event.preventDefault();
  if (event.ctrlKey || event.metaKey) {
    if (key === "s") {
      done();
      void shop.saveFile();
    } else if (key === "o") {
      done();
      shop.showStart();
    } else if ((key === "z" || key === "y") && !typing(event.target)) {
      done();
      if (key === "y" || event.shiftKey) shop.desk.redo();
      else shop.desk.undo();
    }
    return;
  }
  if (event.key === "Escape" && !(event.target instanceof Element && event.target.closest("dialog[open], [popover]:popover-open"))) {
    shop.escape();
    return;
  }
  if (!shop.settings.viewKeys || typing(event.target)) return;
  const view = views[Number(event.key) - 1];
  if (view && shop.isOpen) {
    done();
    shop.settings.view = view.id;
  } else if (event.key === "?") {
    done();
    shop.showKeys();
  }
}
