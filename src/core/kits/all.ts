import { scaffold } from "./around/scaffold";
import { siteFence } from "./around/site-fence";
import { layout } from "./before/layout";
import { permits } from "./before/permits";
import { stockInHand } from "./before/stock-in-hand";
import { trialCasting } from "./before/trial-casting";
import { arch } from "./concrete/arch";
import { column } from "./concrete/column";
import { deckSlab } from "./concrete/deck-slab";
import { footing } from "./concrete/footing";
import { groundSlab } from "./concrete/ground-slab";
import { pier } from "./concrete/pier";
import { retainingWall } from "./concrete/retaining-wall";
import { stair } from "./concrete/stair";
import { wall } from "./concrete/wall";
import { drainLine } from "./ground/drain-line";
import { houseTrench } from "./ground/house-trench";
import type { Kit } from "./kit";
import { postRoof } from "./timber/post-roof";
import { smallBuilding } from "./timber/small-building";

/** Every kit, sorted by group and then as built. */
export const kits: readonly Kit[] = [
  layout,
  permits,
  stockInHand,
  trialCasting,
  houseTrench,
  drainLine,
  footing,
  pier,
  column,
  wall,
  retainingWall,
  groundSlab,
  deckSlab,
  arch,
  stair,
  postRoof,
  smallBuilding,
  scaffold,
  siteFence,
];

const byId = new Map(kits.map((kit) => [kit.id, kit]));

/** The kit of an id; undefined where there is none. */
export const kitOf = (id: string): Kit | undefined => byId.get(id);
