import { neighbourRodGap as gapOf } from "@trialfit/mechanics";
import { cellNumber } from "../../../read/cellNumber.ts";
import { ALONG_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const neighbourRodGap = quantity({
  id: "neighbourRodGap",
  name: "Rods of neighbouring crankpins, along",
  symbol: "c_nr",
  unit: "mm",
  decimals: 1,
  system: "clearances",
  meaning:
    "Least distance along the crankshaft between the big ends on neighbouring crankpins. The webs between them, and the main bearing where there is one, have to find room in it; negative when the rods would overlap.",
  inputs: {
    n_r: "crankshaft.rodsPerPin",
    w: "connectingRod.bigEndWidth",
    z_0: "connectingRod.planeOffset",
  },
  tables: { throws: "crankshaft.throws" },
  method:
    "The cylinders are shared out over the crankpins in their order along the crankshaft. The nearest two of neighbouring pins: distance of their axes less a big end’s width, and less twice the offset of a rod’s plane.",
  compute: ({ n_r, w, z_0 }, _words, { throws }) =>
    gapOf({
      positions: throws.map((row) => cellNumber(row, "position")),
      rodsPerPin: n_r,
      rodWidth: w,
      planeOffset: z_0,
    }),
  shape: "monotone",
  hot: ALONG_THE_CRANKSHAFT,
  valid:
    "two crankpins or more; rods of one crankpin have their side clearance; a rod meets no web but those of its own pin, which the side clearance keeps it from",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        n_r: "1",
        w: "21.8 mm",
        z_0: "0.3 mm",
        throws:
          "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 0 deg, 95 mm, 540 deg; 180 deg, 0 deg, 190 mm, 180 deg; 0 deg, 0 deg, 285 mm, 360 deg",
      },
      expect: "72.6 mm",
    },
    {
      given: {
        n_r: "2",
        w: "23.85 mm",
        z_0: "0.4 mm",
        throws:
          "0 deg, 45 deg, 0 mm, 0 deg; 0 deg, -45 deg, 24 mm, 630 deg; 90 deg, 45 deg, 112 mm, 270 deg; 90 deg, -45 deg, 136 mm, 180 deg",
      },
      expect: "63.4 mm",
    },
  ],
  display: true,
});
