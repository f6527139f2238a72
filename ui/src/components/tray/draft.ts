import type { BenchView, FreeTray, TrayChoice } from '../../backend/generated/types';
import { sizeOf } from './cells';

/** A tray being chosen, a living one with room or a new one: plain, so that it can be kept. */
export interface TrayDraft {
  /** `new`, or the id of a living tray. */
  which: string;
  size: string;
  /** Pots of a group, or strips of an open tray. */
  parts: number;
  compost: string;
  place: string;
  covered: boolean;
  code: string;
  /** Whether a cell is marked, by its number. */
  marks: boolean[];
  /** The cells were marked by hand. */
  byHand: boolean;
}

export const trayDraft = (rest: Partial<TrayDraft> = {}): TrayDraft => ({
  which: 'new',
  size: 'cells-24',
  parts: 6,
  compost: 'seed',
  place: '',
  covered: false,
  code: '',
  marks: [],
  byHand: false,
  ...rest,
});

export interface Shape {
  rows: number;
  columns: number;
  taken: number[];
}

/** The widest that so many pots stand without a gap, at most six abreast. */
export function potColumns(pots: number): number {
  for (let columns = 6; columns > 1; columns -= 1) if (pots % columns === 0) return columns;
  return 1;
}

export const existing = (draft: TrayDraft, bench: BenchView): FreeTray | undefined =>
  bench.trays.find((tray) => tray.tray === draft.which);

export const containerOf = (draft: TrayDraft, bench: BenchView): string =>
  existing(draft, bench)?.container ?? sizeOf(draft.size).container;

/** Whether it is asked how many pots or strips a new one has. */
export const hasParts = (draft: TrayDraft): boolean =>
  draft.which === 'new' && ['pots', 'open_tray'].includes(sizeOf(draft.size).container);

export function shapeOf(draft: TrayDraft, bench: BenchView): Shape {
  const tray = existing(draft, bench);
  if (tray) return tray;
  const { container, rows, columns } = sizeOf(draft.size);
  if (container === 'pots') {
    const abreast = potColumns(draft.parts);
    return { rows: draft.parts / abreast, columns: abreast, taken: [] };
  }
  return container === 'open_tray' ? { rows: draft.parts, columns: 1, taken: [] } : { rows, columns, taken: [] };
}

export const freeCells = ({ rows, columns, taken }: Shape): number => rows * columns - taken.length;

/** The cells marked, in order. */
export const marked = (draft: TrayDraft): number[] => draft.marks.flatMap((mark, cell) => (mark ? [cell] : []));

/** Marks the first free cells, so many, and no others; only what changes is touched. */
export function markFirst(draft: TrayDraft, { rows, columns, taken }: Shape, number: number) {
  let left = number;
  for (let cell = 0; cell < rows * columns; cell += 1) {
    const mark = left > 0 && !taken.includes(cell);
    if (mark) left -= 1;
    if ((draft.marks[cell] ?? false) !== mark) draft.marks[cell] = mark;
  }
}

/** Where it stands or will stand. */
export const standsAt = (draft: TrayDraft, bench: BenchView): string => existing(draft, bench)?.place?.id ?? draft.place;

/** The code on its label. */
export const codeOf = (draft: TrayDraft, bench: BenchView): string =>
  existing(draft, bench)?.code ?? (draft.code.trim() || bench.next_code);

export function choiceOf(draft: TrayDraft, bench: BenchView): TrayChoice {
  const tray = existing(draft, bench);
  if (tray) return { tray: 'existing', id: tray.tray };
  const { rows, columns } = shapeOf(draft, bench);
  const container = containerOf(draft, bench);
  return {
    tray: 'new',
    code: draft.code.trim() || null,
    container,
    rows,
    columns,
    compost: container === 'damp_paper' ? 'no_compost' : draft.compost,
    place: draft.place,
    covered: draft.covered,
  };
}
