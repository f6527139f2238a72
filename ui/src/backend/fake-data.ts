import { season } from './fake-seasons';
import type {
  Arg,
  BandPoint,
  Choice,
  CropName,
  DeviceForm,
  ForecastView,
  JobKind,
  JobView,
  NumbersView,
  PacketForm,
  PacketLine,
  PlaceForm,
  PlaceHead,
  PlantsLine,
  PlantsRef,
  Say,
  ReasonView,
  SeasonView,
  SettingsView,
  Stage,
  TimelineLine,
  TrayCard,
  TrayLine,
  TraysView,
  TrayView,
  VerdictView,
} from './generated/types';

/* A made-up garden on Thursday 16 April 2026: every job, every stage. */

export const now = '2026-04-16T08:05:00';
export const day = (d: number) => new Date(Date.UTC(2026, 3, 16 + d)).toISOString().slice(0, 10);
export const at = (d: number, time = '08:10') => `${day(d)}T${time}:00`;

export const say = (key: string, args: Record<string, Arg> = {}): Say => ({ key, args });
export const n = (value: number): Arg => ({ as: 'number', value });
export const c = (value: number): Arg => ({ as: 'celsius', value });
export const text = (value: string): Arg => ({ as: 'text', value });
export const variety = (value: string): Arg => ({ as: 'variety', value });
export const on = (d: number): Arg => ({ as: 'day', value: day(d) });
export const word = (value: string): Arg => ({ as: 'word', value });

const place = (id: string, name: string, kind: string, light: string): PlaceHead => ({ id, name, kind, light });
export const places = {
  prop: place('prop', 'Propagator under the stairs', 'heated_propagator', 'dark'),
  sill: place('sill', 'Kitchen sill', 'windowsill', 'bright'),
  glass: place('glass', 'Long greenhouse', 'greenhouse', 'bright'),
  shed: place('shed', 'Shed', 'shed', 'dark'),
  frame: place('frame', 'Cold frame by the wall', 'cold_frame', 'bright'),
};

export const crop = (key: string, known = true): CropName => ({ key, known });
const none: NumbersView = { up: 0, gone_on: 0, thinned: 0, lost: 0, planted_out: 0, sold: 0, given_away: 0, there: 0 };
export const numbers = (part: Partial<NumbersView>): NumbersView => ({ ...none, ...part });
export const range = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => from + i);

function line(
  plants: PlantsRef,
  name: CropName,
  variety: string,
  stage: Stage,
  dayNumber: number,
  rest: Partial<PlantsLine> = {},
): PlantsLine {
  return { plants, crop: name, variety, packet: null, stage, day: dayNumber, seeds: null, numbers: none, progress: null, cells: [], ...rest };
}
export const sowing = (id: string): PlantsRef => ({ type: 'sowing', id });
const batch = (id: string): PlantsRef => ({ type: 'batch', id });

export const lines = {
  tomato: line(sowing('s-tomato'), crop('tomato'), 'Amber Lantern', 'sown', 4, { packet: 'p-tomato', seeds: 12, progress: 0.62, cells: range(0, 12) }),
  pepper: line(sowing('s-pepper'), crop('pepper'), 'Little Bell', 'coming_up', 9, {
    seeds: 12, numbers: numbers({ up: 5, there: 5 }), cells: range(12, 24),
  }),
  aubergine: line(sowing('s-aub'), crop('eggplant'), 'Dusk', 'sown', 24, { packet: 'p-aub', seeds: 6, progress: 1.7, cells: range(0, 6) }),
  lettuce: line(sowing('s-let'), crop('lettuce'), 'Curled Butter', 'up', 14, {
    seeds: null, numbers: numbers({ up: 64, thinned: 12, lost: 4, there: 48 }), cells: range(0, 24),
  }),
  cabbage: line(sowing('s-cab'), crop('cabbage'), 'Round Early', 'up', 19, {
    seeds: 40, numbers: numbers({ up: 33, lost: 2, gone_on: 12, there: 19 }), cells: range(0, 40),
  }),
  celery: line(batch('b-cel'), crop('celery'), '', 'pricked_out', 26, { numbers: numbers({ up: 24, there: 24 }), cells: range(0, 24) }),
  pelargonium: line(batch('b-pel'), crop('pelargonium', false), 'Window Red', 'hardening_off', 48, {
    numbers: numbers({ up: 9, lost: 1, there: 8 }), cells: range(0, 9),
  }),
  onion: line(batch('b-oni'), crop('onion'), 'Store Well', 'ready', 60, {
    numbers: numbers({ up: 84, sold: 20, given_away: 4, there: 60 }), cells: range(0, 84),
  }),
  parsley: line(sowing('s-par'), crop('parsley'), '', 'sown', 12, { progress: 0.4 }),
};

