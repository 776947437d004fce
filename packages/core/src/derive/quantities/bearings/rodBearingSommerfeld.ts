import { bearings } from "../../bearings/Bearing.ts";
import { sommerfeldNumber } from "../../bearings/sommerfeldNumber.ts";

export const rodBearingSommerfeld = sommerfeldNumber(bearings.rod);
