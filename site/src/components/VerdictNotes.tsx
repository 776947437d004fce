import type { VerdictView } from "../data/verdictView.ts";

/** What to do about a verdict, and what it rests on. */
export function VerdictNotes({ view }: { readonly view: VerdictView }) {
  const { remedy, reasons, lists } = view;
  return (
    <>
      {remedy !== undefined && (
        <p>
          <b>What to do:</b> {remedy}
        </p>
      )}
      {reasons.map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
      {lists.map(({ label, facts }) => (
        <p key={label}>
          <b>{label}:</b>{" "}
          {facts.map((fact, index) => (
            <span key={fact.label}>
              {index > 0 && ", "}
              {fact.href === undefined ? fact.label : <a href={fact.href}>{fact.label}</a>}
            </span>
          ))}
        </p>
      ))}
    </>
  );
}
