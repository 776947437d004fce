import { valveLift } from "../../valves/valveLift.ts";

export const exhaustValveLift = valveLift("exhaust");
