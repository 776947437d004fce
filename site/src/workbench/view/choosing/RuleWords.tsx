import { href } from "../../../data/href.ts";

/** A rule that the worker named for a link: `[id|title]`. */
const NAMED = /(\[[a-z0-9-]+\|[^\]]+\])/;

function RuleLink({ named }: { readonly named: string }) {
  const [id, title] = named.slice(1, -1).split("|");
  return <a href={href(`/rules/${id}/`)}>{title}</a>;
}

/** Words in which rules that have a page lead there. */
export function RuleWords({ text }: { readonly text: string }) {
  return (
    <>{text.split(NAMED).map((piece, index) => (index % 2 === 0 ? piece : <RuleLink named={piece} />))}</>
  );
}
