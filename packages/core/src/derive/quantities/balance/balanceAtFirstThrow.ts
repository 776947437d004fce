import { revolving } from "../../revolving.ts";

export const balanceAtFirstThrow = revolving({
  id: "balanceAtFirstThrow",
  name: "Balance wanting at the first throw",
  symbol: "U_1",
  place: "first",
  of: "unbalance",
  meaning:
    "Mass times radius that would have to be added in the plane of the first throw, with its fellow at the last, so that big ends and counterweights leave neither force nor couple. Divided by a radius it is the mass there.",
  method:
    "Each big end less its share of the bobweight, times the throw, is shared out between the planes of the first and the last throw by the law of the lever, and added up as vectors.",
  opposite: "14100 g mm",
  square: "14100 g mm",
});
