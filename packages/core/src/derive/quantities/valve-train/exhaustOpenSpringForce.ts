import { openForce } from "../../valves/openForce.ts";

export const exhaustOpenSpringForce = openForce("exhaust");
