import { greatestEngineVolume as greatestOf } from "@trialfit/mechanics";
import { cylinderOf, engineVolumeInputs, engineVolumeTables, phasesOf } from "../../engineVolumes.ts";
import { quantity } from "../../Quantity.ts";

export const greatestEngineVolume = quantity({
  id: "greatestEngineVolume",
  name: "Greatest volume over all pistons",
  symbol: "V_eg",
  unit: "cm3",
  decimals: 0,
  system: "compression",
  meaning:
    "Greatest volume that the cylinders of the engine hold together at one moment of a turn. It is well below displacement and chambers together, since some pistons rise while others fall.",
  inputs: engineVolumeInputs,
  tables: engineVolumeTables,
  method:
    "Clearance volume and bore area times travel of every piston, each at its crankpin’s angle in its bank, added up at every crank angle; the greatest over a turn.",
  compute: (n, _words, { throws }) => greatestOf({ ...cylinderOf(n), cylinders: phasesOf(throws) }),
  shape: "guarded",
  valid: "cylinders alike",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "0 mm",
        B: "86.5 mm",
        V_c: "69.02 cm3",
        throws:
          "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 0 deg, 95 mm, 540 deg; 180 deg, 0 deg, 190 mm, 180 deg; 0 deg, 0 deg, 285 mm, 360 deg",
      },
      expect: "1566 cm3",
    },
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "0 mm",
        B: "86.5 mm",
        V_c: "69.02 cm3",
        throws: "0 deg, 0 deg, 0 mm, 0 deg",
      },
      expect: "621 cm3",
    },
  ],
  display: true,
});
