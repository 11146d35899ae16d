import { openDB } from "idb";
import { type Database, type Layout, upgrade } from "./layout";
import { databaseVersion, StoreError } from "./port";

export interface ConnectionOptions {
  readonly name?: string;
  /** Called once when another page wants to change the layout; the connection is closed by then. */
  onUpgraded(): void;
}

/** The one connection of a page. A connection that the browser has dropped is made again; one closed for an upgrade is not. */
export class Connection {
  readonly #options: ConnectionOptions;
  #database: Promise<Database> | null = null;
  #upgraded = false;

  constructor(options: ConnectionOptions) {
    this.#options = options;
  }

  /** Throws StoreError: refused, or upgraded where the layout is newer than this program. */
  async open(): Promise<void> {
    await this.#connected();
  }

  close(): void {
    void this.#database?.then((database) => database.close()).catch(() => undefined);
    this.#database = null;
  }

  /** Does the work; whatever goes wrong comes out as a StoreError. */
  async attempt<T>(work: (database: Database) => Promise<T>): Promise<T> {
    try {
      return await this.#twice(work);
    } catch (error) {
      if (error instanceof StoreError) throw error;
      if (isNamed(error, "QuotaExceededError")) throw new StoreError("full", error);
      throw new StoreError("failed", error);
    }
  }

  async #twice<T>(work: (database: Database) => Promise<T>): Promise<T> {
    const database = await this.#connected();
    try {
      return await work(database);
    } catch (error) {
      // A connection that was closed under the page answers with this, before anything of the work is done.
      if (!isNamed(error, "InvalidStateError")) throw error;
      this.#database = null;
      return work(await this.#connected());
    }
  }

  async #connected(): Promise<Database> {
    if (this.#upgraded) throw new StoreError("upgraded");
    this.#database ??= this.#connect();
    try {
      return await this.#database;
    } catch (error) {
      this.#database = null;
      throw error;
    }
  }

  async #connect(): Promise<Database> {
    try {
      const database: Database = await openDB<Layout>(this.#options.name ?? "batterboard", databaseVersion, {
        upgrade: (fresh, from, _to, work) => upgrade(fresh, from, work as never),
        blocking: (_current, wanted) => {
          database?.close();
          this.#database = null;
          // Without a version wanted the database is being deleted: it is made again with the next write.
          if (wanted === null) return;
          this.#upgraded = true;
          this.#options.onUpgraded();
        },
        terminated: () => {
          this.#database = null;
        },
      });
      return database;
    } catch (error) {
      if (isNamed(error, "VersionError")) throw new StoreError("upgraded", error);
      throw new StoreError(isNamed(error, "QuotaExceededError") ? "full" : "refused", error);
    }
  }
}

function isNamed(error: unknown, name: string): boolean {
  return typeof error === "object" && error !== null && "name" in error && error.name === name;
}
