import { smallEndToCrown as roomOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const smallEndToCrown = quantity({
  id: "smallEndToCrown",
  name: "Small end to crown",
  symbol: "c_se",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Room between the top of the rod’s small end and the underside of the crown; negative when they meet. Short pistons with large small ends run out of it.",
  inputs: { h_u: "piston.crownUnderside", D_so: "connectingRod.smallEndOuterDiameter" },
  formula: "h_u - D_so / 2",
  compute: ({ h_u, D_so }) => roomOf({ crownUndersideHeight: h_u, smallEndRadius: D_so / 2 }),
  shape: "monotone",
  hot: {
    coldOnly: "the aluminium crown grows away from the pin by more than the small end grows: the room opens",
  },
  valid: "a round small end",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_u: "19.6 mm", D_so: "33 mm" }, expect: "3.10 mm" }],
  display: true,
});
