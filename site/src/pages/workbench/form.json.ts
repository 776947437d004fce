import { formData } from "../../data/formData.ts";

export const GET = () => Response.json(formData);
