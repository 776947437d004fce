import { retainerRoom } from "../../valves/retainerRoom.ts";

export const inletRetainerToSeal = retainerRoom("inlet");
