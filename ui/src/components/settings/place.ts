import type { PlaceForm } from '../../backend/generated/types';

export const kinds = [
  'heated_propagator',
  'windowsill',
  'shed',
  'greenhouse',
  'cold_frame',
  'outdoors',
  'fridge',
] as const;
export const lights = ['dark', 'dim', 'bright'] as const;

type Usual = Pick<PlaceForm, 'usual' | 'unheated' | 'light' | 'covered'>;
const usual = (min_c: number, max_c: number, light: (typeof lights)[number], covered = false): Usual => ({
  usual: { min_c, max_c },
  unheated: null,
  light,
  covered,
});

/**
 * What a place of each kind is usually like in sowing time, to start from
 * where there is no thermometer. Judgement; the fridge as fridges are set.
 */
const usualOf: Record<string, Usual> = {
  heated_propagator: { ...usual(20, 24, 'dim', true), unheated: { min_c: 14, max_c: 19 } },
  windowsill: usual(15, 20, 'bright'),
  shed: usual(5, 12, 'dark'),
  greenhouse: usual(7, 20, 'bright', true),
  cold_frame: usual(4, 15, 'bright', true),
  outdoors: usual(4, 14, 'bright'),
  fridge: usual(3, 5, 'dark'),
};

export function newPlace(kind: string, position: number): PlaceForm {
  const start = usualOf[kind] ?? usual(10, 18, 'bright');
  return { id: null, name: '', kind, ...structuredClone(start), position, retired: false };
}
