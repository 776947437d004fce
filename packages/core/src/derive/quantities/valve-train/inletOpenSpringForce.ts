import { openForce } from "../../valves/openForce.ts";

export const inletOpenSpringForce = openForce("inlet");