const choice = (kind: Choice['kind'], told: Say, rest: Partial<Choice> = {}): Choice => ({
  kind, say: told, place: null, seeds: null, wanted: null, packet: null, until: null, gives: null, finds: [], ...rest,
});
const verdict: VerdictView = {
  kind: 'nothing_more',
  say: say('fake-verdict', { any: n(1), up: n(0), wanted: n(5) }),
  p_any_more: 0.08,
  expected: 0.2,
  p_reach: 0.01,
  until: null,
  choices: [
    choice('dig_up', say('fake-choice-dig-up'), {
      gives: say('fake-gives-dig-up'),
      finds: [
        { firm: 2, soft: 0, say: say('fake-find-firm'), gives: say('fake-find-gives', { any: n(7) }) },
        { firm: 1, soft: 1, say: say('fake-find-one'), gives: say('fake-find-gives', { any: n(6) }) },
        { firm: 0, soft: 2, say: say('fake-find-soft'), gives: say('fake-find-gives', { any: n(1) }) },
      ],
    }),
    choice('sow', say('fake-choice-sow', { seeds: n(9) }), { seeds: 9, wanted: 5, gives: say('fake-gives-sow', { last: on(40) }) }),
    choice('sow_other', say('fake-choice-sow-better'), { seeds: 7, wanted: 5, packet: 'p-pepper', gives: say('fake-gives-sow', { last: on(40) }) }),
    choice('sow_other', say('fake-choice-sow-other'), { wanted: 5 }),
    choice('move', say('fake-choice-move', { place: text('Kitchen sill') }), { place: 'sill', gives: say('fake-gives-move') }),
    choice('wait', say('fake-choice-wait', { until: on(3) }), { until: day(3), gives: say('fake-gives-wait') }),
    choice('give_up', say('fake-choice-give-up'), { gives: say('fake-gives-give-up') }),
  ],
};
const reasons: ReasonView[] = [
  {
    say: say('fake-reason-old', { seedlings: n(3) }),
    facts: [say('fake-fact-old', { year: text('2019') })],
    remedy: say('fake-remedy-old'),
    seedlings: 3,
    likely: true,
  },
  {
    say: say('fake-reason-dry', { seedlings: n(1) }),
    facts: [say('fake-fact-dry', { felt: n(2) }), say('fake-fact-gap', { days: n(6) })],
    remedy: say('fake-remedy-dry'),
    seedlings: 1,
    likely: false,
  },
];

let keys = 0;
export function job(kind: JobKind, why: Say, plants: PlantsRef | null = null, today = false, suggested: number | null = null): JobView {
  keys += 1;
  return { key: `job-${keys}-${kind}`, kind, plants, today, due: day(0), why, suggested, verdict: kind === 'it_is_late' ? verdict : null };
}
const feelJob = (temperature: number, ago: number) =>
  job('feel_the_compost', say('fake-why-feel', { day: on(-ago), temperature: c(temperature), days: n(2) }));

