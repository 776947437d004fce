import { fromSi, type Nominals, unitOf } from "trialfit";

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
    return metres === undefined ? undefined : fromSi(metres, millimetre);
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

const millimetre = unitOf("mm");

/** Metres to millimetres of a picture. */
export const toMm = (metres: number): number => fromSi(metres, millimetre);
