import { formatNumber, type TraceValue } from "trialfit";
import { degrees } from "./degrees.ts";

/** Every so many degrees a row. */
const EVERY = 30;

/** What the table is called where it can be opened. */
export const TABLE_TITLE = `Values every ${EVERY}°`;

/** The values of traces as a table, for people who would rather read than look. */
export function CurveTable({ traces }: { readonly traces: readonly TraceValue[] }) {
  const rows = traces[0]!.angles.flatMap((angle, index) =>
    Math.round(degrees(angle)) % EVERY === 0 ? [{ angle, index }] : [],
  );
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">Crank angle</th>
          {traces.map(({ name, unit }) => (
            <th scope="col">
              {name} [{unit}]
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ angle, index }) => (
          <tr>
            <th scope="row">{Math.round(degrees(angle))}°</th>
            {traces.map(({ values, unit, decimals }) => (
              <td>{formatNumber(values[index]!, unit, { decimals }).replace(/ .*/, "")}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
