import type { PacketRow } from '../../backend/generated/types';
import { find, findable } from '../../text/find';
import type { Words } from '../../text/words.svelte';

export const sorts = ['recent', 'name', 'worth', 'age'] as const;
export const filters = ['in_use', 'testing', 'saved', 'retired'] as const;
export type Sort = (typeof sorts)[number];
export type Filter = (typeof filters)[number];

const kept = 'plumule-seed-box';
const one = <T extends string>(all: readonly T[], found: unknown): T | undefined => all.find((it) => it === found);

/** How the seed box is looked through; kept on this device until it is changed. */
export class Box {
  sort: Sort = $state('recent');
  filter: Filter = $state('in_use');
  typed = $state('');

  constructor() {
    const before = read();
    this.sort = one(sorts, before.sort) ?? 'recent';
    this.filter = one(filters, before.filter) ?? 'in_use';
    this.typed = typeof before.typed === 'string' ? before.typed : '';
  }

  keep() {
    try {
      localStorage.setItem(kept, JSON.stringify({ sort: this.sort, filter: this.filter, typed: this.typed }));
    } catch {
      // Without a store the box opens as it was made.
    }
  }

  shown(rows: PacketRow[], words: Words): PacketRow[] {
    const name = (row: PacketRow) => `${words.crop(row.line.crop)} ${row.line.variety}`;
    const passing = rows.filter((row) => passes(row, this.filter));
    const found = this.typed.trim()
      ? find(
          passing.map((row) => findable(row, `${name(row)} ${row.line.year ?? ''} ${row.source}`)),
          this.typed,
        )
      : passing;
    const by = this.sort;
    if (by === 'recent') return found;
    const text = (a: PacketRow, b: PacketRow) => name(a).localeCompare(name(b), 'en-GB');
    const worth = (row: PacketRow) => row.worth ?? 2;
    const year = (row: PacketRow) => row.line.year ?? 9999;
    if (by === 'worth') return found.sort((a, b) => worth(a) - worth(b) || text(a, b));
    if (by === 'age') return found.sort((a, b) => year(a) - year(b) || text(a, b));
    return found.sort(text);
  }
}

function passes(row: PacketRow, filter: Filter): boolean {
  if (filter === 'retired') return row.retired;
  if (row.retired) return false;
  if (filter === 'testing') return row.testing || row.to_test;
  return filter === 'in_use' || row.saved;
}

function read(): Record<string, unknown> {
  try {
    const found: unknown = JSON.parse(localStorage.getItem(kept) ?? '{}');
    return typeof found === 'object' && found !== null ? { ...found } : {};
  } catch {
    return {};
  }
}
