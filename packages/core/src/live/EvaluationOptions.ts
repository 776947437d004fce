import type { SetFile } from "@trialfit/rules";
import type { Drawing } from "../judge/sampleVerdicts.ts";
import type { Stage } from "../read/FieldSpec.ts";

/** How to evaluate, whatever the rules are. */
export interface EvaluationOptions {
  /**
   * Judge only the rules of this stage, as it stands then: what is to be measured by it and was not, leaves a rule
   * open. Absent: every rule, by whatever sizes the build gives.
   */
  readonly stage?: Stage;
  /**
   * Sets of rules: names of known ones, or sets as data; the last is applied, the others may be extended by it.
   * Absent: every rule, for the use that the build states.
   */
  readonly sets?: readonly (string | SetFile)[];
  /**
   * Quantities to compute beside those that the rules ask for: their ids, or `all` of them, which takes some
   * seconds, since many are searched over a whole cycle and all tolerances. Absent: none.
   */
  readonly quantities?: "all" | readonly string[];
  /**
   * Draw so many engines within the tolerances, and say of each rule in how many it holds, and of each quantity that a
   * rule or the list of quantities names how it scatters. The verdicts stay what they are. 1000 engines take up to a
   * minute with every rule of the catalog. Absent: none.
   */
  readonly statistics?: Drawing;
}
