import { bearings } from "../../bearings/Bearing.ts";
import { filletRoom } from "../../bearings/filletRoom.ts";

export const rodBearingFilletRoom = filletRoom(bearings.rod, "0.028 mm");
