import { contactLoss } from "../../valves/contactLoss.ts";

export const exhaustContactLossSpeed = contactLoss("exhaust", "9982 rpm");
