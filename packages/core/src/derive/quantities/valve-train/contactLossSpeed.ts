import { lossOfContactSpeed } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { liftCurve, liftExamples, liftInputs, liftRoutes, liftTables } from "../../valves/valveSide.ts";

export const contactLossSpeed = quantity({
  id: "contactLossSpeed",
  name: "Speed at which the valve train loses contact",
  symbol: "n_f",
  unit: "rpm",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Crankshaft speed at which the spring can no longer hold the inlet train to the lobe, the train taken as stiff. Flex and surge lower the true speed.",
  inputs: {
    ...liftInputs("inlet"),
    m_eq: "valveTrainMass",
    F_s: "valveSpring.seatForce",
    k_s: "valveSpring.rate",
  } as Readonly<Record<string, string>>,
  tables: liftTables("inlet"),
  routes: liftRoutes("inlet"),
  method:
    "Where the curve slows the valve down, the speed at which the train’s inertia equals the spring’s force; the least over the lobe is taken.",
  compute: (n, _words, tables) =>
    lossOfContactSpeed({
      curve: liftCurve("inlet", n, tables),
      equivalentMass: n.m_eq!,
      seatForce: n.F_s!,
      springRate: n.k_s!,
    }).angularSpeed,
  shape: "guarded",
  valid: "a stiff train without lash; gas force on the valve left out",
  sources: [{ id: "taylor" }],
  examples: [
    {
      given: { ...liftExamples.inlet, m_eq: "110 g", F_s: "300 N", k_s: "45 N/mm" },
      expect: "9920 rpm",
    },
  ],
});
