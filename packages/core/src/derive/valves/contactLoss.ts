import { lossOfContactSpeed } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import {
  liftCurve,
  liftExamples,
  liftInputs,
  liftRoutes,
  liftTables,
  type Side,
  sides,
} from "./valveSide.ts";

/** Speed at which one side's valve train leaves its lobe. */
export function contactLoss(side: Side, expect: string) {
  const { index } = sides[side];
  const mass = `m_e${index}`;
  return quantity({
    id: `${side}ContactLossSpeed`,
    name: `Speed at which the ${side} train loses contact`,
    symbol: `n_f${index}`,
    unit: "rpm",
    decimals: 0,
    system: "valve-train",
    meaning: `Crankshaft speed at which the spring can no longer hold the ${side} train to the lobe, the train taken as stiff. Flex and surge lower the true speed.`,
    inputs: {
      ...liftInputs(side),
      [mass]: `${side}ValveTrainMass`,
      F_s: "valveSpring.seatForce",
      k_s: "valveSpring.rate",
    } as Readonly<Record<string, string>>,
    tables: liftTables(side),
    routes: liftRoutes(side),
    method:
      "Where the curve slows the valve down, the speed at which the train’s inertia equals the spring’s force; the least over the lobe is taken.",
    compute: (n, _words, tables) =>
      lossOfContactSpeed({
        curve: liftCurve(side, n, tables),
        equivalentMass: n[mass]!,
        seatForce: n.F_s!,
        springRate: n.k_s!,
      }).angularSpeed,
    shape: "guarded",
    valid: "a stiff train without lash; gas force on the valve left out",
    sources: [{ id: "taylor" }],
    examples: [{ given: { ...liftExamples[side], [mass]: "110 g", F_s: "300 N", k_s: "45 N/mm" }, expect }],
    display: true,
  });
}

/** How far above the highest speed one side keeps its contact. */
export function contactReserve(side: Side) {
  const { index } = sides[side];
  const speed = `n_f${index}`;
  return quantity({
    id: `${side}ContactLossReserve`,
    name: `Reserve against loss of contact, ${side}`,
    symbol: `S_f${index}`,
    unit: "1",
    decimals: 2,
    system: "valve-train",
    meaning: `Speed at which the ${side} train loses contact over the highest speed.`,
    inputs: { [speed]: `${side}ContactLossSpeed`, n: "targets.speed" } as Readonly<Record<string, string>>,
    formula: `${speed} / n`,
    compute: (n) => n[speed]! / n.n!,
    shape: "guarded",
    valid: "as the speed of lost contact",
    sources: [{ id: "definition" }],
    examples: [{ given: { [speed]: "9100 rpm", n: "8000 rpm" }, expect: "1.14" }],
    display: true,
  });
}
