import { ruleFile } from "@trialfit/rules";
import { shapesOf } from "./shapesOf.ts";

/** What a rule file has at each place. */
export const ruleShapes = shapesOf(ruleFile);
