import { dowelShear } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainCapDowelReserve = quantity({
  id: "mainCapDowelReserve",
  name: "Reserve of the main cap’s dowels",
  symbol: "S_dw",
  unit: "1",
  decimals: 2,
  system: "main-caps",
  meaning:
    "Shear load that the dowels of one main cap carry over the sideways part of the firing load, in a V. A second line behind friction: dowels take load once the cap has slipped.",
  inputs: {
    n_dw: "mainCap.dowelCount",
    D_dw: "mainCap.dowelDiameter",
    d_dw: "mainCap.dowelBore",
    tau_dw: "mainCap.dowelShear",
    F_g: "gasForce",
    gamma: "block.bankAngle",
  },
  formula: "n_dw * pi / 4 * (D_dw^2 - d_dw^2) * tau_dw / (F_g / 2 * sin(gamma / 2))",
  compute: ({ n_dw, D_dw, d_dw, tau_dw, F_g, gamma }) => {
    if (gamma === 0) throw new RangeError("cylinders in a row do not push a cap sideways");
    const held = dowelShear({
      dowels: n_dw,
      outerDiameter: D_dw,
      innerDiameter: d_dw,
      shearStrength: tau_dw,
    });
    return held / ((F_g / 2) * Math.sin(gamma / 2));
  },
  shape: "guarded",
  valid: "V engines; dowels that share alike; friction not counted",
  sources: [{ id: "shigley", where: "direct shear" }],
  examples: [
    {
      given: {
        n_dw: "2",
        D_dw: "14 mm",
        d_dw: "11 mm",
        tau_dw: "200 MPa",
        F_g: "45.65 kN",
        gamma: "90 deg",
      },
      expect: "1.46",
    },
  ],
  display: true,
});
