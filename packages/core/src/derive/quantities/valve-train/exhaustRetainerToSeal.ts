import { retainerRoom } from "../../valves/retainerRoom.ts";

export const exhaustRetainerToSeal = retainerRoom("exhaust");
