import { pocketRoom } from "../../valves/pocketRoom.ts";

export const exhaustPocketRoom = pocketRoom("exhaust", "1.27 mm");
