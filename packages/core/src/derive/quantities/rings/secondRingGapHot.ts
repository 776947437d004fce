import { ringGapHot } from "../../ringGapHot.ts";

export const secondRingGapHot = ringGapHot({
  id: "secondRingGapHot",
  name: "Second ring end gap, hot",
  symbol: "s_2h",
  ring: "second ring",
  gap: ["s_2", "ringSet.secondRingEndGap"],
  temperature: ["T_r2", "conditions.secondRingTemperature"],
  examples: [
    {
      given: { s_2: "0.62 mm", B: "86.5 mm", alpha_ri: "12e-6 1/K", T_r2: "180 degC", T_w: "155 degC" },
      expect: "0.502 mm",
    },
  ],
  display: true,
});
