import { liftToDiameter } from "../../valves/liftToDiameter.ts";

export const inletLiftToDiameter = liftToDiameter("inlet");
