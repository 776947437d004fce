/** A length of a picture [mm] for people: one decimal more where it is small. */
export function lengthText(mm: number): string {
  const decimals = Math.abs(mm) < 10 ? 2 : 1;
  return `${mm.toFixed(decimals)} mm`;
}
