import { type EstimatedEngine, greatestTorqueEstimate, torqueEstimate } from "@trialfit/mechanics";
import { formatNumber } from "../units/formatNumber.ts";
import { type ListedRow, quantity } from "./Quantity.ts";

/** Step of the speeds that an explanation lists: 500 rpm. */
const STEP = (500 * 2 * Math.PI) / 60;

const inputs = {
  p_me: "brakeMeanEffectivePressure",
  n_P: "targets.powerSpeed",
  V_H: "engineDisplacement",
  k_bf: "induction.bestFillingShare",
  k_ff: "induction.fillingFall",
  n_l: "targets.lowestSpeed",
  n: "targets.speed",
} as const;
type Numbers = Readonly<Record<keyof typeof inputs, number>>;

const engineOf = ({ p_me, n_P, V_H, k_bf, k_ff }: Numbers): EstimatedEngine => ({
  brakeMeanEffectivePressure: p_me,
  powerSpeed: n_P,
  displacement: V_H,
  bestShare: k_bf,
  fall: k_ff,
});

/** Torque at every step of speed within the range. */
function curveRows(numbers: Numbers): readonly ListedRow[] {
  const first = Math.ceil(numbers.n_l / STEP);
  const count = Math.max(0, Math.floor(numbers.n / STEP) - first + 1);
  return Array.from({ length: count }, (_, i) => {
    const angularSpeed = (first + i) * STEP;
    const torque = torqueEstimate({ ...engineOf(numbers), angularSpeed });
    return {
      label: formatNumber(angularSpeed, "rpm", { decimals: 0 }),
      text: `${formatNumber(torque, "N m", { decimals: 0 })}, ${formatNumber(torque * angularSpeed, "kW", { decimals: 0 })}`,
    };
  });
}

interface TorqueEstimate {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
  readonly of: "torque" | "angularSpeed";
  readonly expect: string;
}

/** Declares what the estimated torque curve comes to, and lists the curve. */
export function greatestEstimated({ of, expect, ...own }: TorqueEstimate) {
  return quantity({
    ...own,
    decimals: 0,
    system: "targets",
    inputs,
    method:
      "Mean effective pressure at the target power and friction there give what the gas does; at other speeds it follows the filling, a parabola about the speed of the best, and friction at that speed comes off. The greatest torque from the lowest to the highest speed is taken.",
    compute: (numbers) =>
      greatestTorqueEstimate({ ...engineOf(numbers), lowest: numbers.n_l, highest: numbers.n })[of],
    listing: curveRows,
    shape: "guarded",
    valid:
      "an estimate for looking ahead, good to some 15 %: mixture, spark and boost alike at every speed, filling without resonances; a measured or wanted curve goes into targets.torqueCurve",
    sources: [
      { id: "heywood", where: "eq. 13.6, friction" },
      { id: "common-practice", where: "shape of the filling" },
    ],
    examples: [
      {
        given: {
          p_me: "12.857 bar",
          n_P: "7000 rpm",
          V_H: "2 L",
          k_bf: "0.75",
          k_ff: "0.35",
          n_l: "1500 rpm",
          n: "7600 rpm",
        },
        expect,
      },
    ],
    display: true,
  });
}
