import type { Build } from "../../core/build";
import type { Stays } from "../../core/kits";
import { listed, readable, sentence } from "../text";
import { voice } from "../voice";

/** At most so many by name; the rest are counted. */
const most = 4;

/** What the new answers of a part do not change, since it was changed by hand or is of an older kit. Empty where everything follows. */
export function staysSentence(stays: readonly Stays[], build: Build | null): string {
  if (stays.length === 0) return "";
  const say = voice(build);
  const words = (key: string): string => readable(key.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase());
  const named = stays.slice(0, stays.length > most ? most - 1 : most).map(({ list, id, keys }) => {
    const thing = say.thing(list, id);
    const what = list === "pours" ? `the pour of ${thing.replace(/^the /, "")}` : thing;
    return `${what} (${listed(keys.map(words))})`;
  });
  const more = stays.length - named.length;
  const all = listed(more > 0 ? [...named, `${more} more`] : named);
  return sentence(
    `${all} ${stays.length === 1 ? "stays" : "stay"} in part as written, changed by hand or put in by an older version of this kit; see whether that still fits the new answers`,
  );
}
