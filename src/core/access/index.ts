export { access } from "./access";
export type { AccessCode } from "./blocks/finding";
export { lastChances } from "./chances";
export { may } from "./may";
export { passes } from "./passes";
export * from "./result";
export { type Rule, type RuleKind, type RuleName, ruleOf, rules } from "./rules";
export { why } from "./why";
