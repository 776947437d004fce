import { singleCylinderResidual } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

interface Residual {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** Along the cylinder counterweights take a share of the force away; across it they bring that share. */
  readonly direction: "along" | "across";
  readonly valid: string;
  readonly expect: string;
}

/** Declares what the counterweights leave of one cylinder’s primary force in one direction. */
export function singleResidual({ direction, expect, ...own }: Residual) {
  return quantity({
    ...own,
    unit: "kN",
    decimals: 2,
    system: "balance",
    inputs: {
      f_b: "crankshaft.balanceFactor",
      m_rec: "reciprocatingMass",
      r: "throwRadius",
      n: "targets.speed",
    },
    formula: `${direction === "along" ? "(1 - f_b)" : "f_b"} * m_rec * r * n^2`,
    compute: ({ f_b, m_rec, r, n }) =>
      singleCylinderResidual({
        reciprocatingMass: m_rec,
        throwRadius: r,
        angularSpeed: n,
        balanceFactor: f_b,
      })[direction],
    shape: "monotone",
    sources: [{ id: "taylor" }],
    examples: [{ given: { f_b: "62 %", m_rec: "472 g", r: "41 mm", n: "10500 rpm" }, expect }],
    display: true,
  });
}
