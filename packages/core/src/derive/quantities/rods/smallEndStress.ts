import { quantity } from "../../Quantity.ts";
import {
  smallEndGiven,
  smallEndInputs,
  smallEndMethod,
  smallEndSides,
  smallEndSources,
  smallEndValid,
} from "../../smallEnd.ts";

export const smallEndStress = quantity({
  id: "smallEndStress",
  name: "Greatest stress of the small end",
  symbol: "sigma_sg",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning:
    "Greatest hoop stress in the eye of the small end at overspeed: the pull of piston, pin and rings on top of what its bush brings.",
  inputs: { ...smallEndInputs, sigma_bu: "smallEndPressStress" },
  method: `${smallEndMethod} The stress by the bush comes on top, at the bore and, by Lamé, at the outside; the greater sum is taken.`,
  compute: (n) => Math.max(...smallEndSides(n).map(({ fit, pull }) => fit + pull)),
  shape: "guarded",
  valid: `${smallEndValid}; the bush still tight`,
  sources: smallEndSources,
  examples: [{ given: { ...smallEndGiven, sigma_bu: "89 MPa" }, expect: "330 MPa" }],
  display: true,
});
