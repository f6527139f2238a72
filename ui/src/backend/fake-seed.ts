import * as data from './fake-data';
import type { ImportForm, ImportView, PacketForm, PacketRow, PacketView, SeedJob, SeedView, StockRow, TestView } from './generated/types';

/* The seed box of the made-up garden. */

const { say, n, day, on } = data;
const testing = 'p-aub';

function row(page: data.PacketPage, rest: Partial<PacketRow> = {}): PacketRow {
  const { described, line } = page;
  return {
    line,
    saved: described.harvested_year !== null,
    worth: line.germination ? (line.germination[0] + line.germination[1]) / 2 : null,
    storage: described.storage,
    treated: described.treated,
    f1: described.f1,
    testing: line.packet === testing,
    to_test: line.packet === 'p-pepper',
    retired: false,
    source: described.source,
    ...rest,
  };
}

const longTexts = {
  source: 'The seed shelf of the allotment association by the old gravel works',
  price: '12.50 for two, posted',
  note: 'Sown too thickly the year before last; half of it went to the school. Keeps its colour when it is bottled.',
};

const lengthened = (of: PacketRow): PacketRow => ({
  ...of,
  source: longTexts.source,
  line: { ...of.line, variety: `${of.line.variety} of the Long Northern Border, Second Early Improved Selection` },
});

const rows = data.packets.map((page) => row(page));
const past = data.packets
  .slice(0, 1)
  .map((page) => row({ ...page, line: { ...page.line, packet: 'p-old', variety: 'Used Up', germination: null } }, { retired: true, worth: null }));

const stock = (of: PacketRow, index: number): StockRow => ({
  row: of,
  outlook: data.packets[index]?.outlook ?? null,
  advice: say(index === 2 ? 'stock-test' : 'stock-good'),
});

/** Many: so many more packets, for the scene of hundreds. */
export function seed(scene: 'bare' | 'usual' | 'one' | 'many' | 'long'): SeedView {
  const shown = scene === 'one' ? rows.slice(0, 1) : rows;
  const more = Array.from({ length: 500 }, (_, i) => {
    const of = rows[i % rows.length] as PacketRow;
    return { ...of, line: { ...of.line, packet: `${of.line.packet}-${i}`, variety: `${of.line.variety} ${i + 1}` } };
  });
  const long = rows.map(lengthened);
  const packets = scene === 'bare' ? [] : scene === 'many' ? [...rows, ...more, ...past] : scene === 'long' ? long : scene === 'one' ? shown : [...shown, ...past];
  const bare = scene === 'bare';
  const lines = packets.slice(0, 3).map((of) => of.line);
  return {
    packets,
    crops: data.crops,
    sow_now: lines.map((line, i) => ({ line, say: say(i === 2 ? 'now-late' : 'now-until', { last: on(9 + 10 * i) }), last: day(9 + 10 * i) })),
    season_known: !bare,
    stocktake: { since: '2025-12-01', left: bare || scene === 'one' ? [] : packets.slice(1, 5).map(stock), done: bare ? 0 : 3 },
    to_buy: {
      items: bare
        ? []
        : [
            { item: 'i-1', crop: data.crop('carrot'), variety: 'Long Orange', note: '2 packets', bought: false },
            { item: 'i-2', crop: data.crop('onion'), variety: 'Store Well', note: '', bought: true },
          ],
      suggested: bare
        ? []
        : [
            { crop: data.crop('parsnip'), variety: '', why: say('buy-out', { day: on(-40) }) },
            { crop: data.crop('eggplant'), variety: 'Dusk', why: say('buy-doubtful') },
            { crop: data.crop('lettuce'), variety: 'Curled Butter', why: say('buy-short', { left: n(9), sown: n(60) }) },
          ],
    },
  };
}

const running: TestView = {
  test: 'g-1',
  started: day(-8),
  seeds: 20,
  sprouted: 6,
  counts: [
    { on: day(-3), sprouted: 2 },
    { on: day(-1), sprouted: 6 },
  ],
  looks: [day(-1), day(6)],
  closed: false,
  says: say('test-so-far', { sprouted: n(6), seeds: n(20), day: on(-1) }),
};
const closed: TestView = {
  test: 'g-0',
  started: day(-400),
  seeds: 20,
  sprouted: 13,
  counts: [
    { on: day(-394), sprouted: 7 },
    { on: day(-386), sprouted: 13 },
  ],
  looks: [day(-393), day(-386)],
  closed: true,
  says: say('test-closed-at', { sprouted: n(13), seeds: n(20), low: { as: 'share', value: 0.41 }, high: { as: 'share', value: 0.85 } }),
};

