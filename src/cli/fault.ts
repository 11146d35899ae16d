/** Something the user can put right, said in one sentence; the command ends with exit code 2. */
export class Fault extends Error {}

/** What a command hands back: text for the standard output, and 0, or 1 where the answer is no. */
export interface Outcome {
  readonly text: string;
  readonly code: 0 | 1;
}

/** Lines as they go out. */
export const outcome = (lines: readonly string[], code: 0 | 1 = 0): Outcome => ({ text: `${lines.join("\n")}\n`, code });

/** The outside world, handed in. */
export interface Ports {
  /** @throws for a file that cannot be read */
  readText(path: string): string;
  writeText(path: string, text: string): void;
  out(text: string): void;
  err(text: string): void;
}
