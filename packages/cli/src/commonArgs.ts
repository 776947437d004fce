import type { ArgsDef } from "citty";
import { formats } from "./output.ts";

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
