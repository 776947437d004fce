/** What is agreed with the balancing machine; true where it reads or is given it in each of its two planes. */
export const balancePlanes: Readonly<Record<string, boolean>> = {
  "crankshaft.balanceGrade": false,
  "crankshaft.residualUnbalance": true,
  "crankshaft.massRemoved": true,
  "crankshaft.removalRadius": true,
};
