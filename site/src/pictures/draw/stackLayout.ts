import { WIDTH } from "./Picture.tsx";

/** Places in the picture of the deck stack, in its units. */
export const stackLayout = { left: 8, right: WIDTH - 8, top: 22, bar: 24, row: 23 };
