import type { AssumedValue } from "../read/FieldSpec.ts";

const shear = (metal: string, usual: number, spread: number): AssumedValue => ({
  value: `${usual} MPa ± ${spread}`,
  because: `${metal} shears at about ${usual - spread} to ${usual + spread} MPa (from memory)`,
});

/** Shear strength of the metals into which engine fasteners are screwed. Source: from memory; alloys differ widely. */
export const threadShear = {
  "grey-iron": shear("grey iron", 200, 40),
  "compacted-iron": shear("compacted graphite iron", 300, 40),
  "ductile-iron": shear("ductile iron", 360, 40),
  "cast-aluminium": shear("cast aluminium alloys", 150, 30),
  "wrought-aluminium": shear("wrought aluminium alloys", 200, 30),
  "forged-aluminium": shear("high-strength forged aluminium alloys", 290, 40),
  steel: shear("heat-treated steel", 560, 100),
  titanium: shear("titanium alloy of 6 % aluminium and 4 % vanadium", 550, 60),
} as const satisfies Readonly<Record<string, AssumedValue>>;

export type TappedMetal = keyof typeof threadShear;
