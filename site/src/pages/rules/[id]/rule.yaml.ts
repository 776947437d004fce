import type { APIRoute } from "astro";
import { ruleFileTexts } from "../../../data/ruleFileTexts.ts";

export const getStaticPaths = () =>
  [...ruleFileTexts].map(([id, text]) => ({ params: { id }, props: { text } }));

/** The file of a rule, as it stands in the catalog. */
export const GET: APIRoute<{ readonly text: string }> = ({ props }) =>
  new Response(props.text, { headers: { "Content-Type": "text/plain; charset=utf-8" } });
