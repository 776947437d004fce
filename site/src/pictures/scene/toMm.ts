import { fromSi, unitOf } from "trialfit";

const millimetre = unitOf("mm");

/** Metres to millimetres of a picture. */
export const toMm = (metres: number): number => fromSi(metres, millimetre);
