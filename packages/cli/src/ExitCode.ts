/** What the command's exit code says. */
export const ExitCode = {
  /** Every stop rule that applies holds. */
  sound: 0,
  /** A stop rule fails, is open or is unknown. */
  stops: 1,
  /** The input or the call could not be used. */
  badInput: 2,
} as const;
