import { quantity } from "../../Quantity.ts";
import { greatestSquish, squishBandExample, squishBandInputs } from "../../squishBand.ts";

export const squishVelocity = quantity({
  id: "squishVelocity",
  name: "Greatest squish velocity",
  symbol: "v_sq",
  unit: "m/s",
  decimals: 1,
  system: "compression",
  meaning:
    "Greatest speed at which the charge is pressed out of the squish band into the chamber, shortly before top dead centre at the highest speed. Much of it makes the fire quick and harsh, little lets the end gas knock.",
  inputs: squishBandInputs,
  method:
    "The mass that the band loses while all of the charge has one density, over its exit section; the greatest over the last quarter turn before top dead centre is taken.",
  compute: (n) => greatestSquish(n).velocity,
  shape: "guarded",
  valid:
    "a thin parallel gap, taken cold: at speed it is narrower and the flow faster; leakage and friction left out",
  sources: [{ id: "heywood", where: "ch. 8, squish" }],
  examples: [{ given: squishBandExample, expect: "58.0 m/s" }],
  display: true,
});
