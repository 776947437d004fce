import { ringGapByFactor } from "../../ringGapByFactor.ts";

export const secondRingGapByFactor = ringGapByFactor("second");
