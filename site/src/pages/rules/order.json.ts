import { orderData } from "../../data/orderData.ts";

/** What to ask sellers for, fetched by the catalog's page when somebody names the parts. */
export const GET = () => new Response(JSON.stringify(orderData));
