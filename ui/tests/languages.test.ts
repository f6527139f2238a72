import { FluentBundle, FluentResource } from '@fluent/bundle';
import { render, screen, waitFor } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import App from '../src/App.svelte';
import { FakeBackend, fakeWords } from '../src/backend/fake';
import { Session } from '../src/state/session.svelte';
import { find, findable } from '../src/text/find';
import { later } from '../src/text/later';
import { languages, type Language } from '../src/text/languages';
import { Words } from '../src/text/words.svelte';

const text = join(import.meta.dirname, '../src/text');
/** All messages of a language, as one resource each file. */
const files = (language: string) =>
  readdirSync(join(text, language), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ftl'))
    .map((name) => ({ name, source: readFileSync(join(text, language, name), 'utf8') }));

/** Each message with what fills it, and the words it is chosen by. */
function messages(language: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const { source } of files(language)) {
    for (const part of source.split(/\n(?=[a-zA-Z])/)) {
      const key = /^([a-zA-Z][\w-]*) *=/m.exec(part.replace(/^#.*\n|^\n/gm, ''))?.[1];
      if (key) found.set(key, [...new Set([...part.matchAll(/\$([\w-]+)/g)].map((m) => m[1]))].sort().join(' '));
    }
  }
  return found;
}

/** Each message as it is read. */
const told = (language: string) => new Map(files(language).flatMap(({ source }) => new FluentResource(source).body.map((it) => [it.id, JSON.stringify(it.value)])));

async function speaking(language: Language) {
  const made = new Words([fakeWords, ...later]);
  await made.speak(language);
  made.today = '2026-04-16';
  return made;
}

describe('the message files of each language', () => {
  const base = messages('en-GB');

  it.each(languages)('%s can be read whole, and name nothing twice', (language) => {
    const bundle = new FluentBundle(language);
    for (const { name, source } of files(language)) {
      expect([name, ...bundle.addResource(new FluentResource(source))]).toEqual([name]);
      // What cannot be read is passed over: as many are read as are there.
      const there = source.match(/^[a-zA-Z][\w-]* *=/gm)?.length ?? 0;
      expect([name, new FluentResource(source).body.length]).toEqual([name, there]);
    }
  });

  it('German says all that British English says, filled in by the same', () => {
    const german = messages('de');
    expect([...base.keys()].filter((key) => !german.has(key))).toEqual([]);
    expect([...german].filter(([key, filled]) => base.get(key) !== filled)).toEqual([]);
  });

  it('American English says nothing that British English does not, and only what differs', () => {
    const american = messages('en-US');
    expect(american.size).toBeGreaterThan(50);
    expect([...american].filter(([key, filled]) => base.get(key) !== filled)).toEqual([]);
    const [here, there] = [told('en-US'), told('en-GB')];
    expect([...here].filter(([key, value]) => there.get(key) === value)).toEqual([]);
  });

  // What the trade in America says otherwise: common practice, no source.
  it('American English takes over no British word', () => {
    const british = /\b(autumn|colours?|moulds?|mouldy|grey|label(led|ling)|compost|aubergine|courgette|fleece|kitchen paper|stocktake|pot(ted)? ((it|them) )?on)\b/i;
    const said = new Map([...told('en-GB'), ...told('en-US')]);
    expect([...said].filter(([, value]) => british.test(value.replace(/"name":"[\w-]+"/g, '')))).toEqual([]);
  });

  // CLDR 46, plurals: in both languages `one` is 1 alone, and 0, 2 and 5 are `other`.
  it.each([
    ['en-GB', ['0 trays felt moist', '1 tray felt moist', '2 trays felt moist', '5 trays felt moist']],
    ['en-US', ['0 trays felt moist', '1 tray felt moist', '2 trays felt moist', '5 trays felt moist']],
    ['de', ['0 Schalen fühlten sich moist an', '1 Schale fühlte sich moist an', '2 Schalen fühlten sich moist an', '5 Schalen fühlten sich moist an']],
  ] as const)('%s counts 0, 1, 2 and 5', async (language, said) => {
    const made = await speaking(language);
    expect([0, 1, 2, 5].map((trays) => made.t('line-felt-many', { trays, feel: 'moist' }))).toEqual(said);
  });

  it('no count is left without words in any language', async () => {
    for (const language of languages) {
      const made = await speaking(language);
      for (const [key, filled] of base) {
        const names = filled.split(' ').filter(Boolean);
        for (const count of [0, 1, 2, 5]) {
          const said = made.t(key, Object.fromEntries(names.map((name) => [name, count])));
          expect([language, key, said.length > 0 || key === 'tray-is-covered', /\{\$|\?\?\?/.test(said)]).toEqual([language, key, true, false]);
        }
      }
    }
  });
});

// What is expected is typed in from CLDR 46 (from memory), and held against this machine's Intl (ECMA-402).
describe.each([
  ['en-GB', 'Thursday 14 May', 'Wednesday 14 May 2025', '14 May', '14 May 2025', '1,234.5', 'a, b and c', '6:05 pm'],
  ['en-US', 'Thursday, May 14', 'Wednesday, May 14, 2025', 'May 14', 'May 14, 2025', '1,234.5', 'a, b, and c', '6:05 PM'],
  ['de', 'Donnerstag, 14. Mai', 'Mittwoch, 14. Mai 2025', '14. Mai', '14. Mai 2025', '1.234,5', 'a, b und c', '6:05 PM'],
] as const)('%s writes', (language, day, dayYear, short, shortYear, number, list, time) => {
  const blank = (it: string) => it.replace(/[\u202f\u00a0]/g, ' ');

  it('days, numbers, lists and times', async () => {
    const made = await speaking(language);
    expect(blank(made.day('2026-05-14'))).toBe(day);
    expect(blank(made.day('2025-05-14'))).toBe(dayYear);
    expect(blank(made.shortDay('2026-05-14'))).toBe(short);
    expect(blank(made.shortDay('2025-05-14'))).toBe(shortYear);
    expect(made.number(1234.5)).toBe(number);
    expect(made.list(['a', 'b', 'c'])).toBe(list);
    expect(made.time('2026-05-14T18:05:00')).toBe('18:05');
    made.use({ temperature: 'fahrenheit', length: 'inch', clock: 'h12' });
    expect(blank(made.time('2026-05-14T18:05:00'))).toBe(time);
    expect(made.celsius(20)).toBe('68\u00a0°F');
  });

  it('as Intl does', () => {
    const at = new Date('2025-05-14T18:05:00Z');
    const date = (options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(language, { timeZone: 'UTC', ...options }).format(at);
    expect(date({ weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' }).replace(language === 'en-GB' ? ',' : '\0', '')).toBe(dayYear);
    expect(date({ day: 'numeric', month: 'short', year: 'numeric' })).toBe(shortYear);
    expect(blank(date({ hour: 'numeric', minute: '2-digit', hour12: true }))).toBe(time);
    expect(new Intl.NumberFormat(language).format(1234.5)).toBe(number);
    expect(new Intl.ListFormat(language).format(['a', 'b', 'c'])).toBe(list);
  });
});

it('reads and shows lengths in the unit of the device', async () => {
  const made = await speaking('en-GB');
  expect([made.toMm('12,5'), made.fromMm(6), made.lengthUnit]).toEqual([12.5, '6', 'mm']);
  made.use({ temperature: 'celsius', length: 'inch', clock: 'h24' });
  // An inch is 25.4 mm (international inch, 1959).
  expect([made.toMm('1'), made.toMm('0.125'), made.fromMm(25.4), made.fromMm(3.175), made.lengthUnit]).toEqual([25.4, 3.2, '1', '0.125', 'in']);
  expect(made.toMm('')).toBeNull();
});

it('finds a crop by its name here and by its British one', async () => {
  const made = await speaking('en-US');
  const crops = ['squash', 'eggplant'].map((key) => ({ key, known: true }));
  expect(made.crop(crops[0]!)).toBe('zucchini');
  const all = crops.map((crop) => findable(crop.key, made.names(crop).join(' ')));
  expect(find(all, 'zucch')).toEqual(['squash']);
  expect(find(all, 'courgette')).toEqual(['squash']);
  expect(find(all, 'aubergine')).toEqual(['eggplant']);
});

it('of two languages asked for in a breath speaks the last', async () => {
  const made = new Words();
  await Promise.all([made.speak('en-US'), made.speak('en-GB')]);
  expect(made.language).toBe('en-GB');
  expect(made.t('crop-squash')).toBe('courgette');
});

describe('the language of the device', () => {
  beforeEach(() => (location.hash = '#/settings'));

  async function open(language?: string) {
    const backend = new FakeBackend('demo', language);
    render(App, { session: new Session(backend, new Words([fakeWords])) });
    await screen.findByRole('heading', { level: 1 });
    return { backend, user: userEvent.setup() };
  }

  it('takes hold at once, in what stands on the screen and in the page’s own tag', async () => {
    const { backend, user } = await open();
    expect(document.documentElement.lang).toBe('en-GB');
    const pick = await screen.findByRole('combobox', { name: 'Language' });
    await user.selectOptions(pick, 'de');
    await waitFor(() => expect(document.documentElement.lang).toBe('de'));
    expect(backend.device.language).toBe('de');
    expect(await screen.findByRole('link', { name: 'Runde' })).toBeVisible();
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Einstel\u00ADlungen');
    expect(pick).toBe(document.activeElement);
  });

  it('is the system’s where nothing else is said', async () => {
    const backend = new FakeBackend('demo', 'system');
    const start = await backend.start();
    backend.start = async () => ({ ...start, language: 'en-US' });
    render(App, { session: new Session(backend, new Words([fakeWords])) });
    await waitFor(() => expect(document.documentElement.lang).toBe('en-US'));
  });
});
