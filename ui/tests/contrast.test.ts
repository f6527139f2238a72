import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const source = readFileSync('src/tokens/colour.css', 'utf8');

/** What each token is written as, in the block of all themes. */
const written = new Map([...source.matchAll(/^ {4}--([\w-]+): (.+);$/gm)].map((found) => [found[1] ?? '', found[2] ?? ''] as const));

interface Theme {
  dark: boolean;
  more: boolean;
}

/** A token's colour in a theme, #rrggbb, as a browser works it out. */
function colour(name: string, theme: Theme): string {
  let value = written.get(name);
  if (!value) throw new Error(`no token is named ${name}`);
  const [, more, else_] = /^var\(--(more-\w+), (.+)\)$/.exec(value) ?? [];
  if (more && else_) value = theme.more ? (written.get(more) ?? '').replace('var(--more) ', '') : else_;
  const [, light, dark] = /^light-dark\((#\w+), (#\w+)\)$/.exec(value) ?? [];
  if (!light || !dark) throw new Error(`${name} is no pair of colours: ${value}`);
  return theme.dark ? dark : light;
}

/** Relative luminance, WCAG 2.2, section “Terms”: 0 is black, 1 is white. */
function luminance(hex: string): number {
  const digits = hex.length === 4 ? [...hex.slice(1)].map((digit) => digit + digit) : (hex.slice(1).match(/../g) ?? []);
  const [r = NaN, g = NaN, b = NaN] = digits.map((pair) => {
    const share = Number.parseInt(pair, 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio, WCAG 2.2, section “Terms”: 1 to 21. */
function contrast(a: string, b: string): number {
  const [low = NaN, high = NaN] = [luminance(a), luminance(b)].sort((one, other) => one - other);
  return (high + 0.05) / (low + 0.05);
}

/** Words, and what they stand on. */
const text = [
  ...['paper', 'label', 'act-wash', 'raddle-wash'].map((ground) => ['ink', ground]),
  ...['paper', 'label', 'act-wash', 'raddle-wash'].map((ground) => ['pencil', ground]),
  ...['paper', 'label', 'act-wash'].map((ground) => ['act', ground]),
  ...['paper', 'label', 'raddle-wash'].map((ground) => ['raddle', ground]),
  ['on-compost', 'compost'],
  ['on-compost-quiet', 'compost'],
  ['on-act', 'act'],
];
/** Outlines and marks without which something could not be made out, and what they stand on. */
const marks = [
  ...['edge', 'focus', 'act'].flatMap((mark) => ['paper', 'label', 'act-wash'].map((ground) => [mark, ground])),
  ['raddle', 'raddle-wash'],
  ['on-compost', 'compost'],
  ['act', 'band'],
  ['edge', 'band'],
  ['ink', 'band'],
];
/** Lines that only part what is apart already: they carry weight where most contrast is asked for. */
const rules = ['paper', 'label'].map((ground) => ['rule', ground]);

/** The least that a kind of pair may have. WCAG 2.2: 1.4.3 and 1.4.11; more: 1.4.6, and the same step for marks. */
const themes: [string, Theme, { text: number; marks: number; rules: number }][] = [
  ['light', { dark: false, more: false }, { text: 4.5, marks: 3, rules: 1 }],
  ['dark', { dark: true, more: false }, { text: 4.5, marks: 3, rules: 1 }],
  ['bright sun', { dark: false, more: true }, { text: 7, marks: 4.5, rules: 4.5 }],
  ['dark, where more contrast is asked for', { dark: true, more: true }, { text: 7, marks: 4.5, rules: 4.5 }],
];

it.each(themes)('words and marks stand out: %s', (_, theme, least) => {
  const faint = Object.entries({ text, marks, rules }).flatMap(([kind, pairs]) =>
    pairs.flatMap(([mark = '', ground = '']) => {
      const ratio = contrast(colour(mark, theme), colour(ground, theme));
      return ratio < least[kind as keyof typeof least] ? [`${kind}: ${mark} on ${ground} ${ratio.toFixed(2)}`] : [];
    }),
  );
  expect(faint).toEqual([]);
});

it('reckons contrast as others do', () => {
  // WCAG 2.2: black on white is 21, a colour on itself 1. #767676 is the lightest grey of technique G18 that passes on white.
  expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 10);
  expect(contrast('#123456', '#123456')).toBe(1);
  expect(contrast('#767676', '#fff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#fff')).toBeLessThan(4.5);
});

it('holds every pair of colours there is to something', () => {
  const colours = [...written].filter(([name, value]) => value.includes('light-dark') && !name.startsWith('more-')).map(([name]) => name);
  const held = new Set<string>([...text, ...marks, ...rules].flat());
  expect(colours.filter((name) => !held.has(name))).toEqual([]);
});

it('asks for most contrast in bright sun, and of itself only where the device does', () => {
  const block = (selector: string) => source.slice(source.indexOf(selector)).split('}')[0];
  expect(block(`:root[data-theme='bright']`)).toContain('--more: ;');
  expect(block('@media (prefers-contrast: more)')).toMatch(/:root \{\s+--more: ;/);
  for (const theme of ['light', 'dark']) expect(block(`:root[data-theme='${theme}']`)).toContain('--more: initial;');
});
