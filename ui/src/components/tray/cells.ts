/** New trays that are offered, by number of cells: rows and columns on a phone held upright. */
export interface Size {
  value: string;
  container: string;
  rows: number;
  columns: number;
}

const cells = (rows: number, columns: number): Size => ({
  value: `cells-${rows * columns}`,
  container: 'cells',
  rows,
  columns,
});

/** Usual sizes of cell trays; 6 to 84 cells. Common practice, no source. */
export const sizes: readonly Size[] = [
  cells(3, 2),
  cells(4, 3),
  cells(6, 4),
  cells(8, 5),
  cells(10, 6),
  cells(12, 7),
  { value: 'pot', container: 'pot', rows: 1, columns: 1 },
  { value: 'pots', container: 'pots', rows: 3, columns: 4 },
  { value: 'open_tray', container: 'open_tray', rows: 1, columns: 1 },
  { value: 'damp_paper', container: 'damp_paper', rows: 1, columns: 1 },
  { value: 'bag', container: 'bag', rows: 1, columns: 1 },
];

export const composts = ['seed', 'multi_purpose', 'potting', 'garden_soil', 'coarse', 'no_compost'] as const;

export const sizeOf = (value: string): Size => sizes.find((size) => size.value === value) ?? cells(6, 4);

/** Whether each cell holds plants of its own, so that seeds are counted by the cell. */
export const countedByCell = (container: string): boolean => container === 'cells' || container === 'pots';
