export { type FirstRunPhase, firstRunPhases } from "./firstRunPhases.ts";
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
  sourceFile,
} from "./ruleFile.ts";
export { type ChangedLimit, type SetFile, setFile } from "./setFile.ts";
export { type Standing, standings } from "./standings.ts";
export { type System, systems } from "./systems.ts";
export { type Use, uses } from "./uses.ts";
export { type Weight, weights } from "./weights.ts";
export { type Work, works } from "./works.ts";
