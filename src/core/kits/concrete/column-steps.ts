import { once } from "../making";
import { barsOf, type Context } from "./column-members";
import { massOfBars_kg } from "./mix";
import { type addStuff, coatLasts } from "./stuff";
import { holesOf } from "./top";

/** Up to the form with its last side open: panels, coat, bars, three faces, seal. */
export function addOpenSteps(context: Context, stuff: ReturnType<typeof addStuff>, barsCome: string): void {
  const { making, sizes, on, isHatch, tall, weight } = context;
  const { given } = making;
  const { name } = given;
  const [ground, store] = [given.common("ground"), given.common("store")];
  const steel = making.id("steel");
  const area_m2 = (2 * (sizes.long_mm + sizes.wide_mm) * sizes.high_mm) / 1e6;
  const stood = once(on.map(({ piece }) => piece)).map((piece) => ({ piece, once: { is: "24 h", from: "own guess" } }));
  const holes = holesOf(on);
  const onBench = given.answers.choice("made") === "bench";
  making.add("steps", "panels", {
    name: `Make form panels of ${name}`,
    place: store,
    work: given.hours("panel", area_m2),
    reaches: [{ place: store }],
    puts: [making.id("panels")],
    leansOn: stuff.leansOn,
    needs: stuff.needs,
  });
  making.add("steps", "coat", {
    name: `Coat form faces of ${name}`,
    place: store,
    work: given.hours("coat", area_m2),
    reaches: [{ place: store }],
    puts: [making.id("coated")],
    leansOn: [{ piece: making.id("panels") }],
    notes: "Thin and wiped; never on the bars.",
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: making.id("coat"),
    to: making.id("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks out of the rain.",
  });
  making.add("steps", "tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes, given.answers.yes("starters"))) / 100),
    reaches: [{ place: steel }, ...holes],
    puts: [making.id("cage")],
    leansOn: stood,
    needs: [barsCome],
    cautions: ["Cap every bar that stands up. A standing cage is tied off until the form holds it."],
  });
  if (tall) {
    making.add("steps", "scaffold-up", {
      name: `Scaffold at ${name}`,
      place: ground,
      work: given.hours("scaffold", 4 * (sizes.high_mm / 1000), 2),
      hands: 2,
      reaches: [{ place: ground }],
      puts: [making.id("scaffold")],
      leansOn: stood,
      cautions: ["Guards and a ladder from 6 ft (1.8 m) up, on firm level ground. Ask your local rules."],
    });
  }
  making.add("steps", "set-faces", {
    name: isHatch ? `Stand the form of ${name}` : `Stand three faces of ${name}`,
    place: steel,
    work: given.hours("set-panel", area_m2 * (isHatch ? 1 : 0.75), 2),
    hands: 2,
    reaches: [{ place: ground }, ...holes, ...(onBench ? [{ place: ground, need: "unit", piece: making.id("faces") }] : [])],
    puts: [making.id("faces"), making.id("braces")],
    leansOn: [{ piece: making.id("coated") }, ...stood],
    cautions: onBench ? [`The faces joined on the bench weigh about ${weight}: two people, and a strap until it is braced.`] : [],
  });
  making.add("steps", "seal", {
    name: `Seal corners and foot of ${name}`,
    place: steel,
    work: given.hours("seal", (4 * sizes.high_mm + 2 * (sizes.long_mm + sizes.wide_mm)) / 1000),
    reaches: [{ place: steel, need: "arm", depth: isHatch ? making.laid(400, "down") : making.laid(sizes.high_mm - 50, "up") }],
    leansOn: [{ piece: making.id("faces") }],
    notes: isHatch ? "The foot by the clean-out; the corners as the faces are joined." : "Down to the foot by the side left open.",
  });
}

/** Last side, plumb, strip, scaffold down: each column by itself. */
export function addClosedSteps({ making, sizes, isHatch, tall, on }: Context): void {
  const { given } = making;
  const { name } = given;
  const ground = given.common("ground");
  const area_m2 = (2 * (sizes.long_mm + sizes.wide_mm) * sizes.high_mm) / 1e6;
  making.add("steps", "close", {
    name: isHatch ? `Flush and close the clean-out of ${name}` : `Set last face and bands of ${name}`,
    place: making.id("steel"),
    work: isHatch ? given.hours("check", 0.5) : given.hours("close-panel", area_m2 * 0.5, 2),
    hands: isHatch ? 1 : 2,
    reaches: [{ place: ground }, ...holesOf(on)],
    puts: [making.id("last")],
    leansOn: [{ piece: making.id("cage") }],
  });
  making.add("steps", "plumb", {
    name: `Plumb ${name}, wedges and bolts`,
    sort: "check",
    place: ground,
    work: given.hours("check", 0.5, 1),
    reaches: [{ place: ground }],
    puts: [making.id("plumbed")],
    leansOn: [{ piece: making.id("last") }],
  });
  making.add("steps", "strip", {
    name: `Strip ${name}`,
    place: ground,
    work: given.hours("strip-panel", area_m2, 2),
    hands: 2,
    reaches: [{ place: ground }, ...holesOf(on)],
    takes: [making.id("last"), making.id("faces"), making.id("braces")],
    notes: "Plastic wedges, no bar against the edges. Wrapped in plastic until the seventh day.",
  });
  making.add("waits", "in-form", {
    name: `${name} stays in the form`,
    from: making.id("place"),
    to: making.id("strip"),
    least: { is: "6 d", from: "own guess" },
    why: "The form keeps the faces wet through the week.",
  });
  making.add("steps", "roughen", {
    name: `Clean and roughen the head of ${name}`,
    place: making.id("head"),
    work: given.hours("roughen", (sizes.long_mm * sizes.wide_mm) / 1e6),
    reaches: [{ place: making.id("head"), need: "arm" }],
    leansOn: [{ piece: making.id("concrete"), once: { is: "24 h", from: "own guess" } }],
    cautions: ["Concrete dust is silica: wet work and a proper mask."],
  });
  if (!tall) return;
  making.add("steps", "scaffold-down", {
    name: `Scaffold at ${name} down`,
    place: ground,
    work: given.hours("scaffold-down", 4 * (sizes.high_mm / 1000), 2),
    hands: 2,
    reaches: [{ place: ground }],
    takes: [making.id("scaffold")],
  });
}
