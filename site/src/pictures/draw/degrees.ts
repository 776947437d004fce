import { fromSi, unitOf } from "trialfit";

/** Degrees of a crank angle. */
export const degrees = (angle: number): number => fromSi(angle, unitOf("deg"));

/** A crank angle from degrees. */
export const radians = (angle: number): number => (angle / 180) * Math.PI;
