/** Words of a name or text in small letters: `flywheelFastener`, `flywheel-fastener` and `Flywheel fastener` alike. */
export function plainWords(text: string): readonly string[] {
  return text
    .replace(/([a-z\d])([A-Z])/g, "$1 $2")
    .split(/[^A-Za-z\d]+/)
    .filter((word) => word !== "")
    .map((word) => word.toLowerCase());
}
