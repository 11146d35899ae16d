import type { History } from "../../core/edit";
import { browserTabs, openDatabase, type Port, Shelf, type ShelfOptions, StoreError, type StoreTrouble } from "../../store";
import { type Action, act } from "./history";

/** The newest document format that this program writes. */
const format = 1;

/** Where builds are kept in this browser; without a place to keep anything the shelf only holds what is open, and the trouble says why. */
export async function openShelf(
  told: Pick<ShelfOptions<History>, "whole" | "onSave" | "onLease">,
): Promise<{ readonly shelf: Shelf<History>; readonly trouble: StoreTrouble | null }> {
  let shelf: Shelf<History> | null = null;
  let port: Port | null = null;
  let trouble: StoreTrouble | null = null;
  try {
    port = await openDatabase({ format, onUpgraded: () => shelf?.stop("upgraded") });
  } catch (error) {
    trouble = error instanceof StoreError ? error.trouble : "failed";
  }
  shelf = new Shelf<History>({
    ...told,
    port,
    trouble,
    tabs: browserTabs({ locks: navigator.locks, Channel: globalThis.BroadcastChannel }),
    tab: crypto.randomUUID?.() ?? String(Math.random()),
    format,
    apply: (work, action) => act(work, action as Action),
    now_ms: () => Date.now(),
    newKey: () => crypto.randomUUID?.() ?? `${Date.now()}-${Math.random()}`,
  });
  return { shelf, trouble };
}
