import { valveHeadGrowth } from "../../valves/valveHeadGrowth.ts";

export const inletValveHeadGrowth = valveHeadGrowth("inlet", ["400 degC", "0.100 mm"]);
