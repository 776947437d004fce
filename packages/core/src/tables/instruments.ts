/** What an instrument measures, as a unit of the same kind, and how well. */
export interface Instrument {
  /** Expanded uncertainty of one careful reading in a shop (k = 2), with its unit. */
  readonly uncertainty: string;
}

/**
 * Instruments by the name that a build file gives them. Uncertainties are usual ones of a calibrated instrument in
 * a practised hand at room temperature: from memory. The shop's own figure outranks them (`uncertainty:`), and an
 * instrument that is not listed needs one.
 */
export const instruments: Readonly<Record<string, Instrument>> = {
  caliper: { uncertainty: "0.03 mm" },
  "depth micrometer": { uncertainty: "0.01 mm" },
  "outside micrometer": { uncertainty: "0.004 mm" },
  "inside micrometer": { uncertainty: "0.008 mm" },
  "dial bore gauge": { uncertainty: "0.005 mm" },
  "air gauge": { uncertainty: "0.001 mm" },
  "dial indicator": { uncertainty: "0.01 mm" },
  "deck bridge": { uncertainty: "0.01 mm" },
  "feeler gauge": { uncertainty: "0.02 mm" },
  "plastic gauging strip": { uncertainty: "0.013 mm" },
  "modelling clay": { uncertainty: "0.2 mm" },
  "stretch gauge": { uncertainty: "0.003 mm" },
  burette: { uncertainty: "0.2 cm3" },
  "gram scale": { uncertainty: "0.5 g" },
  "spring tester": { uncertainty: "10 N" },
  "degree wheel": { uncertainty: "0.5 deg" },
};
