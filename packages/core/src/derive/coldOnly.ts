import type { WhenHot } from "./Quantity.ts";

const only = (coldOnly: string): WhenHot => ({ coldOnly });

/** Gaps of a millimetre and more about the crankshaft. */
export const ABOUT_THE_CRANKSHAFT = only(
  "80 K make 100 mm of steel 0.1 mm longer, and block and crankshaft grow the same way: the room of a millimetre and more is asked for cold with heat, stretch and play in it",
);

/** Gaps below the piston at the bottom of its stroke. */
export const BELOW_THE_PISTON = only(
  "the rod’s growth lifts the piston by about what skirt, throw and counterweight grow towards each other: the room is asked for cold with heat, stretch and play in it",
);

/** Gaps along the crankshaft. */
export const ALONG_THE_CRANKSHAFT = only(
  "the parts of one crankpin grow along it by a few hundredths of a millimetre; what block and crankshaft outgrow each other by is the shift of the end cylinder",
);

/** Room along a valve’s stem above the guide. */
export const ALONG_THE_STEM = only(
  "the valve’s growth lifts retainer and spring away from the seat, which adds room; lift is counted with the lash that is there hot",
);

/** Places of edges against each other in one cylinder. */
export const ABOUT_THE_BORE = only(
  "an aluminium head outgrows an iron block by a tenth of a millimetre over a cylinder, less than dowels and gasket let it move",
);

/** A step on the way to a gap that has a hot partner. */
export const stepTo = (gap: string): WhenHot =>
  only(`a step on the way to the ${gap}, which has a hot value`);
