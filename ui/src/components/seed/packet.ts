import type { PacketForm } from '../../backend/generated/types';

export const storages = ['fridge_sealed', 'cool_cupboard', 'warm_room', 'damp_shed'] as const;

/** A packet with nothing on it yet. */
export function blankPacket(storage = 'cool_cupboard'): PacketForm {
  return {
    crop: '',
    variety: '',
    packed_year: null,
    harvested_year: null,
    stated_germination: null,
    seeds: null,
    storage,
    treated: false,
    source: '',
    note: '',
  };
}

/** A whole number as typed; none if nothing or no number was. */
export function whole(typed: string): number | null {
  const number = Number(typed.trim());
  return typed.trim() !== '' && Number.isInteger(number) && number >= 0 ? number : null;
}
