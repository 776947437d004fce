import { chordClearance } from "@trialfit/mechanics";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

export const rodToCylinderByChord = quantity({
  id: "rodToCylinderByChord",
  name: "Rod to cylinder bottom, across",
  symbol: "c_rbx",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "The rod’s room to the lower end of its cylinder measured straight across in the plane of the rod’s side face, as a gauge laid in by hand shows it. It is never less than the true distance, which runs square to the round wall, while the rod is free: no verdict rests on it.",
  inputs: rodSweepInputs,
  tables: { outline: "connectingRod.bigEndOutline" },
  method:
    "The outline of the big end is swept with the rod over one turn past two straight walls as far apart as the bore is wide at the rod’s side face.",
  compute: (numbers, _words, { outline }) => chordClearance(rodSweep(numbers, outline)).clearance,
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  nominalOnly: true,
  valid: "stiff parts without play; a notch and the uncertainty of the outline are left out",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: rodSweepExample, expect: "1.16 mm" }],
  display: true,
});
