export { Link, type WorkerLike } from "./link";
