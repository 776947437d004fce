import { revolving } from "../../revolving.ts";

export const balanceAngleAtLastThrow = revolving({
  id: "balanceAngleAtLastThrow",
  name: "Where the balance wanting at the last throw lies",
  symbol: "phi_U2",
  place: "last",
  of: "angle",
  meaning:
    "Angle on the crankshaft, counted as those of the crankpins, at which the balance at the last throw would have to be added; metal is taken off opposite.",
  method: "The direction of the vector whose size is the balance wanting there; 0 where none is.",
  opposite: "-150.0 deg",
  square: "120.0 deg",
});
