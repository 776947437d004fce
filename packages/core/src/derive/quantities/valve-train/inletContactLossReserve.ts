import { contactReserve } from "../../valves/contactLoss.ts";

export const inletContactLossReserve = contactReserve("inlet");
