import { href } from "../../../data/href.ts";

/** Words in which `[rule-id]` leads to the page of that rule; paths of fields, which have a dot, stay words. */
export function RuleWords({ text }: { readonly text: string }) {
  return (
    <>
      {text
        .split(/(\[[a-z0-9-]+\])/)
        .map((piece, index) =>
          index % 2 === 0 ? piece : <a href={href(`/rules/${piece.slice(1, -1)}/`)}>{piece.slice(1, -1)}</a>,
        )}
    </>
  );
}