const card = (tray: string, code: string, container: string, plants: PlantsLine[], jobs: JobView[], covered = false): TrayCard => ({
  tray, code, container, covered, plants, jobs,
});

/** The same in a tray of its own. */
export function another(card: TrayCard, number: number): TrayCard {
  const own = <T extends PlantsRef | null>(plants: T): T => plants && { ...plants, id: `${plants.id}-${number}` };
  return {
    ...card,
    tray: `${card.tray}-${number}`,
    code: `${card.code}${number}`,
    plants: card.plants.map((it) => ({ ...it, plants: own(it.plants) })),
    jobs: card.jobs.map((it) => ({ ...it, key: `${it.key}-${number}`, plants: own(it.plants) })),
  };
}

export function round() {
  keys = 0;
  return [
    {
      place: places.prop,
      reading: { at: at(-1), days_ago: 1, range: { min_c: 19.5, max_c: 24 }, of: 'compost' },
      heat_off: false,
      heat_off_since: null,
      low_c: null,
      together: null,
      jobs: [],
      cards: [
        card('t-k7', 'K7', 'cells', [lines.tomato, lines.pepper], [
          job('into_the_light', say('fake-why-light', { up: n(5), place: text('propagator'), light: word('light-dark') }), lines.pepper.plants, true),
          job('cover_off', say('fake-why-cover', { up: n(5) }), null, true),
          job('look_for_seedlings', say('fake-why-look', { share: { as: 'share', value: 0.62 }, day: on(0) }), lines.tomato.plants, false, 0),
          feelJob(22, 2),
        ], true),
        card('t-k2', 'K2', 'pots', [lines.aubergine], [
          job('it_is_late', say('fake-why-late', { day: on(-6), up: n(0), seeds: n(6) }), lines.aubergine.plants, false, 0),
          feelJob(22, 2),
        ]),
      ],
      quiet: 1,
      to_feel: ['t-k7', 't-k2'],
    },
    {
      place: places.sill,
      reading: { at: at(-5), days_ago: 5, range: { min_c: 16, max_c: 16 }, of: 'air' },
      heat_off: false,
      heat_off_since: null,
      low_c: null,
      together: null,
      jobs: [job('read_the_thermometer', say('fake-why-read', { days: n(5) }))],
      cards: [
        card('t-k4', 'K4', 'cells', [lines.lettuce], [job('thin', say('fake-why-thin', { up: n(48), cells: n(24) }), lines.lettuce.plants, false, 24)]),
        card('t-k5', 'K5', 'cells', [lines.cabbage], [
          job('prick_out', say('fake-why-prick', { days: n(12), up: n(19) }), lines.cabbage.plants),
        ]),
      ],
      quiet: 0,
      to_feel: [],
    },
    {
      place: places.glass,
      reading: null,
      heat_off: true,
      heat_off_since: null,
      low_c: null,
      together: null,
      jobs: [],
      cards: [
        card('t-h3', 'H3', 'cells', [lines.celery], [job('pot_on', say('fake-why-pot', { days: n(26) }), lines.celery.plants)]),
        card('t-h1', 'H1', 'pots', [lines.pelargonium], [
          job('harden_off', say('fake-why-harden', { done: n(4) }), null, true),
        ]),
        card('t-g9', 'G9', 'cells', [lines.onion], [
          job('plant_out', say('fake-why-plant', { done: n(10), day: on(-2) }), lines.onion.plants, false, 60),
        ]),
      ],
      quiet: 3,
      to_feel: [],
    },
  ];
}

const trayLine = (tray: string, code: string, container: string, plants: PlantsLine[], due: number, free = 0): TrayLine => ({
  tray, code, container, plants, due, free_cells: free, emptied: null,
});

