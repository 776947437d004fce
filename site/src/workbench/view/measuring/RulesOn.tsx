import { VerdictMark } from "../../../components/VerdictMark.tsx";
import type { RuleStanding } from "./standing.ts";

/** How the rules stand that rest on a dimension; those that do not hold by name. */
export function RulesOn({ standing, count }: { readonly standing: RuleStanding; readonly count: number }) {
  if (count === 0) return <p class="quiet">No rule rests on it; it stands in the record.</p>;
  const named = standing.filter(({ word }) => word === "fails" || word === "open");
  return (
    <div class="rules-on" aria-live="polite">
      <p>
        {standing.length === 0
          ? "None of the rules on it applies to this build."
          : standing.map(({ word, items }) => (
              <span class="count" key={word}>
                <VerdictMark word={word} /> {items.length}
              </span>
            ))}
      </p>
      {named.length > 0 && (
        <ul>
          {named.flatMap(({ word, items }) =>
            items.map(({ id, title }) => (
              <li key={id}>
                {word}: {title}
              </li>
            )),
          )}
        </ul>
      )}
    </div>
  );
}
