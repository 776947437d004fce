import { contactReserve } from "../../valves/contactLoss.ts";

export const exhaustContactLossReserve = contactReserve("exhaust");
