import { pocketRoomHot } from "../../valves/edgeRoomHot.ts";

export const inletPocketRoomHot = pocketRoomHot("inlet");
