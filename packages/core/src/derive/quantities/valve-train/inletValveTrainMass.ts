import { trainMass } from "../../valves/trainMass.ts";

export const inletValveTrainMass = trainMass("inlet");
