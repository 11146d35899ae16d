import type { Kit } from "../../core/kits";

const names: Readonly<Record<Kit["group"], string>> = {
  before: "Before anything",
  ground: "In the ground",
  concrete: "Concrete",
  timber: "Timber",
  around: "Round about",
};

/** Kits by group, in the order in which a structure grows; empty groups are left out. */
export function kitGroups(
  kits: readonly Kit[],
): readonly { readonly group: string; readonly name: string; readonly kits: readonly Kit[] }[] {
  return (Object.keys(names) as Kit["group"][]).flatMap((group) => {
    const of = kits.filter((kit) => kit.group === group);
    return of.length === 0 ? [] : [{ group, name: names[group], kits: of }];
  });
}
