import { cellNumber } from "../../../read/cellNumber.ts";
import { quantity } from "../../Quantity.ts";

const CYCLE = 4 * Math.PI;

export const firingUnevenness = quantity({
  id: "firingUnevenness",
  name: "Unevenness of firing",
  symbol: "Delta_f",
  unit: "deg",
  decimals: 1,
  system: "balance",
  meaning:
    "How much the longest or shortest interval between two firings differs from an even one. Uneven firing brings other torsional orders to life.",
  inputs: {},
  tables: { throws: "crankshaft.throws" },
  method:
    "Firing angles in order over the cycle; the largest difference of an interval from the cycle over the number of cylinders.",
  compute: (_numbers, _words, { throws }) => {
    const angles = throws.map((row) => cellNumber(row, "fires") % CYCLE).sort((a, b) => a - b);
    const even = CYCLE / angles.length;
    const intervals = angles.map((angle, index) => (angles[index + 1] ?? angles[0]! + CYCLE) - angle);
    return Math.max(...intervals.map((interval) => Math.abs(interval - even)));
  },
  shape: "guarded",
  valid: "four-stroke engines",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: {
        throws:
          "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 0 deg, 100 mm, 540 deg; 180 deg, 0 deg, 200 mm, 180 deg; 0 deg, 0 deg, 300 mm, 360 deg",
      },
      expect: "0.0 deg",
    },
    { given: { throws: "0 deg, 0 deg, 0 mm, 0 deg; 0 deg, 45 deg, 0 mm, 405 deg" }, expect: "45.0 deg" },
  ],
  display: true,
});
