import { liftToDiameter } from "../../valves/liftToDiameter.ts";

export const exhaustLiftToDiameter = liftToDiameter("exhaust");
