import { valveWallRoomHot } from "../../valves/edgeRoomHot.ts";

export const exhaustValveToBoreHot = valveWallRoomHot("exhaust");
