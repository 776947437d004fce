import { ringGapHot } from "../../ringGapHot.ts";

export const topRingGapHot = ringGapHot({
  id: "topRingGapHot",
  name: "Top ring end gap, hot",
  symbol: "s_1h",
  ring: "top ring",
  gap: ["s_1", "ringSet.topRingEndGap"],
  temperature: ["T_r", "conditions.topRingTemperature"],
  examples: [
    {
      given: { s_1: "0.58 mm", B: "86.5 mm", alpha_ri: "12e-6 1/K", T_r: "225 degC", T_w: "155 degC" },
      expect: "0.315 mm",
    },
    {
      given: { s_1: "0.58 mm", B: "86.5 mm", alpha_ri: "12e-6 1/K", T_r: "230 degC", T_w: "160 degC" },
      expect: "0.314 mm",
    },
  ],
});
