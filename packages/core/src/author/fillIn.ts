/** Begins every text that a new rule leaves to its author; the checks refuse it. */
export const FILL_IN = "Fill in:";
