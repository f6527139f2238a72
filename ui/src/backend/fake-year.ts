import { say } from './fake-data';
import type { Arg, Group, ResultsAsked, ResultsView } from './generated/types';

const text = (value: string): Arg => ({ as: 'text', value });
const name = (name: Arg) => say('results-name', { name, variety: text(''), year: text('') });

function group(key: string, named: Arg, up: number, seeds: number, rest: Partial<Group> = {}): Group {
  const share = up / seeds;
  const reach = Math.sqrt((share * (1 - share)) / seeds) * 2;
  return {
    of: { key, name: name(named) },
    sowings: 4,
    seeds,
    up,
    share,
    low: Math.max(0, share - reach),
    high: Math.min(1, share + reach),
    half_days: 8.4,
    spread_days: 1.6,
    lost: [],
    small: seeds < 30,
    ...rest,
  };
}

/** What canned years gave. */
export function results(asked: ResultsAsked, bare: boolean): ResultsView {
  const places = [
    group('p1', text('Propagator'), 168, 200, { lost: [{ cause: { as: 'word', value: 'cause-damped-off' }, number: 7 }] }),
    group('p2', text('The very long windowsill behind the kitchen table'), 61, 100, { half_days: 13.2, spread_days: 3.4 }),
    group('p3', text('Shed'), 3, 12, { sowings: 1, half_days: null, spread_days: null }),
  ];
  const compared = say('results-almost-surely', {
    better: text('Propagator'),
    better_variety: text(''),
    better_year: text(''),
    worse: text('Windowsill'),
    worse_variety: text(''),
    worse_year: text(''),
    share: { as: 'share', value: 0.84 },
    other: { as: 'share', value: 0.61 },
    small: { as: 'number', value: 0 },
  });
  const tomato: Arg = { as: 'word', value: 'crop-tomato' };
  return {
    years: bare ? [] : ['2026', '2025'].map((year) => ({ key: year, name: name(text(year)) })),
    crops: [{ key: 'tomato', name: name(tomato) }],
    groups: bare ? [] : places,
    compared: asked.pair ? compared : null,
    left_out: bare ? 0 : 2,
    numbers: bare ? [] : [{ crop: { key: 'tomato', name: name(tomato) }, growing: 24, ready: 12, reserved: 4, free: 8, planted_out: 40, sold: 6, given_away: 2 }],
  };
}
