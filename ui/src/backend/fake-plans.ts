import { say } from './fake-data';
import type { Arg, FrostPoint, PlanView, SeedJob, WindowRow, YearView } from './generated/types';

const day = (value: string): Arg => ({ as: 'day', value });
const number = (value: number): Arg => ({ as: 'number', value });
const text = (value: string): Arg => ({ as: 'text', value });
const crop = (key: string): Arg => ({ as: 'word', value: `crop-${key.replaceAll('_', '-')}` });

/** A line of frost that falls to 0 about 10 May and rises again in October. */
function frost(): FrostPoint[] {
  const points: FrostPoint[] = [];
  for (let i = 0; i < 122; i += 1) {
    const at = new Date(Date.UTC(2026, 2, 1 + i * 3));
    const days = (at.getTime() - Date.UTC(2026, 4, 10)) / 86_400_000;
    const chance = days < 70 ? 1 / (1 + Math.exp(days / 6)) : 1 / (1 + Math.exp((158 - days) / 6));
    points.push({ day: at.toISOString().slice(0, 10), chance });
  }
  return points;
}

function row(key: string, sow: [string, string], out: [string, string] | null, last: string | null): WindowRow {
  const season = { sow, set_out: out, last_useful: last };
  const says = [say('season-sow-now', { crop: crop(key), from: day(sow[0]), to: day(sow[1]) })];
  if (out) says.push(say('season-set-out', { from: day(out[0]), to: day(out[1]) }));
  return { crop: { key, known: true }, seasons: [season], says };
}

const reckoning = { longest: number(51), up: number(8), place: text('Propagator'), seeds: number(34), plants: number(28) };

const plans: PlanView[] = [
  {
    plan: 'plan-sale',
    crop: { key: 'cabbage', known: true },
    form: { crop: 'cabbage', variety: 'Stoutgate', packet: null, wanted: 24, rhythm: { as: 'sale', day: '2026-06-20', over_percent: 15 }, raise_weeks: null },
    say: say('plan-sale', { wanted: number(24), raise: number(28), weeks: number(0), from: day('2026-06-20'), day: day('2026-06-20') }),
    stands: null,
    next: say('plan-next-by', { ...reckoning, from: day('2026-05-02'), last: day('2026-05-16') }),
    trouble: null,
    sow: { plan: 'plan-sale', packet: 'p-tomato', wanted: 28, from: '2026-05-02' },
  },
  {
    plan: 'plan-again',
    crop: { key: 'spinach', known: true },
    form: { crop: 'spinach', variety: '', packet: null, wanted: 12, rhythm: { as: 'every', weeks: 3, from: '2026-04-01', to: '2026-07-20' }, raise_weeks: null },
    say: say('plan-every', { wanted: number(12), raise: number(12), weeks: number(3), from: day('2026-04-01'), day: day('2026-07-20') }),
    stands: say('plan-stands-each', { there: number(9), gone: number(20), coming: number(3), wanted: number(12), sowings: number(2) }),
    next: say('plan-next-now', { ...reckoning, from: day('2026-04-20'), last: day('2026-07-20') }),
    trouble: null,
    sow: { plan: 'plan-again', packet: 'p-let', wanted: 12, from: '2026-04-20' },
  },
  {
    plan: 'plan-late',
    crop: { key: 'celery', known: true },
    form: { crop: 'celery', variety: '', packet: null, wanted: 30, rhythm: { as: 'by', day: '2026-05-20' }, raise_weeks: null },
    say: say('plan-by', { wanted: number(30), raise: number(30), weeks: number(0), from: day('2026-05-20'), day: day('2026-05-20') }),
    stands: say('plan-stands', { there: number(11), gone: number(0), coming: number(0), wanted: number(30), sowings: number(1) }),
    next: null,
    trouble: say('plan-too-late', { last: day('2026-03-21'), plants: number(19) }),
    sow: null,
  },
];

/** A canned year; `bare`: nothing in it, and no frost dates. */
export function year(bare: boolean): YearView {
  const crops = ['tomato', 'lettuce', 'cabbage', 'spinach', 'celery'];
  if (bare) return { today: '2026-04-20', windows: null, plans: [], packets: [], crops, reservations: [] };
  return {
    today: '2026-04-20',
    windows: {
      from: '2026-03-01',
      to: '2027-02-28',
      frost: frost(),
      by_record: true,
      say: say('windows-frost-record', { last: day('2026-05-10'), first: day('2026-10-15') }),
      rows: [
        row('celery', ['2026-02-20', '2026-03-21'], ['2026-05-10', '2026-05-31'], '2026-05-20'),
        row('tomato', ['2026-03-22', '2026-04-19'], ['2026-05-17', '2026-05-31'], '2026-05-26'),
        row('cabbage', ['2026-03-25', '2026-05-06'], ['2026-04-29', '2026-06-10'], '2026-06-28'),
        row('lettuce', ['2026-03-15', '2026-07-10'], ['2026-04-12', '2026-08-01'], '2026-08-20'),
        row('spinach', ['2026-04-01', '2026-05-10'], null, '2026-09-05'),
      ],
      without: [{ key: 'Phacelia', known: false }],
    },
    plans,
    packets: [
      { crop: 'cabbage', of: { key: 'p-cab', name: say('plan-packet', { crop: crop('cabbage'), variety: { as: 'variety', value: 'Stoutgate' }, year: text('2025') }) } },
    ],
    crops,
    reservations: [
      { reservation: 'r-mk', crop: { key: 'tomato', known: true }, variety: 'Lantern Lane', tray: null, remaining: 4, ready: 4, note: 'MK' },
      { reservation: 'r-jo', crop: { key: 'pepper', known: true }, variety: '', tray: 'K7', remaining: 6, ready: 0, note: '' },
    ],
  };
}

/** A plan to be sown for, in the round. */
export const planJob = (): SeedJob => ({
  job: {
    key: 'sow/plan:again/e1',
    kind: 'sow',
    plants: null,
    today: false,
    due: '2026-04-20',
    why: say('why-sow-every', { crop: crop('spinach'), variety: text(''), weeks: number(3), seeds: number(17), plants: number(12) }),
    suggested: null,
    verdict: null,
  },
  test: null,
  plan: { plan: 'plan-again', packet: 'p-let', wanted: 12, from: '2026-04-20' },
});
