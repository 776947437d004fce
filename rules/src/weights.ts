/** How much a finding weighs. */
export const weights = {
  stop: "do not order or assemble until it is settled",
  caution: "settle it, or go on with open eyes",
  note: "worth knowing",
} as const;
export type Weight = keyof typeof weights;
