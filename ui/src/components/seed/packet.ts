import type { PacketForm, PacketRow, StatedDaysForm } from '../../backend/generated/types';
import type { Words } from '../../text/words.svelte';

export const storages = ['fridge_sealed', 'cool_cupboard', 'warm_room', 'damp_shed'] as const;

/** A packet with nothing on it yet but what is the same as on the one before. */
export function blankPacket(before: Partial<PacketForm> = {}): PacketForm {
  return {
    crop: '',
    variety: '',
    packed_year: before.packed_year ?? null,
    harvested_year: before.harvested_year ?? null,
    stated_germination: null,
    stated_days: null,
    seeds: null,
    storage: before.storage ?? 'cool_cupboard',
    treated: false,
    source: before.source ?? '',
    note: '',
    sow_by: null,
    f1: false,
    saved_from: null,
    price: '',
  };
}

/** A whole number as typed; none if nothing or no number was. */
export function whole(typed: string): number | null {
  const number = Number(typed.trim());
  return typed.trim() !== '' && Number.isInteger(number) && number >= 0 ? number : null;
}

/** The days to come up that it states, and at what temperature. */
export function statedDays(words: Words, stated: StatedDaysForm): string {
  const { from, to, at } = stated;
  const days = words.t('packet-days-said', { from, to, spread: to - from });
  return at === null ? days : words.t('packet-days-said-at', { days, range: words.range(at) });
}

/** When it was packed or harvested, how it is kept, what is left of it. */
export function rowFacts(words: Words, row: PacketRow, now: string): string {
  const { year, seeds_left } = row.line;
  const age = year === null ? 0 : Math.max(0, Number(now.slice(0, 4)) - year);
  const facts = [
    year === null ? words.t('packet-year-unknown') : words.t(row.saved ? 'seed-harvested' : 'seed-packed', { year: String(year), age }),
    words.word('storage', row.storage),
    seeds_left === null ? '' : words.t('packet-seeds-left', { seeds: seeds_left }),
    row.f1 ? words.t('seed-first-cross') : '',
    row.treated ? words.t('seed-treated') : '',
  ];
  return facts.filter(Boolean).join('\u00a0· ');
}
