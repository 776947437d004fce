import { fieldLabel } from "../read/fieldCatalog.ts";

/** Fields by their label and the path to fill in. */
export function nameFields(paths: readonly string[]): string {
  return paths.map((path) => `${fieldLabel(path)} [${path}]`).join("; ");
}