export function trays(): TraysView {
  return {
    places: [
      { place: places.prop, trays: [trayLine('t-k2', 'K2', 'pots', [lines.aubergine], 2), trayLine('t-k7', 'K7', 'cells', [lines.tomato, lines.pepper], 4)] },
      { place: places.sill, trays: [trayLine('t-k4', 'K4', 'cells', [lines.lettuce], 1), trayLine('t-k5', 'K5', 'cells', [lines.cabbage], 1)] },
      { place: places.glass, trays: [trayLine('t-h3', 'H3', 'cells', [lines.celery], 1), trayLine('t-g9', 'G9', 'cells', [lines.onion], 1)] },
    ],
    nowhere: [trayLine('t-k9', 'K9', 'damp_paper', [lines.parsley], 0)],
    set_aside: [trayLine('t-a4', 'A4', 'open_tray', [{ ...lines.lettuce, plants: sowing('s-old'), day: 140 }], 0, 2)],
    past: [
      { ...trayLine('t-c1', 'C1', 'cells', [line(sowing('s-c1'), crop('tomato'), 'Amber Lantern', 'gone', 380, { numbers: numbers({ up: 20, planted_out: 18, lost: 2 }) })], 0, 24), emptied: day(-320) },
      { ...trayLine('t-c2', 'C2', 'pot', [line(sowing('s-c2'), crop('parsnip'), '', 'nothing_came_up', 370)], 0, 1), emptied: day(-330) },
    ],
  };
}

function band(days: number, half: number, seeds: number): BandPoint[] {
  return range(0, days + 1).map((d) => {
    const share = 1 / (1 + Math.exp(-(d - half) * 0.9));
    const early = 1 / (1 + Math.exp(-(d - half - 1.6) * 0.9));
    const late = 1 / (1 + Math.exp(-(d - half + 1.6) * 0.9));
    return { day: day(d - 9), low: seeds * 0.6 * early, mid: seeds * 0.78 * share, high: seeds * 0.95 * late };
  });
}

const forecast = (half: number, seeds: number, counts: [number, number][]): ForecastView => ({
  due: { first: day(half - 12), d10: day(half - 11), d50: day(half - 9), d90: day(half - 6) },
  say: say('fake-forecast', { first: on(half - 11), half: on(half - 9), most: on(half - 6), low: n(Math.round(seeds * 0.6)), high: n(Math.round(seeds * 0.95)) }),
  progress: 0.62,
  expected: [seeds * 0.6, seeds * 0.95],
  band: band(18, half, seeds),
  counts: counts.map(([d, up]) => ({ at: at(d), up })),
  today: day(0),
});

