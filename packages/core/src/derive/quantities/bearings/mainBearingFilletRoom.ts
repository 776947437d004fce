import { bearings } from "../../bearings/Bearing.ts";
import { filletRoom } from "../../bearings/filletRoom.ts";

export const mainBearingFilletRoom = filletRoom(bearings.main, "0.028 mm");
