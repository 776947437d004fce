import { injectorFlowAt } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const injectorFlowInUse = quantity({
  id: "injectorFlowInUse",
  name: "Injector flow at the pressure used",
  symbol: "m_inj",
  unit: "g/s",
  decimals: 2,
  system: "charge",
  meaning:
    "Fuel that one injector passes when it is held open, at the pressure across it in this engine. Flow grows with the root of the pressure: a third more pressure is a seventh more fuel.",
  inputs: { m_ir: "fuel.injectorFlow", p_ir: "fuel.injectorRatedPressure", p_i: "fuel.injectorPressure" },
  routes: [
    { needs: ["p_ir", "p_i"] },
    { needs: [], assumes: "the injectors work at the pressure at which their flow is stated" },
  ],
  method:
    "The rated flow times the root of the pressure used over the rated pressure. Where a pressure is not given: the rated flow.",
  cases: {
    1: "m_ir * sqrt(p_i / p_ir)",
    2: "m_ir",
  },
  compute: ({ m_ir, p_ir, p_i }, _words, _tables, route) =>
    route === 0 ? injectorFlowAt({ ratedFlow: m_ir, ratedPressure: p_ir, pressure: p_i }) : m_ir,
  shape: "monotone",
  valid: "the same fuel as the rating; pressure across the injector, not rail pressure alone",
  sources: [{ id: "definition" }, { id: "common-practice" }],
  examples: [
    { given: { m_ir: "8 g/s", p_ir: "3 bar", p_i: "4 bar" }, expect: "9.24 g/s" },
    { given: { m_ir: "17.5 g/s" }, expect: "17.50 g/s" },
  ],
  display: true,
});
