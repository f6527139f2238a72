import { trays } from './fake-data';
import type { Candidate, LabelStock, LabelText, LabelsView, LostLabel, TrayLine } from './generated/types';

/* Canned labels: two papers, and those of the trays in fake-data. */

const stock = (paper: string, width: number, height: number, left: number, top: number, across: number): LabelStock => ({
  paper, width, height, left, top, across, down: 0,
});

const lines = (): { line: TrayLine; place: string }[] =>
  trays().places.flatMap((it) => it.trays.map((line) => ({ line, place: it.place.name })));

export const labels = (bare: boolean): LabelsView => ({
  stocks: [
    { stock: stock('a4', 63.5, 38.1, 7.2, 15.1, 2.5), columns: 3, rows: 7 },
    { stock: stock('a4', 38.1, 21.2, 4.7, 10.7, 2.5), columns: 5, rows: 13 },
    { stock: stock('letter', 66.7, 25.4, 4.8, 12.7, 3.1), columns: 3, rows: 10 },
  ],
  trays: bare
    ? []
    : lines().map(({ line, place }): LabelText => ({
        tray: line.tray,
        code: line.code,
        names: line.plants.map((it) => `${it.crop.key} ${it.variety}`.trim()),
        date: '4 Apr 2026',
        place,
      })),
});

export const ofCode = (text: string): TrayLine[] =>
  lines().map((it) => it.line).filter((line) => line.code.toLowerCase() === text.trim().toLowerCase());

export const lost = (asked: LostLabel): Candidate[] =>
  trays()
    .places.filter((it) => asked.place === null || it.place.id === asked.place)
    .flatMap((it) => it.trays.map((line) => ({ line, place: it.place, began: '2026-04-04', fits: asked.place ? ['place'] : [] })))
    .slice(0, 5);
