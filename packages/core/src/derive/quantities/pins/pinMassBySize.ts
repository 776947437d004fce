import { quantity } from "../../Quantity.ts";

/** Steel [kg/m3]. Source: from memory. */
const STEEL_DENSITY = 7840;

export const pinMassBySize = quantity({
  id: "pinMassBySize",
  name: "Pin mass over that of its sizes",
  symbol: "k_mp",
  unit: "1",
  decimals: 2,
  system: "pins",
  meaning:
    "Entered mass of the pin, retainers included, over that of a plain steel tube of its sizes. Far from one, a size or the mass was misread; tapered bores make it smaller.",
  inputs: {
    m_pin: "pistonPin.mass",
    d_p: "pistonPin.outerDiameter",
    d_i: "pistonPin.innerDiameter",
    l_p: "pistonPin.length",
  },
  formula: `4 * m_pin / (pi * ${STEEL_DENSITY} * (d_p^2 - d_i^2) * l_p)`,
  compute: ({ m_pin, d_p, d_i, l_p }) => {
    if (d_i >= d_p) throw new RangeError("the bore of the pin is as wide as the pin");
    return m_pin / (STEEL_DENSITY * (Math.PI / 4) * (d_p ** 2 - d_i ** 2) * l_p);
  },
  shape: "monotone",
  valid: "steel pins",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_pin: "118.1 g", d_p: "22 mm", d_i: "12 mm", l_p: "56.4 mm" }, expect: "1.00" }],
  display: true,
});