export const seedJobs = (): SeedJob[] => [
  {
    job: data.job('count_the_test', say('why-count-the-test', { crop: data.word('crop-eggplant'), variety: data.variety('Dusk'), seeds: n(20), days: n(7) }), null, false, 6),
    test: { test: 'g-1', packet: testing, seeds: 20 },
    plan: null,
  },
];

export function packet(id: string, long: boolean): PacketView | null {
  const page = data.packets.find((it) => it.line.packet === id);
  if (!page) return null;
  const tested = id === testing;
  return {
    row: long ? lengthened(row(page)) : row(page),
    outlook: page.outlook,
    own: page.own,
    stated: page.described.stated_days ? say('stated-pace-slower', { crop: data.word('crop-tomato'), share: { as: 'share', value: 0.46 } }) : null,
    season: page.season,
    tested: tested ? say('outlook-tested', { day: on(-386), sprouted: n(13), seeds: n(20) }) : null,
    cautions: page.described.treated ? [say('fake-caution-treated-seed')] : [],
    saving: page.described.f1 ? [say('saving-not-f1')] : [],
    described: long ? { ...page.described, ...longTexts } : page.described,
    sowings: Array.from({ length: page.sowings }, (_, i) => ({
      plants: data.sowing(`s-${id}-${i}`), tray: 't-k7', code: 'K7', sown: day(-20 - 300 * i), seeds: i === 1 ? null : 12, up: 9, living: i === 0,
    })),
    tests: tested ? [running, closed] : [],
    jobs: [],
    timeline: [
      {
        entry: `e-${id}`, act: `a-${id}`, at: `${day(-30)}T10:00:00`,
        say: say('line-packet-described', { crop: data.word(`crop-${page.line.crop.key.replace('_', '-')}`), variety: data.variety(page.line.variety) }),
        hand: '', withdrawn: false, corrected: false, unknown: false, was: null, amended: null, fix: null, photo: null,
      },
    ],
    crops: data.crops,
  };
}

const fields = ['crop', 'variety', 'packed', 'harvested', 'sow_by', 'stated_germination', 'stated_days', 'stated_at_c', 'seeds', 'storage', 'treated', 'f1', 'source', 'price', 'note', 'in_use'];

/** What a made-up table would bring. */
export function table(form: ImportForm, long: boolean): ImportView {
  const guessed = ['crop', 'variety', 'packed', '', 'seeds'];
  const names = ['Plant', 'Variety', 'Year', 'Shelf', 'Seeds'];
  const samples = ['Tomato', long ? 'Amber Lantern of the Long Northern Border, Second Early Improved' : 'Amber Lantern', '2025', '3', '30'];
  const packet = (key: string, variety: string): PacketForm => ({
    crop: key, variety, packed_year: 2025, harvested_year: null, stated_germination: null, stated_days: null, seeds: 30, storage: 'cool_cupboard',
    treated: false, source: '', note: '', sow_by: null, f1: false, saved_from: null, price: '',
  });
  return {
    fields,
    columns: names.map((name, i) => ({ name, sample: samples[i] ?? '', field: (form.columns.length > 0 ? form.columns : guessed)[i] ?? '' })),
    packets: form.duplicates ? 3 : 2,
    duplicates: 1,
    first: [
      { line: 2, packet: packet('tomato', samples[1] ?? ''), retired: false, duplicate: true },
      { line: 3, packet: packet('leek', 'Stout Blue'), retired: false, duplicate: false },
      { line: 5, packet: packet('Scorzonera', ''), retired: true, duplicate: false },
    ],
    bad_lines: 2,
    bad: [
      { line: 4, what: { code: 'no_crop', say: say('import-line-no-crop') } },
      { line: 6, what: { code: 'no_year', say: say('import-line-no-year', { text: data.text('last spring') }) } },
    ],
  };
}
