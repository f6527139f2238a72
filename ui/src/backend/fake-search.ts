import { crop, day, lines, say } from './fake-data';
import type { PlantName, SearchView } from './generated/types';

/* What is found, canned: “marrow” finds nothing, in the scene `many` there is more than is listed. */

const none: SearchView = { trays: [], sowings: [], packets: [], plans: [], items: [], notes: [], more: [] };
const name = (key: string, variety: string): PlantName => ({ crop: crop(key), variety });
const sale = say('plan-sale', { wanted: { as: 'number', value: 24 }, raise: { as: 'number', value: 28 }, day: { as: 'day', value: '2026-06-20' } });
const tomato = name('tomato', 'Amber Lantern');

export function found(typed: string, many: boolean): SearchView {
  if (typed.trim() === 'marrow') return none;
  const repeat = many ? 50 : 1;
  const times = <T>(make: (i: number) => T): T[] => Array.from({ length: repeat }, (_, i) => make(i));
  return {
    trays: [
      { tray: 't-k7', code: 'K7', place: 'Propagator', plants: lines.tomato ? [tomato, name('pepper', 'Little Bell')] : [], from: day(-9), to: null },
      ...times((i) => ({ tray: `t-c1-${i}`, code: 'C1', place: 'Glasshouse', plants: [tomato], from: day(-380 - i), to: day(-320 - i) })),
    ].slice(0, 50),
    sowings: times((i) => ({ sowing: `s-tom-${i}`, plants: tomato, tray: 't-k7', code: 'K7', sown: day(-9 - i), living: i === 0 })),
    packets: [{ packet: 'p-tomato', plants: tomato, year: 2025, source: 'from the seed swap', retired: false }],
    plans: [
      { plan: 'plan-sale', plants: name('cabbage', 'Stoutgate'), say: sale, listed: true },
      { plan: 'plan-past', plants: tomato, say: sale, listed: false },
    ],
    items: [
      { item: 'i-1', plants: name('tomato', ''), note: 'one of the orange ones, from the mill shop', bought: false, listed: true },
      { item: 'i-2', plants: tomato, note: '', bought: true, listed: false },
    ],
    notes: [
      { entry: 'e-n1', text: 'The tomatoes by the glass lean over; turned the tray.', at: `${day(-2)}T18:05:00`, about: { page: 'tray', id: 't-k7', name: 'K7', plants: [tomato] } },
      { entry: 'e-n2', text: 'Fewer tomatoes next year.', at: `${day(-200)}T20:15:00`, about: null },
    ],
    more: many ? ['trays', 'sowings'] : [],
  };
}
