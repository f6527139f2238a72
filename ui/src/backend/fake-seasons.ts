import type { Arg, Say, SeasonView } from './generated/types';

const say = (key: string, args: Record<string, Arg>): Say => ({ key, args });

export const season: SeasonView = {
  sow: ['2026-03-22', '2026-04-19'],
  set_out: ['2026-05-17', '2026-05-31'],
  last_useful: '2026-05-20',
  standing: 'now',
  says: [
    say('season-sow-now-until', {
      crop: { as: 'word', value: 'crop-tomato' },
      from: { as: 'day', value: '2026-03-22' },
      to: { as: 'day', value: '2026-04-19' },
      last: { as: 'day', value: '2026-05-20' },
    }),
    say('season-set-out-odds', {
      from: { as: 'day', value: '2026-05-17' },
      to: { as: 'day', value: '2026-05-31' },
      chance: { as: 'word', value: 'odds-1' },
    }),
  ],
};