export function tray(id: string): TrayView | null {
  const all = round().flatMap((p) => p.cards.map((held) => ({ held, place: p.place })));
  const found = all.find((a) => a.held.tray === id);
  if (!found) return null;
  const { held } = found;
  const shape: Record<string, [number, number]> = { 't-k7': [6, 4], 't-k4': [6, 4], 't-k5': [8, 5], 't-h3': [6, 4], 't-g9': [12, 7], 't-h1': [3, 3], 't-k2': [1, 6] };
  const [rows, columns] = shape[id] ?? [1, 1];
  return {
    tray: id,
    code: held.code,
    container: held.container,
    rows,
    columns,
    compost: 'seed',
    covered: held.covered,
    place: found.place,
    since: at(-9, '17:30'),
    emptied: false,
    last_felt: say('fake-felt-and-watered', { feel: word('feel-dry'), water: word('watering-below'), at: { as: 'moment', value: at(-2) } }),
    plants: held.plants.map((plants, i) => ({
      line: plants,
      began: at(-plants.day, '17:30'),
      living: true,
      relatives:
        plants.numbers.gone_on > 0 || plants.plants.type === 'batch'
          ? [{ direction: plants.plants.type === 'batch' ? 'from' : 'to', plants: batch('b-x'), tray: 't-h3', code: 'H3', number: 12, step: 'pricked_out', at: at(-3) }]
          : [],
      depth_mm: plants.plants.type === 'sowing' ? 6 : null,
      treatment: [],
      season: null,
      wanted: plants.plants.type === 'sowing' ? 8 : null,
      forecast:
        plants.plants.type === 'sowing' && plants.seeds !== null
          ? forecast(i === 0 ? 13 : 9, plants.seeds, plants.numbers.up > 0 ? [[-3, 1], [-1, 3], [0, plants.numbers.up]] : [[-1, 0]])
          : null,
      // The dead tray has its verdict with the job; the slow one on its page.
      verdict: ['eggplant', 'tomato'].includes(plants.crop.key) ? verdict : null,
      reasons: plants.crop.key === 'eggplant' ? reasons : [],
      explained: plants.crop.key === 'eggplant' ? { causes: ['eaten', 'too_cold'], text: 'Mice, I think: two cells were scratched open.', at: at(-1) } : null,
      learnt: plants.crop.key === 'tomato' ? [say('fake-outlook-own', { sowings: n(2), up: n(14), of: n(18) }), say('fake-learnt-pace')] : [],
      seeds_left: plants.seeds === null ? null : plants.seeds - plants.numbers.up,
      caution: plants.crop.key === 'tomato' ? say('fake-caution-poisonous-leaves') : null,
    })),
    jobs: held.jobs,
    problems: id === 't-g9' ? [{ code: 'cells_twice', say: say('fake-problem-cells-twice') }] : [],
    timeline,
    earlier: id === 't-k7' ? [{ tray: 't-c1', code: 'K7', place: 'Glasshouse', plants: [{ crop: crop('tomato'), variety: 'Amber Lantern' }], from: day(-390), to: day(-320) }] : [],
  };
}

const lineOf = (entry: string, when: string, told: Say, rest: Partial<TimelineLine> = {}): TimelineLine => ({
  entry, act: `act-of-${entry}`, at: when, say: told, hand: '', withdrawn: false, corrected: false, unknown: false, was: null, amended: null, fix: null, photo: null, ...rest,
});
const labelled = text('K7');
const pepper = { tray: labelled, crop: word('crop-pepper'), variety: variety('Little Bell') };
export const timeline: TimelineLine[] = [
  lineOf('e5', at(0, '09:10'), say('fake-line-noted', { text: text('The lid drips on the left side; wipe it in the morning.') }), {
    fix: { of: 'noted', text: 'The lid drips on the left side; wipe it in the morning.' },
  }),
  lineOf('e4', at(0), say('fake-line-counted', { ...pepper, number: n(5) }), { hand: 'RM', fix: { of: 'counted', up: { as: 'number', number: 5 } } }),
  lineOf('e3', at(-1, '18:20'), say('fake-line-counted', { ...pepper, number: n(50) }), {
    withdrawn: true, amended: at(-1, '18:21'), fix: { of: 'counted', up: { as: 'number', number: 50 } },
  }),
  lineOf('e2', at(-2), say('fake-line-felt-and-watered', { tray: labelled, feel: word('feel-dry'), water: word('watering-below') }), {
    corrected: true, was: { at: at(-1), say: say('fake-line-felt-and-watered', { tray: labelled, feel: word('feel-moist'), water: word('watering-rose') }) },
    amended: at(-1, '19:05'), fix: { of: 'felt', feel: 'dry', water: 'below' },
  }),
  lineOf('e1', at(-9, '17:30'), say('fake-line-sown', { ...pepper, seeds: n(12) }), {
    fix: { of: 'sown', packet: 'p-pepper', tray: 't-k7', cells: [0, 1, 2, 3, 4, 5], seeds: { as: 'exact', number: 12 }, depth_mm: 7, wanted: 8 },
  }),
  lineOf('e0', at(-9, '17:20'), say('fake-line-unknown', { kind: text('tray_weighed') }), { unknown: true }),
];

const form = (key: string, variety: string, rest: Partial<PacketForm>): PacketForm => ({
  crop: key, variety, packed_year: null, harvested_year: null, stated_germination: null, stated_days: null, seeds: null,
  storage: 'cool_cupboard', treated: false, source: '', note: '', sow_by: null, f1: false, saved_from: null, price: '', ...rest,
});

