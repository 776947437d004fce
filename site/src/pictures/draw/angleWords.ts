import { formatNumber } from "trialfit";

const TURN = 2 * Math.PI;

const text = (angle: number) => formatNumber(angle, "deg", { decimals: 1 }).replace(/(\.0)? deg/, "°");

/**
 * A crank angle after firing top dead centre as people read it: `63° after firing TDC`, `304° (56° before overlap
 * TDC)`.
 */
export function angleWords(angle: number): string {
  const inCycle = ((angle % (2 * TURN)) + 2 * TURN) % (2 * TURN);
  const inTurn = inCycle % TURN;
  const before = inTurn > Math.PI;
  const size = text(before ? TURN - inTurn : inTurn);
  const overlap = before ? inCycle < TURN : inCycle >= TURN;
  const top = overlap ? "overlap TDC" : "firing TDC";
  const words = size === "0°" ? `at ${top}` : `${size} ${before ? "before" : "after"} ${top}`;
  return before || (overlap && size !== "0°") ? `${text(inCycle)} (${words})` : words;
}
