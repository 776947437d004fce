import { springForce } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Force of the spring of a valve that is fully open. */
export function openForce(side: Side) {
  const { index } = sides[side];
  const lift = `L_${index}`;
  return quantity({
    id: `${side}OpenSpringForce`,
    name: `Spring force at full lift, ${side}`,
    symbol: `F_o${index}`,
    unit: "N",
    decimals: 0,
    system: "valve-train",
    meaning: `Force of the valve spring with the ${side} valve fully open.`,
    inputs: {
      F_s: "valveSpring.seatForce",
      k_s: "valveSpring.rate",
      [lift]: `${side}ValveLift`,
    } as Readonly<Record<string, string>>,
    formula: `F_s + k_s * ${lift}`,
    compute: (n) => springForce({ seatForce: n.F_s!, springRate: n.k_s!, lift: n[lift]! }),
    shape: "monotone",
    valid: "springs of constant rate; the same spring on inlet and exhaust",
    sources: [{ id: "definition" }],
    examples: [{ given: { F_s: "900 N", k_s: "82 N/mm", [lift]: "16.19 mm" }, expect: "2228 N" }],
    display: true,
  });
}
