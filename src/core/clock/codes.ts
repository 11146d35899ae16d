/** Every code this room's findings can have. */
export const clockCodes = ["clock.unknown-zone", "clock.time-skipped", "clock.unknown-holidays", "clock.holidays-end"] as const;
