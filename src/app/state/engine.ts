// What makes plans in the page. Fetched after the first view, whose plan the worker makes meanwhile.
export { plan, planMay, withEffect } from "../../core/plan";
