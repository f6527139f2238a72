import type { LabelStock } from '../../backend/generated/types';

const papers: Record<string, { width: number; height: number }> = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
};

export const paperOf = (stock: LabelStock) => papers[stock.paper] ?? { width: 210, height: 297 };

/** How many labels stand beside and above each other, for drawing the sheet; the app decides when it prints. */
export function fits(stock: LabelStock): { columns: number; rows: number } {
  const paper = paperOf(stock);
  const count = (all: number, start: number, size: number, gap: number) =>
    size > 0 ? Math.max(0, Math.floor((all - 2 * start + gap + 0.05) / (size + gap))) : 0;
  return {
    columns: count(paper.width, stock.left, stock.width, stock.across),
    rows: count(paper.height, stock.top, stock.height, stock.down),
  };
}
