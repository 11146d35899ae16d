import { readDocument } from "../../core/build";
import { apply } from "../../core/edit";
import { OneMore, quickFinish, searched } from "../../core/plan";
import { oneMoreWords } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { openBuild } from "../open";

/** What one more day off, helper's day, visit or set of things would buy, each planned afresh. 1 when the build has no dates. */
export async function oneMoreCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build, read } = await openBuild(file, ports);
  const { document } = read;
  const search = new OneMore(build, (edits) => readDocument(apply(document, edits).document).build, {
    quick: quickFinish,
    search: searched,
  });
  while (!search.table().done) search.step(100);
  const table = search.table();
  const { lead, rows } = oneMoreWords(table, build);
  return outcome([lead, "", ...rows.map(({ what, sentence }) => `${what}: ${sentence}`)], table.rows.length > 0 ? 0 : 1);
}
