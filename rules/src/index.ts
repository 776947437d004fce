export { ruleFiles, setFiles, sources } from "./generated/catalog.ts";
export { default as validateRuleFile } from "./generated/validateRuleFile.js";
export { notCovered } from "./notCovered.ts";
export { type Operator, operators } from "./operators.ts";
export {
  type Comparison,
  type Condition,
  type LimitFile,
  type RuleExample,
  type RuleFile,
  ruleFile,
  type SourceFile,
  type Standing,
  sourceFile,
  standings,
  type Weight,
  type Work,
  weights,
  works,
} from "./ruleFile.ts";
export { type ChangedLimit, type SetFile, setFile } from "./setFile.ts";
export { type System, systems } from "./systems.ts";
export { type Use, uses } from "./uses.ts";
