import type { ComponentChildren } from "preact";
import type { FamilyView, SizeText } from "../../choosingProtocol.ts";
import { Markup } from "../Markup.tsx";

interface Props {
  readonly family: FamilyView;
  readonly button: (words: string, about: string, sizes: readonly SizeText[]) => ComponentChildren;
}

/** Other sizes that meet the aims as well, drawn where two move together, and each to be taken. */
export function FamilyTable({ family: { heading, intro, members, picture }, button }: Props) {
  return (
    <>
      <h4>{heading}</h4>
      <p>{intro}</p>
      {picture !== undefined && <Markup html={picture} />}
      <div class="members">
        <table>
          <thead>
            <tr>
              {members[0]?.map(({ path, label }) => (
                <th key={path} scope="col">
                  {label}
                </th>
              ))}
              <td />
            </tr>
          </thead>
          <tbody>
            {members.map((sizes) => {
              const name = sizes.map(({ text }) => text).join(", ");
              return (
                <tr key={name}>
                  {sizes.map(({ path, text }) => (
                    <td key={path} class="number">
                      {text}
                    </td>
                  ))}
                  <td>{button("Take these", name, sizes)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
    </>
  );
}
