import { trainMass } from "../../valves/trainMass.ts";

export const exhaustValveTrainMass = trainMass("exhaust");
