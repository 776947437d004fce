import { gapHot } from "../gapHot.ts";
import { type Side, sides } from "./valveSide.ts";

/** Play of a valve stem in its guide at full load. */
export function guideClearanceHot(side: Side, expect: string) {
  const { word, index, part } = sides[side];
  return gapHot({
    id: `${side}GuideClearanceHot`,
    name: `${word} stem in guide, hot`,
    symbol: `C_g${index}h`,
    system: "valve-train",
    meaning: `Play of the ${side} valve’s stem in its guide at full load, at the guide’s hotter end. A stem that runs much hotter than its guide takes the play away; without any it sticks.`,
    cold: [`C_g${index}`, `${side}GuideClearance`],
    around: [
      {
        size: [`D_gd${index}`, `${part}.guideBore`],
        expansion: [`alpha_gd${index}`, `${part}.guideExpansion`],
        temperature: [`T_gd${index}`, `conditions.${side}GuideTemperature`],
      },
    ],
    within: [
      {
        size: [`d_st${index}`, `${part}.stemDiameter`],
        expansion: [`alpha_v${index}`, `${part}.expansion`],
        temperature: [`T_st${index}`, `conditions.${side}StemTemperature`],
      },
    ],
    valid:
      "a guide that grows as if it stood free; the head about it holds it back a little or pulls it along",
    given: {
      [`C_g${index}`]: "0.055 mm",
      [`D_gd${index}`]: "8.010 mm",
      [`alpha_gd${index}`]: "11e-6 1/K",
      [`T_gd${index}`]: "190 degC",
      [`d_st${index}`]: "7.955 mm",
      [`alpha_v${index}`]: "17.5e-6 1/K",
      [`T_st${index}`]: "280 degC",
    },
    expect,
  });
}
