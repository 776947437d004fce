import { quantity } from "../../Quantity.ts";

export const inletClosingPressure = quantity({
  id: "inletClosingPressure",
  name: "Charge pressure at inlet closing",
  symbol: "p_ic",
  unit: "bar",
  decimals: 2,
  system: "charge",
  meaning:
    "Absolute pressure in the cylinder when the inlet valve has closed, from which compression begins. At high speed the moving air still fills the cylinder after bottom dead centre, so it may lie well above the manifold pressure.",
  inputs: {
    p_m: "induction.manifoldPressure",
    eta_v: "induction.volumetricEfficiency",
    V_d: "sweptVolume",
    V_c: "clearanceVolume",
    epsilon_tr: "trappedCompressionRatio",
    T_m: "induction.chargeTemperature",
    T_ic: "inletClosingTemperature",
  },
  routes: [
    { needs: ["eta_v", "V_d", "V_c", "epsilon_tr", "T_m", "T_ic"] },
    { needs: [], assumes: "the charge at inlet closing is at the manifold pressure" },
  ],
  method:
    "The air that the volumetric efficiency says was taken in, η_v p_m V_d / T_m, as an ideal gas in the volume at inlet closing and at the temperature it has there. Without a volumetric efficiency: the manifold pressure.",
  compute: ({ p_m, eta_v, V_d, V_c, epsilon_tr, T_m, T_ic }, _words, _tables, route) =>
    route === 0 ? (eta_v * p_m * V_d * T_ic) / (epsilon_tr * V_c * T_m) : p_m,
  shape: "guarded",
  valid:
    "the air alone: fuel vapour and gas left from the cycle before, together about a tenth, are left out; volumetric efficiency meant against the density in the manifold",
  sources: [{ id: "heywood" }, { id: "definition" }],
  examples: [
    {
      given: {
        p_m: "2.9 bar",
        eta_v: "98 %",
        V_d: "552.4 cm3",
        V_c: "69.02 cm3",
        epsilon_tr: "7.06",
        T_m: "318 K",
        T_ic: "343 K",
      },
      expect: "3.48 bar",
    },
    { given: { p_m: "0.98 bar" }, expect: "0.98 bar" },
  ],
  display: true,
});
