import { VerdictMark } from "../../../components/VerdictMark.tsx";
import type { SizeText, SolutionView } from "../../choosingProtocol.ts";
import type { Entry } from "../../protocol.ts";
import { choosing } from "../../state/ChoosingStore.ts";
import { FamilyTable } from "./FamilyTable.tsx";
import { Told } from "./Told.tsx";

interface Props {
  readonly view: SolutionView;
  /** Whether it is about the build as it is now. */
  readonly isAbout: boolean;
  readonly entries: Readonly<Record<string, Entry>>;
  readonly nameOf: (path: string) => string | undefined;
  readonly goTo: (path: string) => void;
  readonly take: (sizes: readonly SizeText[]) => void;
}

/** What was found: sizes to take, what the aims come to, other sizes that do as well, and what rules say with them. */
export function SolutionAnswer({ view, isAbout, entries, nameOf, goTo, take }: Props) {
  const isTaken = ({ path, text }: SizeText) =>
    choosing.marks.get(path) === text && entries[path]?.form !== "wanted";
  const put = (sizes: readonly SizeText[]) => {
    if (!isAbout || sizes.every(isTaken)) return;
    for (const { path, text } of sizes) choosing.marks.set(path, text);
    take(sizes);
  };
  const { found, sizes, aims, ranges, family, standing } = view;
  const button = (words: string, about: string, put_: readonly SizeText[]) => (
    <button
      type="button"
      aria-disabled={!isAbout || put_.every(isTaken)}
      aria-label={`${words}: ${about}`}
      onClick={() => put(put_)}
    >
      {put_.every(isTaken) ? "Taken" : words}
    </button>
  );
  return (
    <div class={`answer ${isAbout ? "" : "older"}`}>
      {view.needs !== undefined && (
        <p class="needs">
          <b class="label">go to</b>
          {view.needs.map((path) => (
            <button key={path} type="button" class="link" onClick={() => goTo(path)}>
              {nameOf(path) ?? path}
            </button>
          ))}
        </p>
      )}
      {sizes !== undefined && (
        <>
          <h4>{sizes.heading}</h4>
          <ul class="found-sizes">
            {sizes.items.map(({ id, title, lines }) => {
              const size = found.find(({ path }) => path === id);
              return (
                <li key={title}>
                  <span>{title}</span>
                  <b class="number">{lines[0]?.text}</b>
                  {lines.slice(1).map(({ label, text }) => (
                    <span class="quiet number" key={text}>
                      {label} {text}
                    </span>
                  ))}
                  {size !== undefined && button("Take this size", title, [size])}
                </li>
              );
            })}
          </ul>
          {found.length > 1 && <p>{button("Take all", found.map(({ text }) => text).join(", "), found)}</p>}
        </>
      )}
      {aims !== undefined && (
        <>
          <h4>{aims.heading}</h4>
          <ul class="lines">
            {aims.items.map(({ title, tone, lines }) => (
              <li key={title} class={`tone-${tone}`}>
                <b class="label">{lines[0]?.label}</b>
                {title}: <span class="number">{lines[0]?.text}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {ranges !== undefined && (
        <>
          <h4>{ranges.heading}</h4>
          <p>{ranges.intro}</p>
          <ul class="lines">
            {ranges.items.map(({ title, lines }) => (
              <li key={title}>
                {title}: <span class="number">{lines[0]?.text}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {family !== undefined && <FamilyTable family={family} button={button} />}
      {standing !== undefined && (
        <>
          <h4>With these sizes</h4>
          {standing.lead.slice(0, 2).map(({ text, tone }) => (
            <p key={text} class={`tone-${tone}`}>
              {text}
            </p>
          ))}
          {standing.findings.map((item) => (
            <details key={item.id} class="finding">
              <summary>
                {item.word !== undefined && <VerdictMark word={item.word} />}
                <span class="title">{item.title}</span>
              </summary>
              <Told lines={item.lines.slice(1)} />
            </details>
          ))}
        </>
      )}
    </div>
  );
}
