import { contactLoss } from "../../valves/contactLoss.ts";

export const inletContactLossSpeed = contactLoss("inlet", "9920 rpm");
