import type { PacketRow } from '../../backend/generated/types';
import { find, findable, type Findable } from '../../text/find';
import type { Words } from '../../text/words.svelte';

export const sorts = ['recent', 'name', 'worth', 'age'] as const;
export const filters = ['in_use', 'testing', 'saved', 'retired'] as const;
export type Sort = (typeof sorts)[number];
export type Filter = (typeof filters)[number];

const one = <T extends string>(all: readonly T[], found: unknown): T | undefined => all.find((it) => it === found);

/** How the seed box is looked through. */
export class Box {
  sort: Sort = $state('recent');
  filter: Filter = $state('in_use');
  typed = $state('');
  /** What is looked for: what was typed, once that was seen. */
  sought = $state('');

  /** As it is kept on this device until it is changed. */
  get kept(): { sort: string; filter: string; typed: string } {
    return { sort: this.sort, filter: this.filter, typed: this.typed };
  }

  set kept(kept: Partial<Record<string, unknown>>) {
    this.sort = one(sorts, kept.sort) ?? 'recent';
    this.filter = one(filters, kept.filter) ?? 'in_use';
    this.typed = this.sought = typeof kept.typed === 'string' ? kept.typed : '';
  }

  /** Whether it holds back packets in use. */
  get narrow(): boolean {
    return this.filter !== 'in_use' || this.sought.trim() !== '';
  }

  showAll() {
    this.filter = 'in_use';
    this.typed = this.sought = '';
  }

  shown(all: readonly Findable<Named>[], words: Words): PacketRow[] {
    const passing = all.filter(({ item }) => passes(item.row, this.filter));
    const found = this.sought.trim() ? find(passing, this.sought) : passing.map(({ item }) => item);
    const order = orders((a, b) => words.compare(a.name, b.name))[this.sort];
    return (order ? found.sort(order) : found).map(({ row }) => row);
  }
}

/** A packet with its name as it is read. */
interface Named {
  row: PacketRow;
  name: string;
}

/** The packets as they are found, made once for all that is typed. */
export const named = (rows: PacketRow[], words: Words): Findable<Named>[] =>
  rows.map((row) => {
    const name = `${words.crop(row.line.crop)} ${row.line.variety}`;
    return findable({ row, name }, `${words.names(row.line.crop).join(' ')} ${row.line.variety} ${row.line.year ?? ''} ${row.source}`);
  });

/** What is not known comes last. */
const worth = ({ row }: Named) => row.worth ?? 2;
const year = ({ row }: Named) => row.line.year ?? 9999;
type Order = ((a: Named, b: Named) => number) | null;
const orders = (byName: (a: Named, b: Named) => number): Record<Sort, Order> => ({
  recent: null,
  name: byName,
  worth: (a, b) => worth(a) - worth(b) || byName(a, b),
  age: (a, b) => year(a) - year(b) || byName(a, b),
});

function passes(row: PacketRow, filter: Filter): boolean {
  if (filter === 'retired') return row.retired;
  if (row.retired) return false;
  if (filter === 'testing') return row.testing || row.to_test;
  return filter === 'in_use' || row.saved;
}