/** A packet with what is known of it. */
export interface PacketPage {
  line: PacketLine;
  outlook: Say | null;
  own: Say | null;
  season: SeasonView | null;
  sowings: number;
  described: PacketForm;
}

function page(id: string, key: string, variety: string, rest: Partial<PacketForm>, germination: [number, number] | null, sowings: number, left: number | null): PacketPage {
  const described = form(key, variety, rest);
  const known = crops.includes(key);
  const year = described.packed_year ?? described.harvested_year;
  return {
    line: { packet: id, crop: crop(key, known), variety, year, germination, seeds_left: left, source: described.source },
    outlook: germination
      ? say('fake-outlook-span', { low: n(Math.round(germination[0] * 10)), high: n(Math.round(germination[1] * 10)) })
      : null,
    own: sowings > 1 ? say('fake-outlook-own', { sowings: n(sowings), up: n(14), of: n(18) }) : null,
    season: key === 'tomato' ? season : null,
    sowings,
    described,
  };
}

export const crops = ['bean_snap', 'beet', 'cabbage', 'carrot', 'celery', 'corn_sweet', 'eggplant', 'lettuce', 'onion', 'parsley', 'parsnip', 'pepper', 'tomato'];

export const packets: PacketPage[] = [
  page('p-tomato', 'tomato', 'Amber Lantern', { packed_year: 2025, seeds: 30, stated_germination: 0.9, stated_days: { from: 8, to: 18, at: { min_c: 18, max_c: 22 } }, source: 'Swap table' }, [0.72, 0.94], 2, 18),
  page('p-pepper', 'pepper', 'Little Bell', { packed_year: 2024, storage: 'fridge_sealed' }, [0.6, 0.9], 1, null),
  page('p-aub', 'eggplant', 'Dusk', { packed_year: 2019, storage: 'warm_room' }, [0.2, 0.5], 1, 9),
  page('p-let', 'lettuce', 'Curled Butter', { harvested_year: 2025 }, [0.7, 0.9], 3, null),
  page('p-cab', 'cabbage', 'Round Early', { packed_year: 2026, treated: true, f1: true, source: 'Corner shop', price: '2.95', note: 'Sow thinly.' }, [0.7, 0.9], 1, 160),
  page('p-corn', 'corn_sweet', 'Tall Gold', { packed_year: 2026, seeds: 40 }, [0.75, 0.95], 0, 40),
  page('p-sal', 'Échinacée', 'du jardin', { harvested_year: 2024 }, null, 0, null),
];

const placeForm = (head: PlaceHead, position: number, min_c: number, max_c: number, covered: boolean): PlaceForm => ({
  id: head.id, name: head.name, kind: head.kind, usual: { min_c, max_c },
  unheated: head.kind === 'heated_propagator' ? { min_c: 14, max_c: 18 } : null,
  light: head.light, covered, position, retired: false,
});

export const device: DeviceForm = {
  language: 'system', temperature: 'celsius', length: 'mm', clock: 'h24', theme: 'system', hand: 'right',
  quiet_from: '21:00', quiet_to: '07:00', notices: true, stay: false, initials: '',
};

export const settings = (demo: boolean): SettingsView => ({
  garden: { zone: 'Europe/London', latitude: 52.3, last_frost: '05-10', first_frost: '10-12', morning: '08:00', evening: '18:00' },
  places: [
    placeForm(places.prop, 1, 20, 24, true),
    placeForm(places.sill, 2, 15, 20, false),
    placeForm(places.glass, 3, 7, 20, true),
    placeForm(places.shed, 4, 5, 11, false),
    { ...placeForm(places.frame, 5, 4, 15, true), retired: true },
  ],
  frost: null,
  away: [],
  device,
  demo,
  entries: 3127,
});

