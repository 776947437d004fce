import { wholeShaking } from "../../wholeShaking.ts";

export const greatestShakingCouple = wholeShaking({
  id: "greatestShakingCouple",
  name: "Greatest shaking couple",
  symbol: "M_sh",
  of: "couple",
  meaning:
    "Greatest couple with which all that moves rocks the engine about the middle of its crankshaft, all orders and what turns included, at the highest speed. Counterweights that are too heavy or too light show here.",
  single: "0 N m",
  twin: "557 N m",
});
