import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { render, screen } from '@testing-library/svelte';
import { describe, expect, it, vi } from 'vitest';
import App from '../src/App.svelte';
import { fakeWords } from '../src/backend/fake';
import { FakeBackend } from '../src/backend/fake';
import type { Say } from '../src/backend/generated/types';
import { Session } from '../src/state/session.svelte';
import { fold, matches } from '../src/text/fold';
import { later } from '../src/text/later';
import { Words } from '../src/text/words.svelte';

const more = `
test-all = { $who } { $warm } { $long } { $share } { $day } { $when } { $what } { $several }
test-plural = { $n ->
    [one] one tray
   *[other] { $n } trays
}
test-word = dry
`;
const words = () => {
  const made = new Words([more, fakeWords, ...later]);
  made.today = '2026-04-16';
  return made;
};

describe('a Say is filled in by the type of each argument', () => {
  const say: Say = {
    key: 'test-all',
    args: {
      who: { as: 'text', value: 'K3' },
      warm: { as: 'celsius', value: 11.5 },
      long: { as: 'millimetres', value: 6 },
      share: { as: 'share', value: 0.6 },
      day: { as: 'day', value: '2026-05-14' },
      when: { as: 'moment', value: '2025-05-14T08:00:00' },
      what: { as: 'word', value: 'test-word' },
      several: { as: 'list', value: [{ as: 'number', value: 1 }, { as: 'text', value: 'two' }, { as: 'word', value: 'no-such-word' }] },
    },
  };

  it('in °C and mm, with the year only where it is not this one', () => {
    expect(words().say(say)).toBe(
      'K3 11.5\u00a0°C 6\u00a0mm 60\u00a0% Thursday 14 May Wednesday 14 May 2025, 08:00 dry 1, two and no-such-word',
    );
  });

  it('in °F and inches by the habit of the device', () => {
    const made = words();
    made.use({ temperature: 'fahrenheit', length: 'inch', clock: 'h24' });
    // 11.5 °C · 9/5 + 32 = 52.7 °F; 6 / 25.4 = 0.236 in.
    expect(made.say(say)).toContain('53\u00a0°F 0.24\u00a0in');
  });

  it('by plural', () => {
    expect(words().t('test-plural', { n: 1 })).toBe('one tray');
    expect(words().t('test-plural', { n: 3 })).toBe('3 trays');
  });
});

it('shows a key that is unknown, and remembers it', () => {
  const made = words();
  expect(made.say({ key: 'why-nobody-wrote', args: {} })).toBe('why-nobody-wrote');
  expect([...made.missing]).toEqual(['why-nobody-wrote']);
});

it('reads temperatures as they are typed', () => {
  const made = words();
  expect(made.toCelsius(' 18,5 ')).toBe(18.5);
  expect(made.toCelsius('−3')).toBe(-3);
  expect(made.toCelsius('warm')).toBeNull();
  expect(made.toCelsius('')).toBeNull();
  made.use({ temperature: 'fahrenheit', length: 'mm', clock: 'h24' });
  // The freezing and boiling points of water.
  expect(made.toCelsius('32')).toBe(0);
  expect(made.toCelsius('212')).toBe(100);
  expect(made.fromCelsius(100)).toBe('212');
});

it('says a range with its unit once', () => {
  expect(words().range({ min_c: 7, max_c: 20 })).toBe('7 to 20\u00a0°C');
  expect(words().range({ min_c: 16, max_c: 16 })).toBe('16\u00a0°C');
});

it('finds by typing without case or accents', () => {
  expect(fold('Échinacée')).toBe('echinacee');
  expect(matches('Échinacée du jardin 2024', 'jard ECHI')).toBe(true);
  expect(matches('Tomato', 'leek')).toBe(false);
});

