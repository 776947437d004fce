import { fastenerMetals } from "../../../tables/alloys.ts";
import { hotShare, hotShareValid } from "../../hotShare.ts";
import { quantity } from "../../Quantity.ts";

export const rodBoltHotStrengthUse = quantity({
  id: "rodBoltHotStrengthUse",
  name: "Use of the rod bolt’s yield strength, hot and weaker for it",
  symbol: "nu_sb",
  unit: "1",
  decimals: 3,
  system: "rods",
  meaning:
    "Preload of a hot rod bolt over the load at which it yields at that temperature; above 1 it stretches for good.",
  inputs: { nu_wb: "rodBoltHotUse", T_rod: "conditions.rodTemperature" },
  choices: { metal: "rodBolt.material" },
  method:
    "Use of the yield strength with the joint hot, over what the table of strengths says is left of the yield strength of its metal.",
  compute: ({ nu_wb, T_rod }, { metal }) => nu_wb / hotShare(fastenerMetals, metal, "yield", T_rod),
  shape: "guarded",
  valid: `bolts as warm as the rod; ${hotShareValid}`,
  sources: [{ id: "vdi-2230" }, { id: "from-memory", where: "table of strengths" }],
  examples: [{ given: { nu_wb: "0.802", T_rod: "120 degC", metal: "steel" }, expect: "0.847" }],
  display: true,
});
