import { ringGapByFactor } from "../../ringGapByFactor.ts";

export const topRingGapByFactor = ringGapByFactor("top");