describe('the message files', () => {
  const dir = join(import.meta.dirname, '../src/text/en-GB');
  const keys = (file: string) => [...readFileSync(join(dir, file), 'utf8').matchAll(/^([a-z][\w-]*) *=/gim)].map((m) => m[1] ?? '');

  it('define no key twice', () => {
    const all = readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ftl')).flatMap(keys);
    expect(all.filter((key, i) => all.indexOf(key) !== i)).toEqual([]);
  });

  it('have every key that a component names, and the screens file no key that none does', () => {
    const src = join(import.meta.dirname, '../src');
    const sources = readdirSync(src, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(svelte|ts)$/.test(name) && !name.includes('fake') && !name.includes('generated'))
      .map((name) => readFileSync(join(src, name), 'utf8'))
      .join('\n');
    const made = words();
    const named = new Set([...sources.matchAll(/'([a-z]+(?:-[a-z_]+)+)'/g)].map((m) => m[1] ?? ''));
    const called = [...sources.matchAll(/words\.t\(\s*'([^']+)'/g)].map((m) => m[1] ?? '');
    expect(called.length).toBeGreaterThan(100);
    expect(called.filter((key) => !made.has(key))).toEqual([]);
    const stems = [...sources.matchAll(/`([a-z-]+-)\$\{/g)].map((m) => m[1] ?? '');
    const unused = ['screens.ftl', 'later/tray.ftl', 'later/trays.ftl', 'later/keep.ftl', 'later/seed.ftl', 'later/settings.ftl', 'later/sow.ftl'].flatMap(keys).filter((key) => !named.has(key) && !stems.some((stem) => key.startsWith(stem)));
    expect(unused).toEqual([]);
  });

  it.each(['demo', 'season', 'empty', 'quiet', 'choose', 'damaged', 'newer'])('say all of the first picture (%s) before the later ones are in', async (scene) => {
    location.hash = '#/round';
    vi.spyOn(Words.prototype, 'loadLater').mockReturnValue(new Promise(() => undefined));
    const made = new Words([fakeWords]);
    render(App, { session: new Session(new FakeBackend(scene), made) });
    await screen.findByRole('heading', { level: 1 });
    await new Promise((settled) => setTimeout(settled, 50));
    expect([...made.missing]).toEqual([]);
  });

  it('say at the start whatever the round may say of a job', () => {
    const start = new Words();
    const ofJobs = /^(why|job|next|verdict|choice|gives|odds|way|hardiness|crop|light|feel|watering|medium|stage|place)-/;
    const all = readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter((name) => name.endsWith('.ftl')).flatMap(keys);
    const asked = all.filter((key) => ofJobs.test(key) && !['light-need-', 'place-'].some((stem) => key.startsWith(stem)));
    expect(asked.length).toBeGreaterThan(200);
    expect(asked.filter((key) => !start.has(key))).toEqual([]);
  });

  it('have a word for each of the closed sets', () => {
    const made = words();
    const sets: Record<string, string[]> = {
      'place-kind': ['heated_propagator', 'windowsill', 'shed', 'greenhouse', 'cold_frame', 'outdoors', 'fridge'],
      light: ['dark', 'dim', 'bright'],
      container: ['cells', 'open_tray', 'pot', 'pots', 'damp_paper', 'bag'],
      compost: ['seed', 'multi_purpose', 'potting', 'garden_soil', 'coarse', 'no_compost'],
      storage: ['fridge_sealed', 'cool_cupboard', 'warm_room', 'damp_shed'],
      feel: ['dry', 'moist', 'wet'],
      watering: ['below', 'rose', 'mist'],
      medium: ['air', 'compost'],
      step: ['cut_apart', 'sown_on', 'pricked_out', 'potted_on'],
      cause: ['eaten', 'damped_off', 'frosted', 'baked', 'dried_out', 'spilt', 'unknown'],
      origin: ['cuttings', 'tubers', 'bulbs', 'plugs'],
      stage: ['sown', 'coming_up', 'up', 'pricked_out', 'set', 'potted_on', 'hardening_off', 'ready', 'gone', 'nothing_came_up', 'lost', 'finished'],
      job: ['into_the_light', 'cover_off', 'look_for_seedlings', 'it_is_late', 'feel_the_compost', 'read_the_thermometer', 'thin', 'prick_out', 'pot_on', 'harden_off', 'plant_out'],
    };
    for (const [set, values] of Object.entries(sets)) for (const value of values) made.word(set, value);
    expect([...made.missing]).toEqual([]);
  });

  it('have a message for everything the canned views say', async () => {
    const made = words();
    const backend = new FakeBackend();
    const views = [await backend.round(), await backend.trays(), await backend.tray('t-k7'), await backend.seed(), await backend.bench('p-cab')];
    const said: Say[] = [];
    JSON.stringify(views, (_, value: unknown) => {
      if (typeof value === 'object' && value !== null && 'key' in value && 'args' in value) said.push(value as Say);
      return value;
    });
    expect(said.length).toBeGreaterThan(20);
    for (const one of said) made.say(one);
    expect([...made.missing]).toEqual([]);
  });
});
