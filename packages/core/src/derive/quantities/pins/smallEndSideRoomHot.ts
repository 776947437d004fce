import { gapHot } from "../../gapHot.ts";

export const smallEndSideRoomHot = gapHot({
  id: "smallEndSideRoomHot",
  name: "Small end to pin boss, hot",
  symbol: "c_sbh",
  system: "pins",
  meaning:
    "Room between the small end and the nearer pin boss at full load: the bosses move apart with the piston, the small end grows between them. How far block and crankshaft outgrow each other comes off it at the ends of the engine.",
  cold: ["c_sb", "smallEndSideRoom"],
  around: [
    {
      times: 0.5,
      size: ["s_b", "piston.bossSpacing"],
      expansion: ["alpha_p", "piston.expansion"],
      temperature: ["T_pin", "conditions.pinTemperature"],
    },
  ],
  within: [
    {
      times: 0.5,
      size: ["b_se", "connectingRod.smallEndWidth"],
      expansion: ["alpha_r", "connectingRod.expansion"],
      temperature: ["T_rod", "conditions.rodTemperature"],
    },
  ],
  shape: "guarded",
  valid: "as the room cold, at the cylinder by the thrust bearing",
  given: {
    c_sb: "0.70 mm",
    s_b: "24 mm",
    alpha_p: "22.3e-6 1/K",
    T_pin: "150 degC",
    b_se: "22 mm",
    alpha_r: "12e-6 1/K",
    T_rod: "120 degC",
  },
  expect: "0.722 mm",
});
