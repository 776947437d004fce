/** What a builder must still check by hand, because no rule of the catalog looks at it yet. */
export const notCovered =
  "rod to oil pan; counterweights and rods to starter, pump and pickup; damped torsional vibration; cooling; exhaust; ignition; engine control; mounts, gearbox and clutch";
