import { pocketRoom } from "../../valves/pocketRoom.ts";

export const inletPocketRoom = pocketRoom("inlet", "1.15 mm");
