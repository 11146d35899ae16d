/** A plank under a shore, NDS, US units as published. Statics; the plank lies on its wide face, its section as wide and as thick as it lies. */
import type { Allowed } from "./lumber";
import type { Section } from "./lumber-sizes";
import { bearing, forcedMember, type MemberCheck } from "./member";

const thinSide = ({ wide_in, deep_in }: Section): number => Math.min(wide_in, deep_in);

/**
 * What the soil presses up evenly on it, on both sides of the shore's thin side, it carries to the shore as a cantilever: M = P (l - t)² / (8 l). Over one shore that
 * is statics; where planks run on under several it is on the safe side. Shear leaves out a depth beside the shore (NDS 3.4.3.1).
 */
export function plankChecks(plank: Section, allowed: Allowed, shore: Section, load_lb: number, long_in: number): MemberCheck[] {
  const free = Math.max(0, (long_in - thinSide(shore)) / 2);
  const line = load_lb / long_in;
  return forcedMember(plank, 1, allowed, (line * free * free) / 2, line * Math.max(0, free - plank.deep_in));
}

/** The foot of a shore of several pieces side by side on it, across its grain. */
export function footOnPlank(plank: Section, allowed: Allowed, shore: Section, pieces: number, load_lb: number): MemberCheck {
  const deep = Math.max(shore.wide_in, shore.deep_in);
  return bearing(load_lb, thinSide(shore) * pieces * Math.min(deep, plank.wide_in), allowed.bearing);
}
