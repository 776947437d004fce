import { twoMassRod } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

/** Declares one of the two masses that stand for a rod, from its mass and its centre of gravity. */
export function rodShare(end: "small" | "big", expect: string) {
  const [word, symbol, share] =
    end === "small"
      ? (["reciprocating", "m_sg", "l_g / l"] as const)
      : (["rotating", "m_bg", "(1 - l_g / l)"] as const);
  return quantity({
    id: `${end}EndMassByGravity`,
    name: `${end === "small" ? "Small" : "Big"}-end mass by centre of gravity`,
    symbol,
    unit: "g",
    decimals: 1,
    system: "rods",
    meaning: `The ${word} share of the rod, from its whole mass and where it balances: what the scale should show under the ${end} end with the rod level. It tells a slip in weighing, and stands in for it where no fixture is at hand.`,
    inputs: { m_rod: "connectingRod.mass", l_g: "connectingRod.gravityCentre", l: "connectingRod.length" },
    formula: `m_rod * ${share}`,
    compute: ({ m_rod, l_g, l }) =>
      twoMassRod({ mass: m_rod, rodLength: l, centreOfGravityFromBigEnd: l_g })[word],
    shape: "monotone",
    valid: "keeps mass and centre of gravity, not the moment of inertia",
    sources: [{ id: "taylor" }],
    examples: [{ given: { m_rod: "570 g", l_g: "43 mm", l: "144.5 mm" }, expect }],
    display: true,
  });
}
