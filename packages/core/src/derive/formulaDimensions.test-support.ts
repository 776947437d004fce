import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from "mathjs";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { IRON, STEEL } from "../tables/usualMetals.ts";
import type { UnitDimensions } from "../units/unitTable.ts";

/** Powers of length, mass, time and temperature. An angle is a ratio of lengths and has none. */
export type Dimensions = readonly number[];

const NONE: Dimensions = [0, 0, 0, 0];

/** Numbers in formulae that are not plain: what they are, in powers of m, kg, s and K. */
const constants: ReadonlyMap<number, Dimensions> = new Map([
  [0.001, [1, 0, 0, 0]], // room on each side of a notch, m
  [IRON.expansion, [0, 0, 0, -1]], // expansion of cast iron, 1/K
  [STEEL.expansion, [0, 0, 0, -1]], // expansion of steel, 1/K
  [REFERENCE_TEMPERATURE, [0, 0, 0, 1]], // 20 °C, K
  [287.05, [2, 0, -2, -1]], // gas constant of air, J/(kg K)
  [1005, [2, 0, -2, -1]], // heat capacity of air, J/(kg K)
  [99_000, [-1, 1, -2, 0]], // dry pressure of standard air, Pa
  [298.15, [0, 0, 0, 1]], // temperature of standard air, K
  [13_700, [-1, 1, -2, 0]], // friction of an engine at rest, Pa
  [16_200, [-2, 1, -1, 0]], // friction for each metre a second of piston speed, Pa s/m
  [STEEL.elasticModulus, [-1, 1, -2, 0]], // modulus of steel, Pa
  [110e9, [-1, 1, -2, 0]], // modulus of bronze, Pa
  [0.004, [0, 1, 0, 0]], // oil about a crankpin, kg
  [7800, [-3, 1, 0, 0]], // density of a ring, kg/m3
  [7840, [-3, 1, 0, 0]], // density of a steel pin, kg/m3
  [2e-5, [-1, 1, -1, 0]], // viscosity of oil mist, Pa s
  [60, [0, 0, 1, 0]], // seconds in a minute
  [97_000, [-1, 1, -2, 0]], // friction of an engine by its speed alone, Pa
  [15_000, [-1, 1, -2, 0]], // the same for each thousand revolutions a minute, Pa
  [5000, [-1, 1, -2, 0]], // the same for their square, Pa
  [178.15, [0, 0, 0, 1]], // -95 °C, K
  [373.15, [0, 0, 0, 1]], // 100 °C, K
  [423.15, [0, 0, 0, 1]], // 150 °C, K
  [273.15, [0, 0, 0, 1]], // 0 °C, K
  [243.04, [0, 0, 0, 1]], // second constant of the Magnus form, K
  [610.94, [-1, 1, -2, 0]], // vapour pressure at 0 °C by the Magnus form, Pa
  [461.5, [2, 0, -2, -1]], // gas constant of water vapour, J/(kg K)
  [1.225, [-3, 1, 0, 0]], // density of the standard atmosphere at the sea, kg/m3
  [288.15, [0, 0, 0, 1]], // its temperature, K
  [0.0065, [-1, 0, 0, 1]], // its lapse with height, K/m
]);

export const withoutAngle = (dimensions: UnitDimensions): Dimensions => dimensions.slice(0, 4);
export const sameAs = (a: Dimensions, b: Dimensions): boolean =>
  a.every((power, index) => power === b[index]);

/** Zero has whatever dimensions it is compared with or added to. */
const isZero = (node: MathNode): boolean =>
  node.type === "ConstantNode" && (node as ConstantNode).value === 0;

function allAlike(nodes: readonly MathNode[], inputs: ReadonlyMap<string, Dimensions>): Dimensions {
  const found = nodes.filter((node) => !isZero(node)).map((node) => dimensionsOf(node, inputs));
  const [first = NONE] = found;
  if (found.some((other) => !sameAs(first, other))) throw new Error(`unlike terms in ${nodes.join(" and ")}`);
  return first;
}

function power(base: Dimensions, exponent: MathNode, inputs: ReadonlyMap<string, Dimensions>): Dimensions {
  if (sameAs(base, NONE)) {
    // A plain number has any plain power.
    if (!sameAs(dimensionsOf(exponent, inputs), NONE)) throw new Error(`power ${exponent.toString()}`);
    return NONE;
  }
  const value: unknown = exponent.evaluate();
  if (typeof value !== "number" || !Number.isInteger(2 * value))
    throw new Error(`power ${exponent.toString()}`);
  return base.map((one) => one * value);
}

function ofOperator(node: OperatorNode, inputs: ReadonlyMap<string, Dimensions>): Dimensions {
  const [left, right] = node.args as MathNode[];
  if (right === undefined) return dimensionsOf(left!, inputs);
  if (node.op === "+" || node.op === "-") return allAlike([left!, right], inputs);
  const a = dimensionsOf(left!, inputs);
  if (node.op === "^") return power(a, right, inputs);
  const b = dimensionsOf(right, inputs);
  if (node.op === "*") return a.map((one, index) => one + b[index]!);
  if (node.op === "/") return a.map((one, index) => one - b[index]!);
  throw new Error(`operator ${node.op}`);
}

function ofFunction(node: FunctionNode, inputs: ReadonlyMap<string, Dimensions>): Dimensions {
  const name = node.fn.name;
  if (["min", "max", "abs"].includes(name)) return allAlike(node.args, inputs);
  const [argument] = node.args.map((one) => dimensionsOf(one, inputs));
  if (name === "sqrt") return argument!.map((one) => one / 2);
  if (!["sin", "cos", "asin", "exp"].includes(name)) throw new Error(`function ${name}`);
  if (!sameAs(argument!, NONE)) throw new Error(`${name} of something with a unit`);
  return NONE;
}

/**
 * Dimensions of a parsed formula.
 * @throws Error where terms do not agree, a function is given something with a unit, or a name is not an input
 */
export function dimensionsOf(node: MathNode, inputs: ReadonlyMap<string, Dimensions>): Dimensions {
  switch (node.type) {
    case "ConstantNode":
      return constants.get((node as ConstantNode<number>).value) ?? NONE;
    case "SymbolNode": {
      const name = (node as SymbolNode).name;
      const known = name === "pi" ? NONE : inputs.get(name);
      if (known === undefined) throw new Error(`the name ${name} is not an input`);
      return known;
    }
    case "ParenthesisNode":
      return dimensionsOf((node as ParenthesisNode).content, inputs);
    case "OperatorNode":
      return ofOperator(node as OperatorNode, inputs);
    case "FunctionNode":
      return ofFunction(node as FunctionNode, inputs);
    default:
      throw new Error(`a ${node.type} in a formula`);
  }
}
