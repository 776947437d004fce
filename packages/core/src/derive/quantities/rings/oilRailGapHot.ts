import { ringGapHot } from "../../ringGapHot.ts";

export const oilRailGapHot = ringGapHot({
  id: "oilRailGapHot",
  name: "Oil rail end gap, hot",
  symbol: "s_3h",
  ring: "oil rail",
  gap: ["s_3", "ringSet.oilRailEndGap"],
  temperature: ["T_r3", "conditions.oilRingTemperature"],
  examples: [
    {
      given: { s_3: "0.40 mm", B: "86.5 mm", alpha_ri: "12e-6 1/K", T_r3: "150 degC", T_w: "155 degC" },
      expect: "0.380 mm",
    },
  ],
  display: true,
});
