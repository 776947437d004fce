import { formatNumber, type Nominals } from "trialfit";

const TURN = 2 * Math.PI;
/** Banks are told apart by no less [rad]. */
const SAME = 1e-6;

/** The numbers of the cylinders of the bank that leans so far; none where the throws do not tell. */
function cylindersOf(nominals: Nominals, tilt: number): readonly number[] {
  const directions = (nominals.rows("crankshaft.throws") ?? []).map(({ bank }) =>
    typeof bank === "number" ? bank : 0,
  );
  // Directions count from any line of the block: only how far one bank stands from the other is known.
  const from = (one: number, other: number) => (((one - other) % TURN) + TURN) % TURN;
  const opposed = Math.abs(Math.abs(tilt) - Math.PI / 2) < SAME;
  if (opposed) return [];
  const within = directions.map((one) =>
    directions.some((other) => Math.abs(from(one, other) - 2 * Math.abs(tilt)) < SAME),
  );
  const leading = within.some(Boolean) && within.some((one) => !one);
  return leading ? within.flatMap((one, index) => (one === tilt > 0 ? [index + 1] : [])) : [];
}

/** Which bank a cylinder stands in and which cylinders do; undefined in a single row. @param tilt its lean [rad] */
export function bankWords(nominals: Nominals, tilt: number): string | undefined {
  if (tilt === 0) return undefined;
  const lean = formatNumber(Math.abs(tilt), "deg", { decimals: 1 }).replace(/(\.0)? deg/, "°");
  const cylinders = cylindersOf(nominals, tilt);
  const which = cylinders.length === 0 ? "" : `: cylinders ${cylinders.join(", ")}`;
  return `Bank that leans ${lean} ${tilt > 0 ? "with" : "against"} the rotation${which}`;
}
