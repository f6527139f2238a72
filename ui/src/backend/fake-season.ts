import { day, n, now, places, say } from './fake-data';
import type { FrostCsvOptions, FrostPreview, JobView, PlaceRound, SitterSheet } from './generated/types';

export function frostPreview(options: FrostCsvOptions): FrostPreview {
  return {
    columns: ['Date', 'Highest', 'Lowest'],
    read_with: { ...options, day_column: options.day_column ?? 0, low_column: options.low_column ?? 2, day_order: options.day_order ?? 'ymd' },
    days: 3650,
    missing: 2,
    span: ['2015-01-01', '2024-12-31'],
    bad: [{ line: 17, what: { code: 'no_day', say: say('frost-line-no-day', { text: { as: 'text', value: '2015-02-30' } }) } }],
    bad_lines: 1,
    spring: {
      years: 9,
      full_years: 10,
      dates: ['05-24', '05-10', '04-27'],
      say: say('frost-years-spring', { years: n(9), full: n(10) }),
    },
    autumn: { years: 3, full_years: 3, dates: null, say: say('frost-too-few-autumn', { years: n(3) }) },
    odds: {
      threshold_c: options.threshold_c,
      first_day: '2015-01-01',
      last_day: '2024-12-31',
      spring: { mean_day: -66, deviation_days: 10, years: 9, full_years: 10 },
      autumn: null,
    },
  };
}

export const sitterSheet = (bare: boolean): SitterSheet => ({
  at: now,
  from: bare ? null : day(3),
  to: bare ? null : day(10),
  general: bare ? [] : [say('sitter-water'), say('sitter-no-more'), say('caution-compost-dust')],
  places: bare
    ? []
    : [
        {
          place: places.prop,
          lines: [say('sitter-feel', { days: n(2), trays: n(2) })],
          trays: [
            {
              tray: 't-k7',
              code: 'K7',
              what: say('sitter-what', { crops: { as: 'word', value: 'crop-tomato' } }),
              lines: [
                say('sitter-up-move-uncover', {
                  crops: { as: 'word', value: 'crop-tomato' },
                  first: { as: 'day', value: day(4) },
                  to: { as: 'text', value: places.sill.name },
                }),
              ],
            },
          ],
        },
        {
          place: places.frame,
          lines: [say('sitter-lid'), say('sitter-frost', { trays: { as: 'text', value: 'H1' } })],
          trays: [{ tray: 't-h1', code: 'H1', what: say('sitter-what', { crops: { as: 'text', value: 'pelargonium' } }), lines: [] }],
        },
      ],
});

const job = (kind: JobView['kind'], why: JobView['why'], key: string): JobView => ({
  key, kind, plants: null, today: true, due: day(0), why, suggested: null, verdict: null,
});

/** A frosty evening, heat that is off, days away ahead, many trays to feel: what the rounds of the season may show. */
export function seasonRound(round: PlaceRound[]): PlaceRound[] {
  const [warm, sill, glass] = round;
  if (!warm || !sill || !glass) return round;
  const text = (value: string) => ({ as: 'text', value }) as const;
  glass.low_c = -2;
  glass.place = places.frame;
  glass.jobs.push(
    job('before_you_go', say('why-before-you-go', { from: { as: 'day', value: day(1) }, to: { as: 'day', value: day(8) }, open: n(0), trays: n(3) }), 'go'),
    job('open_the_lid', say('why-open-the-lid', { highest: { as: 'celsius', value: 29 }, place: text(places.frame.name), crops: text('onion') }), 'lid'),
  );
  for (const card of glass.cards) {
    card.jobs.unshift(
      job('frost_tonight', say('why-frost-bring-in', { low: { as: 'celsius', value: -2 }, place: text(places.frame.name), crops: text('celery'), to: text(places.sill.name) }), `frost-${card.tray}`),
      job('bring_in', say('why-bring-in', { crops: text('celery') }), `in-${card.tray}`),
    );
  }
  warm.heat_off = true;
  warm.heat_off_since = `${day(-1)}T21:00:00`;
  warm.together = say('why-feel-together', { trays: n(2), smallest: text('K2'), warmest: text('K7'), edge: text('K9') });
  warm.cards = warm.cards.map((card) => ({ ...card, jobs: card.jobs.filter((j) => j.kind === 'feel_the_compost' || card.tray !== 't-k2') }));
  return [glass, warm];
}
