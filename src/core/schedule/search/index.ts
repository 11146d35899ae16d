export { type Asked, type Search, searchOf } from "./search";
