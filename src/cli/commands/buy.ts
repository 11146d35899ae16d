import { plan, pourDates } from "../../core/plan";
import { pourSheets, shopping } from "../../core/pour";
import { buyWords } from "../../words";
import { type Outcome, outcome, type Ports } from "../fault";
import { openBuild } from "../open";

/** What is still to buy for the pours and forms, most pressing first, with what is in hand, ordered and coming back taken off. */
export async function buyCommand(file: string, ports: Ports): Promise<Outcome> {
  const { build } = await openBuild(file, ports);
  const made = plan(build);
  const rows = shopping(build, pourSheets(build), pourDates(made))
    .filter(({ toBuy }) => toBuy > 0)
    .map((one) => buyWords(one, build));
  if (rows.length === 0) return outcome(["Nothing is to buy, as far as pours, forms and stock are written down."]);
  const wide = Math.max(...rows.map(({ number }) => number.length));
  return outcome([
    "What is still to buy",
    ...rows.map((row) => {
      const when = [row.orderBy === "" ? "" : `order by ${row.orderBy}`, row.neededBy === "" ? "" : `on site ${row.neededBy}`].filter(
        (one) => one !== "",
      );
      return `  ${row.number.padStart(wide)}  ${row.what}${row.less === "" ? "" : ` (${row.less})`}${when.length === 0 ? "" : `: ${when.join(", ")}`}; for ${row.for}`;
    }),
    ...(made.status === "planned" ? [] : ["", "There is no plan, so nothing has a date and nothing is counted as coming back."]),
    "",
    "Counted from the figures written down, with waste where it says so. Look at the drawings and the product sheets before you order.",
  ]);
}
