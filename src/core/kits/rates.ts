/** What a unit of work takes. Hours are of one person for one metric unit (m3, m2, m, 100 kg, piece). */
export interface Rate {
  readonly name: string;
  readonly per: "m3" | "m2" | "m" | "100 kg" | "piece";
  readonly low_h: number;
  readonly likely_h: number;
  readonly high_h: number;
  readonly from: string;
}

const practice = "common practice, no source";

const rate = (name: string, per: Rate["per"], low_h: number, likely_h: number, high_h: number, from = practice): Rate => ({
  name,
  per,
  low_h,
  likely_h,
  high_h,
  from,
});

/** Rates of two amateurs who know what they do, tools laid out, no machine but where it is named. Every one may be replaced by an answer. */
export const rates = {
  "set-out": rate("set lines and levels", "piece", 0.7, 1, 2),
  dig: rate("dig by hand and lay the spoil aside", "m3", 2, 3, 5),
  "dig-machine": rate("dig with a small machine, one driving, one beside it", "m3", 0.25, 0.4, 0.8),
  auger: rate("bore or dig a hole for a pier", "m3", 2.5, 4, 8),
  fill: rate("fill and tamp in layers", "m3", 1, 1.6, 3),
  gravel: rate("spread and compact stone", "m3", 1, 1.5, 2.5),
  boards: rate("set edge boards and stakes", "m", 0.25, 0.4, 0.7),
  "strip-boards": rate("strip and clean edge boards", "m", 0.1, 0.15, 0.3),
  "tie-bars": rate("cut to the list, carry and tie bars", "100 kg", 2, 3, 5),
  starters: rate("set and tie starter bars and bolts", "piece", 0.1, 0.15, 0.3),
  embed: rate("set a sleeve, box or bolt", "piece", 0.2, 0.35, 0.7),
  panel: rate("make form panels on the bench", "m2", 0.6, 0.9, 1.5),
  "set-panel": rate("stand, plumb and brace form panels", "m2", 0.6, 0.9, 1.6),
  "close-panel": rate("set the last face, bands or ties, and wedge it", "m2", 0.5, 0.8, 1.4),
  "strip-panel": rate("strip form panels, draw nails, scrape", "m2", 0.3, 0.5, 0.9),
  coat: rate("coat and wipe form faces", "m2", 0.08, 0.12, 0.25),
  seal: rate("seal joints from inside", "m", 0.08, 0.12, 0.25),
  shore: rate("set sills, shores and their braces", "m2", 0.4, 0.6, 1),
  deck: rate("lay stringers, joists and sheathing", "m2", 0.4, 0.6, 1),
  "strip-deck": rate("lower and carry out shores, joists and sheathing", "m2", 0.4, 0.7, 1.2),
  scaffold: rate("put up scaffold with its guards", "m2", 0.12, 0.2, 0.35),
  "scaffold-down": rate("take scaffold down", "m2", 0.08, 0.12, 0.25),
  rib: rate("set out, cut and join a rib", "piece", 0.8, 1.2, 2),
  lagging: rate("lay lagging over ribs", "m2", 0.5, 0.8, 1.4),
  roughen: rate("clean and roughen a joint", "m2", 1, 2, 4),
  clean: rate("look over, draw nails and sort salvaged lumber", "m2", 0.2, 0.35, 0.6),
  membrane: rate("lay sheet or mat", "m2", 0.05, 0.08, 0.15),
  coating: rate("brush on a coat of damp-proofing", "m2", 0.15, 0.25, 0.4),
  drain: rate("lay drain pipe and fleece", "m", 0.3, 0.5, 0.9),
  guard: rate("set posts and rails of a guard", "m", 0.7, 1, 1.8),
  check: rate("look it over against the list", "piece", 0.4, 0.75, 1.5),
  photograph: rate("photograph with a tape in the picture", "piece", 0.25, 0.4, 0.75),
  cover: rate("take covers off and stow them", "piece", 0.25, 0.5, 1),
  trial: rate("a small trial casting: box, mix, cast, look", "piece", 2, 3, 5),
  inspection: rate("an inspector's visit", "piece", 0.25, 0.5, 1),
  office: rate("ask an office or a supplier", "piece", 0.25, 0.5, 1),
  locate: rate("locators paint their marks", "piece", 0.5, 1, 2),
  "batter-board": rate("set batter boards at a corner, with strings", "piece", 0.8, 1.2, 2),
  "batter-board-down": rate("take batter boards down at a corner", "piece", 0.15, 0.25, 0.4),
  conduit: rate("lay and glue conduit", "m", 0.1, 0.15, 0.3),
  string: rate("draw a rag and a string through a conduit", "piece", 0.3, 0.5, 1.5),
  tape: rate("lay warning tape on a first layer", "m", 0.04, 0.06, 0.12),
  cable: rate("pull and connect cable, by an electrician", "m", 0.15, 0.25, 0.5),
  sill: rate("level, seal and bolt a sill", "m", 0.2, 0.3, 0.5),
  anchor: rate("drill and set an anchor", "piece", 0.3, 0.5, 0.9),
  post: rate("cut, stand, plumb and brace a post", "piece", 0.6, 1, 1.8),
  beam: rate("lift, fit and bolt a beam", "m", 0.25, 0.4, 0.8),
  floor: rate("set beams and joists, lay floor sheets", "m2", 0.5, 0.8, 1.4),
  "frame-wall": rate("frame a wall lying", "m2", 0.35, 0.5, 0.9),
  "tip-wall": rate("tip a wall up, plumb and brace it", "m", 0.3, 0.45, 0.8),
  "braces-down": rate("take temporary braces out", "m", 0.05, 0.08, 0.15),
  sheathe: rate("sheathe walls", "m2", 0.15, 0.25, 0.4),
  rafter: rate("cut and set rafters", "m2", 0.35, 0.55, 1),
  "board-roof": rate("board a roof", "m2", 0.18, 0.28, 0.45),
  underlay: rate("drip edges and underlay", "m2", 0.06, 0.1, 0.18),
  roofing: rate("lay roofing", "m2", 0.25, 0.4, 0.7),
  wrap: rate("hang and tape the wrap", "m2", 0.04, 0.07, 0.12),
  window: rate("set and flash a window or door", "piece", 2, 3, 5),
  siding: rate("trim and siding", "m2", 0.5, 0.8, 1.4),
  paint: rate("paint, a coat", "m2", 0.08, 0.12, 0.2),
  insulate: rate("insulate between studs", "m2", 0.1, 0.16, 0.3),
  lining: rate("line walls inside", "m2", 0.25, 0.4, 0.7),
  wiring: rate("rough in an outlet, switch or lamp, by an electrician", "piece", 0.5, 0.8, 1.3),
  fence: rate("set or take a site fence", "m", 0.06, 0.1, 0.2),
  cap: rate("cap a bar end", "piece", 0.01, 0.02, 0.04),
} as const satisfies Readonly<Record<string, Rate>>;

export type RateName = keyof typeof rates;
