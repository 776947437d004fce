import { quantity } from "../../Quantity.ts";
import { greatestSquish, squishBandExample, squishBandInputs } from "../../squishBand.ts";

export const squishVelocityAngle = quantity({
  id: "squishVelocityAngle",
  name: "Crank angle of the greatest squish velocity",
  symbol: "theta_sq",
  unit: "deg",
  decimals: 1,
  system: "compression",
  meaning: "Crank angle at which the squish is fastest; negative before top dead centre.",
  inputs: squishBandInputs,
  method: "The crank angle at which the greatest squish velocity is found.",
  compute: (n) => greatestSquish(n).angle,
  shape: "guarded",
  valid: "as for the velocity itself",
  sources: [{ id: "heywood", where: "ch. 8, squish" }],
  examples: [{ given: squishBandExample, expect: "-8.9 deg" }],
  display: true,
  nominalOnly: true,
});
