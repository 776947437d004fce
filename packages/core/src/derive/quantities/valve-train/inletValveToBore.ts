import { valveWallRoom } from "../../valves/valveWallRoom.ts";

export const inletValveToBore = valveWallRoom("inlet");
