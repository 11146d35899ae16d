import { version as format } from "../../core/build";
import { begin, type History } from "../../core/edit";
import { browserTabs, Others, openDatabase, Shelf, type ShelfOptions, type Storage, StoreError } from "../../store";
import { type Action, act } from "./history";
import { nameOf } from "./names";
import { remember, remembered } from "./stored";

type Told = Pick<ShelfOptions<History>, "onSave" | "onLease" | "onFollow" | "onListed">;

/** Where builds are kept in this browser; without a place to keep anything the shelf only holds what is open, and its trouble says why. */
export interface Keeping {
  readonly shelf: Shelf<History>;
  /** Kept builds that are not open; null without storage. */
  readonly others: Others<History> | null;
  /** Tries to open the storage that was refused. */
  again(work: History | null): Promise<void>;
}

/** Pages served over plain http have no randomUUID. */
const newKey = (): string => crypto.randomUUID?.() ?? `${Date.now()}-${crypto.getRandomValues(new Uint32Array(2)).join("-")}`;

const mooring: ShelfOptions<History>["mooring"] = {
  put: (key, boat) => remember(`unsaved.${key}`, boat),
  get: (key) => remembered(`unsaved.${key}`),
};

export async function openKeeping(told: Told): Promise<Keeping> {
  let shelf: Shelf<History> | null = null;
  const open = async (): Promise<Storage> => {
    try {
      return { port: await openDatabase({ format, onUpgraded: () => shelf?.stop("upgraded") }) };
    } catch (error) {
      return { trouble: error instanceof StoreError ? error.trouble : "failed" };
    }
  };
  const common = {
    tabs: browserTabs({ locks: navigator.locks, Channel: globalThis.BroadcastChannel }),
    tab: newKey(),
    format,
    apply: (work: History, action: unknown) => act(work, action as Action),
    nameOf: (work: History) => nameOf(work.document),
    now_ms: () => Date.now(),
    newKey,
    mooring,
  };
  const storage = await open();
  const made = new Shelf<History>({
    ...common,
    ...told,
    storage,
  });
  shelf = made;
  let others = "port" in storage ? new Others<History>({ ...common, port: storage.port }) : null;
  return {
    shelf: made,
    get others() {
      return others;
    },
    async again(work) {
      const found = await open();
      if ("port" in found) others = new Others<History>({ ...common, port: found.port });
      made.found(found, work);
    },
  };
}

/** A copy of a build is a build of its own, with a new id and nothing to undo. */
export function copyOf(work: History): History {
  const name = `${nameOf(work.document)}, copy`;
  return begin({ ...(work.document as object), id: `build-${newKey()}`, name });
}
