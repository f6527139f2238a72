import type { BenchView, FreeTray, TrayChoice } from '../../backend/generated/types';
import { sizeOf } from './cells';

/** The widest that so many pots stand without a gap, at most six abreast. */
export function potColumns(pots: number): number {
  for (let columns = 6; columns > 1; columns -= 1) if (pots % columns === 0) return columns;
  return 1;
}

/** A tray being chosen: a living one with room, or a new one. */
export class TrayDraft {
  /** `new`, or the id of a living tray. */
  which = $state('new');
  size = $state('cells-24');
  /** Pots of a group, or strips of an open tray. */
  parts = $state(6);
  compost = $state('seed');
  place = $state('');
  covered = $state(false);
  code = $state('');
  cells: number[] = $state([]);

  constructor(compost = 'seed', size = 'cells-24') {
    this.compost = compost;
    this.size = size;
  }

  existing(bench: BenchView): FreeTray | undefined {
    return bench.trays.find((tray) => tray.tray === this.which);
  }

  get container(): string {
    return sizeOf(this.size).container;
  }

  get hasParts(): boolean {
    return this.which === 'new' && (this.container === 'pots' || this.container === 'open_tray');
  }

  shape(bench: BenchView): { rows: number; columns: number; taken: number[] } {
    const tray = this.existing(bench);
    if (tray) return tray;
    if (this.container === 'pots') {
      const columns = potColumns(this.parts);
      return { rows: this.parts / columns, columns, taken: [] };
    }
    if (this.container === 'open_tray') return { rows: this.parts, columns: 1, taken: [] };
    const { rows, columns } = sizeOf(this.size);
    return { rows, columns, taken: [] };
  }

  /** Where it stands or will stand. */
  standsAt(bench: BenchView): string {
    return this.existing(bench)?.place?.id ?? this.place;
  }

  choice(bench: BenchView): TrayChoice {
    const tray = this.existing(bench);
    if (tray) return { tray: 'existing', id: tray.tray };
    const { rows, columns } = this.shape(bench);
    return {
      tray: 'new',
      code: this.code.trim() || null,
      container: this.container,
      rows,
      columns,
      compost: this.container === 'damp_paper' ? 'no_compost' : this.compost,
      place: this.place,
      covered: this.covered,
    };
  }
}
