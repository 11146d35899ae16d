import { nearest } from "../core/base";
import { type Build, type ReadResult, read, readDocument } from "../core/build";
import { examples } from "../examples";
import { counted, findingSentence, listed, quoted } from "../words";
import { Fault, type Ports } from "./fault";

const mark = "example:";

/** A build file, or a build that comes with the program by "example:" and its name, read but not judged. @throws Fault */
export async function readFile(file: string, ports: Ports): Promise<ReadResult> {
  if (file.startsWith(mark)) return readDocument(await exampleOf(file.slice(mark.length)).load());
  let text: string;
  try {
    text = ports.readText(file);
  } catch (error) {
    throw new Fault(`${quoted(file)} cannot be read: ${reasonOf(error)}.`);
  }
  return read(text.replace(/^\uFEFF/, ""));
}

/** As `readFile`, where a build is needed to go on. @throws Fault with the first thing that stands in the way */
export async function openBuild(file: string, ports: Ports): Promise<{ readonly build: Build; readonly read: ReadResult }> {
  const result = await readFile(file, ports);
  if (result.build !== null) return { build: result.build, read: result };
  const stops = result.findings.filter(({ severity }) => severity === "stop");
  const first = stops[0] === undefined ? "it says nothing that can be planned" : findingSentence(stops[0], null).replace(/\.$/, "");
  const more = stops.length > 1 ? ` (and ${counted(stops.length - 1, "more fault")}: see the command check)` : "";
  throw new Fault(`${quoted(file)} cannot be read as a build: ${first}${more}.`);
}

function exampleOf(name: string) {
  const found = examples.find(({ id }) => id === name);
  if (found !== undefined) return found;
  const ids = examples.map(({ id }) => id);
  const near = nearest(name, ids);
  const hint = near === null ? `there are ${listed(ids.map((id) => mark + id))}` : `is ${mark}${near} meant?`;
  throw new Fault(`There is no example ${quoted(name)}; ${hint}${hint.endsWith("?") ? "" : "."}`);
}

function reasonOf(error: unknown): string {
  const code = (error as { code?: string }).code;
  if (code === "ENOENT") return "there is no such file";
  if (code === "EISDIR") return "it is a folder";
  if (code === "EACCES") return "this account may not read it";
  return "the system does not hand it over";
}
