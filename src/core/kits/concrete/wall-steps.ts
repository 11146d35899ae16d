import { massOfBars_kg } from "./mix";
import { coatLasts } from "./stuff";
import { holesOf } from "./top";
import { barsOf, type Wall } from "./wall-members";

const practice = "own guess";

/** Up to the last face: panels, coat, first face, bars, seal, recess. */
export function addOpenSteps(wall: Wall): void {
  const { making, sizes, on, isHatch, tall, recess, behind, stuff, barsCome } = wall;
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const [ground, store, steel] = [given.common("ground"), given.common("store"), own("steel")];
  const face_m2 = (sizes.long_mm * sizes.high_mm) / 1e6;
  const all_m2 = face_m2 * (sizes.oneSided ? 1 : 2);
  const stood = on.map(({ piece }) => ({ piece, once: { is: "24 h", from: practice } }));
  making.add("steps", "panels", {
    name: `Make form panels of ${name}`,
    place: store,
    work: given.hours("panel", all_m2, 2),
    hands: 2,
    reaches: [{ place: store }],
    puts: [own("panels")],
    leansOn: stuff.leansOn,
    needs: stuff.needs,
  });
  making.add("steps", "coat", {
    name: `Coat form faces of ${name}`,
    place: store,
    work: given.hours("coat", all_m2),
    reaches: [{ place: store }],
    puts: [own("coated")],
    leansOn: [{ piece: own("panels") }],
    notes: "Thin and wiped; never on the bars.",
  });
  making.add("waits", "coat-lasts", {
    name: `Coat of ${name} is good for`,
    from: own("coat"),
    to: own("place"),
    most: coatLasts,
    why: "A release agent is good for some weeks out of the rain.",
  });
  if (!sizes.oneSided) {
    making.add("steps", "first", {
      name: `Stand the first face of ${name}`,
      place: behind,
      work: given.hours("set-panel", face_m2, 2),
      hands: 2,
      reaches: [{ place: behind }, { place: behind, need: "unit", piece: own("first") }, { place: ground }, ...holesOf(on)],
      puts: [own("first"), own("braces")],
      leansOn: [{ piece: own("coated") }, ...stood],
      cautions: ["Two people to a panel; each is braced before the next one comes."],
    });
  }
  making.add("steps", "tie", {
    name: `Tie bars of ${name}`,
    place: steel,
    work: given.hours("tie-bars", massOfBars_kg(barsOf(sizes)) / 100, 2),
    hands: 2,
    reaches: [{ place: steel }, ...holesOf(on)],
    puts: [own("cage")],
    leansOn: [...stood, ...(sizes.oneSided ? [] : [{ piece: own("first") }])],
    needs: [barsCome],
    cautions: ["Cap every bar that stands up. A standing mat is tied off until a form holds it."],
  });
  if (recess) {
    making.add("steps", "block", {
      name: `Set what forms the recess of ${name}`,
      sort: "embed",
      place: steel,
      work: given.hours("embed", 4),
      reaches: [{ place: steel, need: "arm" }],
      puts: [own("block")],
      leansOn: [{ piece: own("cage") }],
      notes: "Screwed to the form so that it cannot swim up; its edges sealed; what holds it is reached from outside.",
    });
  }
  if (tall) {
    making.add("steps", "scaffold-up", {
      name: `Scaffold at ${name}`,
      place: ground,
      work: given.hours("scaffold", (sizes.long_mm / 1000) * (sizes.high_mm / 1000), 2),
      hands: 2,
      reaches: [{ place: ground }],
      puts: [own("scaffold")],
      leansOn: stood,
      cautions: ["Guards and a ladder from 6 ft (1.8 m) up. Ask your local rules."],
    });
  }
  making.add("steps", "seal", {
    name: `Seal the foot and joints of ${name}`,
    place: steel,
    work: given.hours("seal", (2 * sizes.long_mm) / 1000),
    reaches: [{ place: steel, need: "arm", depth: isHatch ? making.laid(450, "down") : making.laid(sizes.high_mm - 50, "up") }],
    leansOn: [{ piece: sizes.oneSided ? own("cage") : own("first") }],
  });
}

