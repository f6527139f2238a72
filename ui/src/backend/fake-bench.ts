import { c, crop, day, n, on, packets, places, range, say, text } from './fake-data';
import type { BenchPlace, BenchView, Coded, EnoughAsk, EnoughView, FreeTray, PacketLine } from './generated/types';

const warn = (code: string, args = {}): Coded => ({ code, say: say(`warn-${code.replaceAll('_', '-')}`, args) });

const many: PacketLine[] = range(0, 300).map((i) => ({
  packet: `p-many-${i}`,
  crop: crop(['tomato', 'pepper', 'lettuce', 'cabbage', 'onion'][i % 5] ?? 'tomato'),
  variety: `Row ${i + 1}`,
  year: 2020 + (i % 7),
  germination: [0.5, 0.9],
  seeds_left: i,
  source: i % 2 ? 'Own seed' : '',
}));

export const longest = 'Grandmother’s Very Late Striped Climbing Paste Tomato of the Upper Valley';

/** The bench in a scene: `many` packets, `warnings` everywhere, `long` names. */
export function bench(packet: string | null, scene: string): BenchView {
  const chosen = packets.find((p) => p.line.packet === packet);
  const warned = scene === 'warnings' && chosen !== undefined;
  const known = chosen?.line.germination !== null;
  const place = (head: keyof typeof places, usual: [number, number], due: [number, number] | null, rest: Partial<BenchPlace> = {}): BenchPlace => ({
    place: places[head],
    usual: { min_c: usual[0], max_c: usual[1] },
    due: chosen && known && due ? { first: day(due[0]), d10: day(due[0]), d50: day(Math.round((due[0] + due[1]) / 2)), d90: day(due[1]) } : null,
    say: chosen && known && due ? say('bench-due', { from: n(due[0]), half: n(due[0] + 1), to: n(due[1]) }) : null,
    none_comes_up: false,
    best: false,
    warnings: [],
    ...rest,
  });
  const trays: FreeTray[] = [
    {
      tray: 't-a4', code: 'A4', container: 'cells', place: places.sill, rows: 4, columns: 3, taken: [0, 1, 2, 3],
      warnings: warned
        ? [
            warn('mixed_warmth_after', { low: c(18), high: c(21), there: { as: 'word', value: 'crop-pepper' }, there_low: c(24), there_high: c(27) }),
            warn('mixed_days', { half: on(9), there: { as: 'word', value: 'crop-pepper' }, there_half: on(18) }),
          ]
        : [],
    },
  ];
  const line = (l: PacketLine): PacketLine => (scene === 'long' ? { ...l, variety: longest, source: 'The seed swap behind the village hall' } : l);
  return {
    packets: [...packets.map((p) => line(p.line)), ...(scene === 'many' ? many : [])].slice(0, scene === 'one' ? 1 : undefined),
    places: [
      place('prop', [20, 24], [6, 9], {
        best: chosen !== undefined && known,
        warnings: warned
          ? [
              warn('alternating', { place: text(places.prop.name), night: c(20), day: c(30) }),
              warn('due_while_away', { place: text(places.prop.name), from: on(5), to: on(12) }),
            ]
          : [],
      }),
      place('sill', [15, 20], [10, 16]),
      place('glass', [7, 20], [16, 24]),
      place('shed', [5, 11], null, {
        say: chosen && known ? say('fake-place-none', { temperature: c(10) }) : null,
        none_comes_up: chosen !== undefined && known,
      }),
    ],
    trays,
    next_code: 'K10',
    last: scene === 'one' ? null : {
      crop: crop('lettuce'),
      variety: 'Curled Butter',
      say: say('last-sown', { seeds: n(12), cells: n(12), place: text(places.sill.name) }),
      act: {
        do: 'sow', packet: 'p-let', cells: range(0, 12), seeds: { as: 'exact', number: 12 }, depth_mm: 2, wanted: 9, again_of: 's-let', treatment: { soaked_hours: null, chipped: false, cold_weeks: null }, plan: null,
        into: { tray: 'new', code: null, container: 'cells', rows: 6, columns: 4, compost: 'seed', place: 'sill', covered: false },
      },
    },
    chosen: chosen
      ? {
          packet: line(chosen.line),
          outlook: chosen.outlook,
          own: chosen.own,
          depth_mm: known ? [5, 8] : null,
          before_sowing: warned ? [say('treatment-soak-hours', { low: n(12), high: n(24) }), say('treatment-cold-weeks', { low: n(4), high: n(6) })] : [],
          wants: warned ? { soak_hours: [12, 24], chip: false, cold_weeks: [4, 6] } : { soak_hours: null, chip: false, cold_weeks: null },
          too_shallow: say('warn-too-shallow'),
          too_deep: say(chosen.line.crop.key === 'lettuce' ? 'warn-buried' : 'warn-too-deep'),
          compost: known
            ? {
                compost: 'seed',
                say: say('compost-wanted-fine-seed'),
                unsuited: [{ compost: 'garden_soil', say: say('warn-compost-garden-soil') }],
              }
            : null,
          season: chosen.season,
          growing_on: known ? say('bench-growing-on', { day: c(18), night: c(14) }) : null,
          seed_mm: known ? [3, 1] : null,
          light: chosen.line.crop.key === 'lettuce' ? say('fake-light-need-needed') : null,
          recommended: { min_c: 18, max_c: 27 },
          cautions: [...(chosen.described.treated ? [say('fake-caution-treated-seed')] : []), say('caution-compost-dust')],
          warnings: warned ? [warn('too_late', { from: on(-40), to: on(-12) })] : [],
        }
      : null,
  };
}

/** Canned: 1.4 seeds a plant and one more, whatever the odds; two in a cell take half the cells. */
export function enough(of: EnoughAsk): EnoughView {
  const known = packets.find((p) => p.line.packet === of.packet)?.line.germination;
  if (!known) return { of, seeds: null, cells: null, say_seeds: say('enough-unknown'), say_cells: say('enough-unknown') };
  const seeds = Math.ceil(of.wanted * 1.4) + 1;
  const cells = Math.ceil(seeds / of.seeds_per_cell);
  const args = { wanted: n(of.wanted), times: { as: 'word' as const, value: `times-${of.odds}` } };
  return {
    of,
    seeds,
    cells,
    say_seeds: say('enough-seeds', { ...args, seeds: n(seeds) }),
    say_cells: say('enough-cells', { ...args, cells: n(cells), each: n(of.seeds_per_cell) }),
  };
}
