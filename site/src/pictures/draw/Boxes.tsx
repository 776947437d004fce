import type { Box } from "../scene/Scene.ts";

/** Boxes of one kind: a class of the style sheet. */
export function Boxes({ of, kind }: { readonly of: readonly Box[]; readonly kind: string }) {
  return (
    <>
      {of.map((box) => (
        <rect class={kind} x={box.x} y={box.y} width={box.width} height={box.height} />
      ))}
    </>
  );
}
