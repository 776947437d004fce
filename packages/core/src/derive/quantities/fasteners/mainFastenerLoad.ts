import { quantity } from "../../Quantity.ts";

export const mainFastenerLoad = quantity({
  id: "mainFastenerLoad",
  name: "Load on a main fastener",
  symbol: "F_m",
  unit: "kN",
  decimals: 1,
  system: "fasteners",
  meaning:
    "Greatest pull of the bearing’s load on each fastener of a main cap: by the real load over the cycle, whatever the layout; else by one cylinder’s firing, of which half the gas force falls to a bearing, in a V at half the bank angle.",
  inputs: {
    F_mc: "mainCapPull",
    F_g: "gasForce",
    gamma: "block.bankAngle",
    n_c: "mainCap.boltsPerCap",
  },
  routes: [
    { needs: ["F_mc"] },
    {
      needs: ["F_g", "gamma"],
      assumes:
        "firing alone pulls at the main caps, along the cylinder: inertia and neighbouring throws left out",
    },
  ],
  method:
    "The greatest pull on a main cap over its fasteners; or half the gas force × the cosine of half the bank angle over the fasteners.",
  compute: ({ F_mc, F_g, gamma, n_c }, _words, _tables, route) => {
    if (route === 0) return F_mc / n_c;
    if (gamma === Math.PI)
      throw new RangeError("the firing of opposed cylinders lies along the joint of such a cap");
    return ((F_g / 2) * Math.cos(gamma / 2)) / n_c;
  },
  shape: "guarded",
  valid: "fasteners that share alike",
  sources: [{ id: "taylor" }],
  examples: [
    { given: { F_mc: "30.8 kN", n_c: "2" }, expect: "15.4 kN" },
    { given: { F_g: "92.8494 kN", gamma: "0 deg", n_c: "2" }, expect: "23.2 kN" },
  ],
  display: true,
});
