import { rodShare } from "../../rodShare.ts";

export const smallEndMassByGravity = rodShare("small", "169.6 g");
