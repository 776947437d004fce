import { valveWallRoomHot } from "../../valves/edgeRoomHot.ts";

export const inletValveToBoreHot = valveWallRoomHot("inlet");
