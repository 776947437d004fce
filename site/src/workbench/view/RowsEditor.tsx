import type { Entry, FormField } from "../protocol.ts";

type Rows = Extract<Entry, { form: "rows" }>;

interface Props {
  readonly field: FormField;
  readonly entry: Rows;
  readonly describedBy: string | undefined;
  readonly write: (entry: Rows) => void;
}

/** A table of the build file: one line for each row, cells as they are written, with their units. */
export function RowsEditor({ field, entry, describedBy, write }: Props) {
  const { columns = [], label, row: example = "" } = field;
  const set = (at: number, name: string, cell: string) =>
    write({
      form: "rows",
      rows: entry.rows.map((row, index) => (index === at ? { ...row, [name]: cell } : row)),
    });
  const blank = Object.fromEntries(columns.map(({ name }) => [name, ""]));
  return (
    <div class="rows">
      <p class="quiet">A row is written {example}</p>
      {entry.rows.length > 0 && (
        <div class="scroll">
          <table aria-describedby={describedBy}>
            <thead>
              <tr>
                {columns.map((column) => (
                  <th key={column.name} scope="col">
                    {column.label}
                    {column.optional && <span class="quiet"> if any</span>}
                  </th>
                ))}
                <th>
                  <span class="sr-only">Take out</span>
                </th>
              </tr>
            </thead>
            <tbody>
              {entry.rows.map((row, at) => (
                <tr key={at}>
                  {columns.map((column) => (
                    <td key={column.name}>
                      <input
                        type="text"
                        autocomplete="off"
                        aria-label={`${label}, row ${at + 1}: ${column.label}`}
                        value={row[column.name] ?? ""}
                        onInput={(event) => set(at, column.name, event.currentTarget.value)}
                      />
                    </td>
                  ))}
                  <td>
                    <button
                      type="button"
                      aria-label={`${label}: take row ${at + 1} out`}
                      onClick={() =>
                        write({ form: "rows", rows: entry.rows.filter((_, index) => index !== at) })
                      }
                    >
                      ×
                    </button>
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <button type="button" onClick={() => write({ form: "rows", rows: [...entry.rows, blank] })}>
        Add a row
      </button>
    </div>
  );
}
