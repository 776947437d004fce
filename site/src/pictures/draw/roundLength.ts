/** The longest of 1, 2, 5, 10, 20 … that is not longer than a length. */
export function roundLength(most: number): number {
  const power = 10 ** Math.floor(Math.log10(most));
  return Math.max(...[1, 2, 5].filter((one) => one * power <= most)) * power;
}
