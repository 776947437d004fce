import { pocketRoomHot } from "../../valves/edgeRoomHot.ts";

export const exhaustPocketRoomHot = pocketRoomHot("exhaust");
