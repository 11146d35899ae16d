export { amountOf, isCure } from "./amount-of";
export { type BuildCode, bars, codes, type DetailKey } from "./codes";
export { usualRate_m3_h } from "./link/pours";
export { isLoad, isVault, isVouched } from "./link/removals";
export * from "./model";
export { pourOf } from "./pour-of";
export { type ReadResult, read, readDocument } from "./read";
export { type ListName, listNames, version } from "./schema/document";
export { write } from "./write";
