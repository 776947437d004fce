import { setFiles } from "@trialfit/rules";
import type { ArgsDef } from "citty";
import { stages } from "trialfit";
import { formats } from "./output.ts";

/** The stage at which a build stands. */
export const stageArg = {
  type: "enum",
  options: [...stages],
  description: `Judge only the rules of one stage: ${stages.join(", ")}`,
} as const satisfies ArgsDef[string];

/** The set of rules to judge with. */
export const setArg = {
  type: "string",
  description: `Judge with a set of rules: ${setFiles.map(({ id }) => id).join(", ")}, or a file; of several, separated by commas, the last is used and may extend the others`,
} as const satisfies ArgsDef[string];

/** Options that every command which prints has. */
export const outputArgs = {
  format: {
    type: "enum",
    options: [...formats],
    default: "text",
    description: "How to print: text, markdown or json",
  },
  colour: {
    type: "boolean",
    default: true,
    description: "Colour on a terminal",
    negativeDescription: "Plain text",
  },
} as const satisfies ArgsDef;
