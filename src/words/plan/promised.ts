import type { Voice } from "../voice";

/** "promised for Mon 14 Jun"; where nobody brings anything on the day that was promised, also when it comes then. */
export function promisedWords(id: string, arrives: number, voice: Voice): string {
  const delivery = voice.build?.deliveries[voice.build.at.delivery.get(id as never) ?? -1];
  const comes = voice.day(arrives);
  const promised = delivery?.promised == null ? comes : voice.written(delivery.promised.slice(0, 10));
  if (delivery === undefined || promised === comes) return `promised for ${comes}`;
  return `promised for ${promised}, when nothing comes by ${voice.thing("calendars", delivery.calendar)}, so it is there on ${comes}`;
}
