import { valveHeadGrowth } from "../../valves/valveHeadGrowth.ts";

export const exhaustValveHeadGrowth = valveHeadGrowth("exhaust", ["720 degC", "0.184 mm"]);
