import { confirmationPath } from "trialfit";

const PREFIX = confirmationPath("");

/** The rule whose confirmation has this path, or undefined for any other path. */
export function confirmationRule(path: string): string | undefined {
  return path.startsWith(PREFIX) ? path.slice(PREFIX.length) : undefined;
}
