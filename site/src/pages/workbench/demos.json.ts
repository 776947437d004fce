import { demoTexts } from "../../data/demoTexts.ts";

export const GET = () => Response.json(demoTexts);
