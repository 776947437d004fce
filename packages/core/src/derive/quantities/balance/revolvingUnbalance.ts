import { revolving } from "../../revolving.ts";

export const revolvingUnbalance = revolving({
  id: "revolvingUnbalance",
  name: "Rotating masses left unbalanced",
  symbol: "U_rot",
  place: "whole",
  of: "unbalance",
  meaning:
    "Mass times radius that big ends and counterweights leave over for the whole crankshaft, as a force that turns with it. Zero in a crankshaft whose throws hold each other, whatever its bobweight.",
  method:
    "Each big end less its share of the bobweight of the balance, times the throw, added up as vectors at the angles of their crankpins.",
  opposite: "0 g mm",
  square: "19940 g mm",
});
