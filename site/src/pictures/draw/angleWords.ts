import { formatNumber } from "trialfit";

const TURN = 2 * Math.PI;

/** A crank angle after firing top dead centre as people read it: `63° after TDC`, `8° before TDC, valves overlapping`. */
export function angleWords(angle: number): string {
  const inCycle = ((angle % (2 * TURN)) + 2 * TURN) % (2 * TURN);
  const inTurn = inCycle % TURN;
  const before = inTurn > Math.PI;
  const size = formatNumber(before ? TURN - inTurn : inTurn, "deg", { decimals: 1 }).replace(
    /(\.0)? deg/,
    "°",
  );
  const overlap = before ? inCycle < TURN : inCycle >= TURN;
  const top = overlap ? "overlap TDC" : "firing TDC";
  return size === "0°" ? `at ${top}` : `${size} ${before ? "before" : "after"} ${top}`;
}
