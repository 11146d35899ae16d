export * from "./clock";
export * from "./finding";
export * from "./ids";
