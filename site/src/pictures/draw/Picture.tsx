import type { ComponentChildren } from "preact";
import "../pictures.css";

/** Width of every picture in its own units: those of a phone, so that its text stays readable there. */
export const WIDTH = 360;

interface Props {
  readonly height: number;
  /** What is seen, with its numbers, for people who do not see it. */
  readonly description: string;
  readonly children: ComponentChildren;
  /** Lines of text under the drawing. */
  readonly notes?: readonly string[];
}

/** The frame of every picture. */
export function Picture({ height, description, children, notes = [] }: Props) {
  return (
    <div class="picture-frame">
      <svg class="picture" viewBox={`0 0 ${WIDTH} ${Math.round(height)}`} role="img" aria-label={description}>
        {children}
      </svg>
      {notes.length > 0 && (
        <ul class="picture-notes plain-list">
          {notes.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
