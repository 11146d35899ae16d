// Writes src/core/clock/holidays/<table>.json from date-holidays. Run by hand (node test/tools/holidays.mjs) when the years run out; afterwards the
// files may be edited like any other. The data of date-holidays is under CC BY-SA 3.0, and so are these tables: see holidays/README.md.
import { writeFileSync } from "node:fs";
import Holidays from "date-holidays";

const first = 2024;
const last = 2045;
const folder = "src/core/clock/holidays";

const tables = {
  "us-federal": ["US"],
  ca: ["CA"],
  "gb-england": ["GB", "ENG"],
  ie: ["IE"],
  de: ["DE"],
  fr: ["FR"],
  au: ["AU"],
  nz: ["NZ"],
};

for (const [table, region] of Object.entries(tables)) {
  const book = new Holidays(...region);
  book.setLanguages("en");
  const days = {};
  for (let year = first; year <= last; year += 1) {
    for (const { date, name, type } of book.getHolidays(year)) {
      if (type !== "public") continue;
      const plain = name.replace(" (substitute day)", "").replaceAll("’", "'");
      days[plain] ??= [];
      days[plain].push(date.slice(0, 10));
    }
  }
  const lines = Object.entries(days).map(([name, dates]) => `    ${JSON.stringify(name)}: ${JSON.stringify([...new Set(dates)].sort())}`);
  writeFileSync(`${folder}/${table}.json`, `{\n  "from": ${first},\n  "to": ${last},\n  "days": {\n${lines.join(",\n")}\n  }\n}\n`);
}
