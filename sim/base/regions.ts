/**
 * Connected regions of a coded grid, packed: region `i` holds
 * `cells[start[i]] … cells[start[i + 1] - 1]`, all of code `code[i]`.
 */
export interface Regions {
  readonly count: number;
  /** Length `count`. */
  readonly code: Uint8Array;
  /** Length `count + 1`. */
  readonly start: Uint32Array;
  readonly cells: Uint32Array;
  /** 1 + region of each cell, 0 for none. */
  readonly label: Uint32Array;
}

/**
 * Regions of equal code (not 0) that touch by a side or a corner, in the order of their lowest
 * cell. A queue in the packed cells themselves stands for recursion: a region may fill the panel.
 */
export function connectedRegions(codes: Uint8Array, columns: number, rows: number): Regions {
  let coded = 0;
  for (let cell = 0; cell < codes.length; cell++) if (codes[cell] !== 0) coded++;
  const cells = new Uint32Array(coded);
  const label = new Uint32Array(codes.length);
  const starts: number[] = [];
  const kinds: number[] = [];
  let filled = 0;
  for (let first = 0; first < codes.length && filled < coded; first++) {
    const code = codes[first] as number;
    if (code === 0 || label[first] !== 0) continue;
    const name = starts.push(filled);
    kinds.push(code);
    label[first] = name;
    cells[filled++] = first;
    for (let next = filled - 1; next < filled; next++) {
      const cell = cells[next] as number;
      const row = Math.floor(cell / columns);
      const column = cell - row * columns;
      const left = column > 0 ? column - 1 : 0;
      const right = column < columns - 1 ? column + 1 : column;
      const top = row < rows - 1 ? row + 1 : row;
      for (let r = row > 0 ? row - 1 : 0; r <= top; r++) {
        for (let near = r * columns + left; near <= r * columns + right; near++) {
          if (codes[near] !== code || label[near] !== 0) continue;
          label[near] = name;
          cells[filled++] = near;
        }
      }
    }
  }
  const count = starts.length;
  starts.push(filled);
  return { count, code: Uint8Array.from(kinds), start: Uint32Array.from(starts), cells, label };
}

/**
 * Which regions belong together: those of one code whose cells leave a gap of less than `gap`
 * cells between their edges, through any chain of such regions.
 * @returns for each region the lowest region of its group.
 */
export function joinNearRegions(
  regions: Regions,
  columns: number,
  rows: number,
  gap: number,
): Uint32Array {
  const { count, code, start, cells, label } = regions;
  const group = new Uint32Array(count);
  for (let i = 0; i < count; i++) group[i] = i;
  if (count < 2) return group;
  const offsets = offsetsWithin(gap);
  for (let region = 0; region < count; region++) {
    const name = region + 1;
    const last = start[region + 1] as number;
    for (let i = start[region] as number; i < last; i++) {
      const cell = cells[i] as number;
      const row = Math.floor(cell / columns);
      const column = cell - row * columns;
      if (isInside(label, name, cell, column, row, columns, rows)) continue;
      for (let k = 0; k < offsets.length; k += 2) {
        const c = column + (offsets[k] as number);
        const r = row + (offsets[k + 1] as number);
        if (c < 0 || c >= columns || r >= rows) continue;
        const other = label[r * columns + c] as number;
        if (other === 0 || other === name || code[other - 1] !== code[region]) continue;
        joinGroups(group, region, other - 1);
      }
    }
  }
  for (let i = 0; i < count; i++) group[i] = rootOf(group, i);
  return group;
}

/** Steps up, or level to the right, to cells whose edges leave a gap below `gap` cells. */
function offsetsWithin(gap: number): Int32Array {
  const reach = Math.floor(gap) + 1;
  const steps: number[] = [];
  for (let r = 0; r <= reach; r++) {
    for (let c = r === 0 ? 1 : -reach; c <= reach; c++) {
      if (Math.hypot(Math.max(0, Math.abs(c) - 1), Math.max(0, r - 1)) < gap) steps.push(c, r);
    }
  }
  return Int32Array.from(steps);
}

/** Whether all four side neighbours are of the same region, so that the cell is not on its rim. */
function isInside(
  label: Uint32Array,
  name: number,
  cell: number,
  column: number,
  row: number,
  columns: number,
  rows: number,
): boolean {
  return (
    column > 0 &&
    row > 0 &&
    column < columns - 1 &&
    row < rows - 1 &&
    label[cell - 1] === name &&
    label[cell + 1] === name &&
    label[cell - columns] === name &&
    label[cell + columns] === name
  );
}

function rootOf(group: Uint32Array, region: number): number {
  let root = region;
  while (group[root] !== root) root = group[root] as number;
  return root;
}

function joinGroups(group: Uint32Array, a: number, b: number): void {
  const rootA = rootOf(group, a);
  const rootB = rootOf(group, b);
  if (rootA < rootB) group[rootB] = rootA;
  else group[rootA] = rootB;
}
