import { rodShare } from "../../rodShare.ts";

export const bigEndMassByGravity = rodShare("big", "400.4 g");
