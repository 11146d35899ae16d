import type { RemarkCode } from "../../core/kits";
import type { Told } from "../build/sayings";
import { quoted } from "../text";
import { figure, text } from "../voice";

const months = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

const cold = ({ detail, voice }: Told, what: string): string =>
  `${what} in ${months[figure(detail, "month") - 1] ?? "winter"}, and no temperatures of the site are written down: a steady ${voice.display === "us" ? "68 °F" : "20 °C"} is counted, and in the cold concrete waits far longer. Write the low and high of each month in Site`;

/** What is not right about parts as they lie and lean. */
export const remarkSayings = {
  "kit.hangs": ({ detail }) =>
    `${quoted(text(detail, "name"))} stands on or leans on something that is not in the build any more: let it join something else, or take it out too`,
  "kit.overlap": ({ detail }) =>
    `${quoted(text(detail, "name"))} and ${quoted(text(detail, "other"))} are in the same place: move one of them, or let one join the other`,
  "kit.winter-unknown": (told) => cold(told, "The build begins"),
  "kit.winter-pour": (told) => cold(told, "Concrete is placed"),
} as const satisfies Readonly<Record<RemarkCode, (told: Told) => string>>;
