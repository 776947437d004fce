/** What a builder must still check by hand, because no rule of the catalog looks at it yet. */
export const notCovered =
  "valves to piston, to each other and to the bore; rod to camshaft, pan rail and oil pan; dome to chamber and plug; crown thickness; torsional vibration; balance; valve springs; oil supply; cooling";
