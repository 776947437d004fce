import { ruleFiles } from "@trialfit/rules";
import { type CompiledRule, compileRules, type Quantity, quantities } from "trialfit";

/** Every rule of the catalog in the form that is judged, sorted by id. */
export const rules: readonly CompiledRule[] = compileRules(ruleFiles);

/** Every quantity, sorted by name. */
export const quantityList: readonly Quantity[] = [...quantities.values()].sort((a, b) =>
  a.name < b.name ? -1 : 1,
);
