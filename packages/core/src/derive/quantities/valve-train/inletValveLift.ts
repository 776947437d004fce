import { valveLift } from "../../valves/valveLift.ts";

export const inletValveLift = valveLift("inlet");
