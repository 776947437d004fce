import { revolving } from "../../revolving.ts";

export const balanceAtLastThrow = revolving({
  id: "balanceAtLastThrow",
  name: "Balance wanting at the last throw",
  symbol: "U_2",
  place: "last",
  of: "unbalance",
  meaning:
    "Mass times radius that would have to be added in the plane of the last throw, with its fellow at the first, so that big ends and counterweights leave neither force nor couple.",
  method: "As at the first throw, by the law of the lever about its plane.",
  opposite: "14100 g mm",
  square: "14100 g mm",
});
