import { quantity } from "../../Quantity.ts";

export const exhaustPressure = quantity({
  id: "exhaustPressure",
  name: "Exhaust pressure",
  symbol: "p_ex",
  unit: "bar",
  decimals: 2,
  system: "charge",
  meaning:
    "Absolute pressure against which the piston pushes the burnt gas out. What stands above ambient costs power, and what stands above the manifold pressure keeps burnt gas in the cylinder.",
  inputs: { p_b: "induction.backPressure", p_m: "induction.manifoldPressure" },
  routes: [
    { needs: ["p_b"] },
    { needs: ["p_m"], assumes: "the exhaust before the turbine is at the pressure of the inlet manifold" },
  ],
  method:
    "The back pressure entered or usual. A turbocharged engine without one: the manifold pressure, for turbines of well matched turbochargers hold back about as much as their compressors give (from memory).",
  cases: {
    1: "p_b",
    2: "p_m",
  },
  compute: ({ p_b, p_m }, _words, _tables, route) => (route === 0 ? p_b : p_m),
  shape: "monotone",
  valid: "mean over the exhaust stroke; pressure waves in the pipes move it either way",
  sources: [{ id: "from-memory" }, { id: "definition" }],
  examples: [
    { given: { p_b: "1.08 bar" }, expect: "1.08 bar" },
    { given: { p_m: "2.9 bar" }, expect: "2.90 bar" },
  ],
  display: true,
});
