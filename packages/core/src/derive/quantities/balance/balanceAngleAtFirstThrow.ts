import { revolving } from "../../revolving.ts";

export const balanceAngleAtFirstThrow = revolving({
  id: "balanceAngleAtFirstThrow",
  name: "Where the balance wanting at the first throw lies",
  symbol: "phi_U1",
  place: "first",
  of: "angle",
  meaning:
    "Angle on the crankshaft, counted as those of the crankpins, at which the balance at the first throw would have to be added; metal is taken off opposite.",
  method: "The direction of the vector whose size is the balance wanting there; 0 where none is.",
  opposite: "30.0 deg",
  square: "30.0 deg",
});
