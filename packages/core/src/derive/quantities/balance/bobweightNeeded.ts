import { bobweight } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Oil that clings in and about one crankpin [kg]. Source: common practice, 4 g. */
const OIL = 0.004;

export const bobweightNeeded = quantity({
  id: "bobweightNeeded",
  name: "Bobweight needed",
  symbol: "m_bw",
  unit: "g",
  decimals: 0,
  system: "balance",
  meaning:
    "Mass that stands in for rods and pistons on one crankpin while the crankshaft is balanced: all that turns with the pin, and the share of what goes up and down that the counterweights are meant to take.",
  inputs: {
    n_r: "crankshaft.rodsPerPin",
    m_b: "connectingRod.bigEndMass",
    m_sh: "rodBearing.mass",
    f_b: "crankshaft.balanceFactor",
    m_rec: "reciprocatingMass",
  },
  formula: `n_r * (m_b + m_sh + f_b * m_rec) + ${OIL}`,
  compute: ({ n_r, m_b, m_sh, f_b, m_rec }) =>
    bobweight({
      rods: n_r,
      rotatingRodMass: m_b,
      shellMass: m_sh,
      oilMass: OIL,
      reciprocatingMass: m_rec,
      balanceFactor: f_b,
    }),
  shape: "monotone",
  valid: "rods weighed end by end, level; 4 g of oil a pin",
  sources: [{ id: "taylor" }, { id: "common-practice", where: "4 g of oil a crankpin" }],
  examples: [
    { given: { n_r: "2", m_b: "440 g", m_sh: "20 g", f_b: "50 %", m_rec: "758 g" }, expect: "1682 g" },
  ],
  display: true,
});
