import { limits } from "../../base";

export type Wanted = "value" | "name" | "colon" | "comma-or-end" | "nothing" | "text" | "number";

export type ScanFault =
  | { readonly kind: "json"; readonly at: number; readonly wanted: Wanted }
  | { readonly kind: "nested"; readonly at: number }
  | { readonly kind: "twice"; readonly at: number; readonly name: string };

const space = /[ \t\n\r]*/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: RFC 8259 section 7 forbids them unescaped.
const stringBody = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: as above.
const stringPart = /"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*/y;
const number = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const literal = /true|false|null/y;

interface Frame {
  /** Names seen so far; null for a list. */
  readonly names: Set<string> | null;
}

/**
 * Reads JSON (RFC 8259) without making anything of it, to say where it goes wrong: engines differ in that and some say nothing. Also finds what the
 * engine's reader passes over in silence: a name that stands twice in one object (the first would be lost) and nesting without end.
 */
export function scan(text: string): ScanFault | null {
  return new Scanner(text).run();
}

class Scanner {
  readonly #text: string;
  readonly #frames: Frame[] = [];
  #at = 0;

  constructor(text: string) {
    this.#text = text;
  }

  run(): ScanFault | null {
    this.#skip();
    for (;;) {
      const fault = this.#value() ?? this.#close();
      if (fault) return fault;
      if (this.#frames.length === 0) break;
    }
    return this.#at < this.#text.length ? this.#fault("nothing") : null;
  }

  /** A value up to its own end, or up to where its first inner value begins. */
  #value(): ScanFault | null {
    const text = this.#text;
    for (;;) {
      const char = text[this.#at];
      if (char === "{" || char === "[") {
        if (this.#frames.length >= limits.nesting.most) return { kind: "nested", at: this.#at };
        this.#at++;
        this.#skip();
        const isObject = char === "{";
        if (text[this.#at] === (isObject ? "}" : "]")) {
          this.#at++;
          break;
        }
        this.#frames.push({ names: isObject ? new Set() : null });
        const fault = isObject ? this.#name() : null;
        if (fault) return fault;
        continue;
      }
      if (char === '"') {
        if (!this.#match(stringBody)) return this.#brokenString();
      } else if (!this.#match(literal)) {
        const start = this.#at;
        if (!this.#match(number)) return this.#fault(char === "-" ? "number" : "value");
        const isWhole = !/[\d.eE+-]/.test(text[this.#at] ?? "");
        // A figure too large to hold would be written back as null.
        if (!isWhole || !Number.isFinite(Number(text.slice(start, this.#at)))) return { kind: "json", at: start, wanted: "number" };
      }
      break;
    }
    this.#skip();
    return null;
  }

  /** Closes what ends here and goes on to the next value, if there is one. */
  #close(): ScanFault | null {
    for (let frame = this.#frames.at(-1); frame; frame = this.#frames.at(-1)) {
      const char = this.#text[this.#at];
      if (char === ",") {
        this.#at++;
        this.#skip();
        return frame.names ? this.#name() : null;
      }
      if (char !== (frame.names ? "}" : "]")) return this.#fault("comma-or-end");
      this.#frames.pop();
      this.#at++;
      this.#skip();
    }
    return null;
  }

  #name(): ScanFault | null {
    const start = this.#at;
    if (this.#text[start] !== '"') return this.#fault("name");
    if (!this.#match(stringBody)) return this.#brokenString();
    const name = JSON.parse(this.#text.slice(start, this.#at)) as string;
    const names = this.#frames.at(-1)?.names;
    if (names?.has(name)) return { kind: "twice", at: start, name };
    names?.add(name);
    this.#skip();
    if (this.#text[this.#at] !== ":") return this.#fault("colon");
    this.#at++;
    this.#skip();
    return null;
  }

  #brokenString(): ScanFault {
    this.#match(stringPart);
    return this.#fault("text");
  }

  #fault(wanted: Wanted): ScanFault {
    return { kind: "json", at: this.#at, wanted };
  }

  #match(pattern: RegExp): boolean {
    pattern.lastIndex = this.#at;
    if (!pattern.test(this.#text)) return false;
    this.#at = pattern.lastIndex;
    return true;
  }

  #skip(): void {
    this.#match(space);
  }
}

/** Line and column of a place in a text, both counted from 1; the column counts characters as an editor does. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at).split(/\r\n|\r|\n/);
  return { line: before.length, column: [...(before.at(-1) ?? "")].length + 1 };
}
