import { valveWallRoom } from "../../valves/valveWallRoom.ts";

export const exhaustValveToBore = valveWallRoom("exhaust");
