import { type ParseArgsConfig, parseArgs } from "node:util";

/** The options of a bench; a wrong one ends it with one sentence. */
export function optionsOf<T extends NonNullable<ParseArgsConfig["options"]>>(
  options: T,
): ReturnType<typeof parseArgs<{ options: T }>>["values"] {
  try {
    return parseArgs({ options }).values;
  } catch (e) {
    console.error((e instanceof Error ? e.message : String(e)).split("\n")[0]);
    process.exit(1);
  }
}
