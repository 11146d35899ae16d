import { layout } from "./before/layout";
import { footing } from "./concrete/footing";
import { drainLine } from "./ground/drain-line";
import { houseTrench } from "./ground/house-trench";
import type { Kit } from "./kit";
import { postRoof } from "./timber/post-roof";
import { smallBuilding } from "./timber/small-building";

/** Every kit, sorted by group and then as built. */
export const kits: readonly Kit[] = [layout, houseTrench, drainLine, footing, postRoof, smallBuilding];

const byId = new Map(kits.map((kit) => [kit.id, kit]));

/** The kit of an id; undefined where there is none. */
export const kitOf = (id: string): Kit | undefined => byId.get(id);
