export { Link } from "./link";
