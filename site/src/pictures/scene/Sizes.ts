import type { Nominals } from "trialfit";
import { toMm } from "./toMm.ts";

/** Sizes of one build in millimetres, as pictures take them; what was asked for and not there is remembered. */
export class Sizes {
  readonly nominals: Nominals;
  private readonly absent = new Set<string>();

  constructor(nominals: Nominals) {
    this.nominals = nominals;
  }

  /** A length [mm]; undefined when the build does not give it. */
  mm(path: string): number | undefined {
    const metres = this.si(path);
    return metres === undefined ? undefined : toMm(metres);
  }

  /** A size [SI]; undefined when the build does not give it. */
  si(path: string): number | undefined {
    const value = this.nominals.size(path);
    if (value === undefined) for (const field of this.nominals.lacking(path)) this.absent.add(field);
    return value;
  }

  /** Fields that were asked for and are not there. */
  get missing(): readonly string[] {
    return [...this.absent].sort();
  }
}