/** Close, plumb, strip, head: what follows the look at the bars. */
export function addClosedSteps({ making, sizes, on, isHatch, tall, recess, behind }: Wall): void {
  const { given } = making;
  const { name } = given;
  const own = (word: string) => making.id(word);
  const ground = given.common("ground");
  const face_m2 = (sizes.long_mm * sizes.high_mm) / 1e6;
  const oneSided = sizes.oneSided;
  making.add("steps", "close", {
    name: oneSided ? `Stand and brace the form of ${name}` : `Set last face and ties of ${name}`,
    place: own("steel"),
    work: given.hours("close-panel", face_m2 * (oneSided ? 1.6 : 1), 2),
    hands: 2,
    reaches: [{ place: ground }, { place: ground, need: "unit", piece: own("last") }, ...holesOf(on)],
    puts: oneSided ? [own("last"), own("braces")] : [own("last")],
    leansOn: [{ piece: own("cage") }, ...(oneSided ? [{ piece: own("coated") }] : [])],
    cautions: oneSided
      ? ["Nothing stands opposite: rakers, their feet and what holds the form down take it all. They are an engineer's."]
      : [],
  });
  if (isHatch) {
    making.add("steps", "flush", {
      name: `Flush and close the clean-outs of ${name}`,
      place: own("steel"),
      work: given.hours("check", 1),
      reaches: [{ place: ground }],
      puts: [own("hatch")],
      leansOn: [{ piece: own("last") }],
    });
  }
  making.add("steps", "plumb", {
    name: `Plumb ${name}, ties and wedges`,
    sort: "check",
    place: ground,
    work: given.hours("check", 1),
    reaches: [{ place: ground }],
    puts: [own("plumbed")],
    leansOn: [{ piece: own(isHatch ? "hatch" : "last") }],
  });
  making.add("steps", "strip", {
    name: `Strip ${name}`,
    place: ground,
    work: given.hours("strip-panel", face_m2 * (oneSided ? 1 : 2), 2),
    hands: 2,
    reaches: [{ place: ground }, { place: behind }, ...holesOf(on)],
    takes: [...(isHatch ? [own("hatch")] : []), own("last"), ...(oneSided ? [] : [own("first")]), own("braces")],
    notes: "Plastic wedges, no bar against the edges. Wrapped in plastic until the seventh day.",
  });
  if (recess) {
    const how = { draft: "drawn out whole", apart: "taken apart and drawn out", foam: "broken out" }[given.answers.choice("draft")];
    making.add("steps", "block-out", {
      name: `Recess of ${name}: its box ${how}`,
      place: ground,
      work: given.hours("embed", 3),
      reaches: [{ place: ground }],
      takes: [own("block")],
      leansOn: [{ piece: own("concrete"), once: { is: "24 h", from: practice } }],
    });
  }
  making.add("waits", "in-form", {
    name: `${name} stays in the form`,
    from: own("place"),
    to: own("strip"),
    least: { is: "6 d", from: practice },
    why: "The form keeps the faces wet through the week.",
  });
  making.add("steps", "roughen", {
    name: `Clean the head of ${name}`,
    place: own("head"),
    work: given.hours("roughen", (sizes.long_mm * sizes.thick_mm) / 2e6),
    reaches: [{ place: own("head"), need: "arm" }],
    leansOn: [{ piece: own("concrete"), once: { is: "24 h", from: practice } }],
    cautions: ["Concrete dust is silica: wet work and a proper mask."],
  });
  if (tall)
    making.add("steps", "scaffold-down", {
      name: `Scaffold at ${name} down`,
      place: ground,
      work: given.hours("scaffold-down", face_m2, 2),
      hands: 2,
      reaches: [{ place: ground }],
      takes: [own("scaffold")],
    });
}
