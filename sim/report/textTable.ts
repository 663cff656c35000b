/**
 * A table in plain text: the first column to the left, the others to the right, two spaces
 * between. Short rows are filled with nothing.
 */
export function textTable(rows: readonly (readonly string[])[]): string[] {
  const columns = Math.max(0, ...rows.map((row) => row.length));
  const widths = Array.from({ length: columns }, (_, column) =>
    Math.max(...rows.map((row) => [...(row[column] ?? '')].length)),
  );
  return rows.map((row) =>
    widths.map((width, column) => fitted(row[column] ?? '', width, column === 0)).join('  ').trimEnd(),
  );
}

function fitted(text: string, width: number, toLeft: boolean): string {
  const gap = ' '.repeat(Math.max(0, width - [...text].length));
  return toLeft ? text + gap : gap + text;
}
