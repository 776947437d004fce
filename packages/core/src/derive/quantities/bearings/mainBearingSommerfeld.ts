import { bearings } from "../../bearings/Bearing.ts";
import { sommerfeldNumber } from "../../bearings/sommerfeldNumber.ts";

export const mainBearingSommerfeld = sommerfeldNumber(bearings.main);
