/** Family of the engine: plans of one family are the same, byte for byte, for the same build and time zone data. */
export const engine = "batterboard-9";
