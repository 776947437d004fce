import type { ComponentChildren } from "preact";
import "../pictures.css";

/** Width of every picture in its own units: those of a phone, so that its text stays readable there. */
export const WIDTH = 360;

interface Props {
  readonly height: number;
  /** What is seen, with its numbers, for people who do not see it. */
  readonly description: string;
  readonly children: ComponentChildren;
  readonly width?: number;
}

/** The frame of every picture. */
export function Picture({ height, description, children, width = WIDTH }: Props) {
  return (
    <svg class="picture" viewBox={`0 0 ${width} ${Math.round(height)}`} role="img" aria-label={description}>
      {children}
    </svg>
  );
}
