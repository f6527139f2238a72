// Loads every screen over the fake backend at phone size, plain and at 200 % text,
// light and dark, and fails on sideways scroll, overlap, small targets, axe-core
// violations, and anything the content policy blocks. Leaves pictures of each in
// the folder that SCREENS_DIR names, if it does.
import { createServer } from 'node:http';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { extname, join } from 'node:path';
import { chromium } from 'playwright-core';
import { screens } from './screens.mjs';

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const dist = new URL('../node_modules/.screens/', import.meta.url).pathname;
const shots = process.env.SCREENS_DIR;
const only = process.argv[2];
if (shots) mkdirSync(shots, { recursive: true });

const policy =
  "default-src 'self'; connect-src 'self' ipc: http://ipc.localhost; img-src 'self' blob: photo: http://photo.localhost; object-src 'none'; base-uri 'none'; form-action 'none'; frame-src 'none'";
const types = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };
const server = createServer((request, response) => {
  const path = new URL(request.url ?? '/', 'http://x').pathname;
  if (path === '/favicon.ico') return void response.writeHead(204).end();
  try {
    const body = readFileSync(join(dist, path === '/' ? 'index.html' : path));
    response.writeHead(200, { 'content-type': types[extname(path === '/' ? '.html' : path)] ?? 'text/html', 'content-security-policy': policy });
    response.end(body);
  } catch {
    response.writeHead(404).end();
  }
});
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const origin = `http://127.0.0.1:${server.address().port}`;

const size = { width: 412, height: 915 };
// In the dark the same page has other colours, so that only contrast can differ.
const modes = [
  { name: 'light', scheme: 'light', text: 1, axe: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
  { name: 'dark', scheme: 'dark', text: 1, axe: { type: 'rule', values: ['color-contrast'] } },
  { name: 'large', scheme: 'light', text: 2, axe: { type: 'rule', values: ['color-contrast', 'target-size'] } },
];

/** Runs in the page: what is wrong with how it is laid out. */
function layoutFaults() {
  const faults = [];
  const name = (el) => `${el.tagName.toLowerCase()} “${(el.getAttribute('aria-label') ?? el.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
  const scope = document.querySelector('dialog[open]') ?? document.body;
  // What is only laid out when it comes near is measured as when it is there.
  for (const el of scope.querySelectorAll('*')) if (getComputedStyle(el).contentVisibility === 'auto') el.style.contentVisibility = 'visible';
  for (const el of [document.documentElement, document.querySelector('main'), document.querySelector('dialog[open]')]) {
    if (!el || el.scrollWidth <= el.clientWidth + 1) continue;
    const out = [...el.querySelectorAll('*')].findLast((it) => it.getBoundingClientRect().right > el.clientWidth + 1 && !it.closest('.scroller'));
    faults.push(`sideways scroll in ${el.tagName}: ${el.scrollWidth} > ${el.clientWidth}${out ? `, by ${name(out)}` : ''}`);
  }
  const seen = [...scope.querySelectorAll('a[href], button, input, select, textarea, summary, .grid:not(.glance) [role=gridcell]')].filter((el) => {
    const style = getComputedStyle(el);
    return el.checkVisibility({ visibilityProperty: true }) && !el.closest('.skip') && style.position !== 'fixed';
  });
  const boxes = seen.map((el) => {
    // What is pressed for a radio, a tick box or a file is its whole label.
    const label = ['radio', 'checkbox', 'file'].includes(el.type) ? el.closest('label') : null;
    return { el, box: (label ?? el).getBoundingClientRect(), inline: el.tagName === 'A' && getComputedStyle(el).display === 'inline' };
  });
  for (const { el, box, inline } of boxes) {
    const least = inline ? 44 : 48;
    if (box.width < least - 0.5 || box.height < least - 0.5) {
      faults.push(`small target ${name(el)}: ${box.width.toFixed(0)} x ${box.height.toFixed(0)}`);
    }
    const scroller = el.closest('.scroller');
    if (!scroller && (box.left < -1 || box.right > innerWidth + 1)) faults.push(`cut off sideways ${name(el)}`);
  }
  for (let i = 0; i < boxes.length; i += 1) {
    for (let j = i + 1; j < boxes.length; j += 1) {
      const [a, b] = [boxes[i], boxes[j]];
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      if (wide <= 1 || high <= 1) continue;
      if (a.el.contains(b.el) || b.el.contains(a.el)) continue;
      // The bar and the toast lie beside the scrolling page, not over it.
      if (!!a.el.closest('main') !== !!b.el.closest('main')) continue;
      // What sticks to the edge lies over what scrolls beneath it; either can be brought clear.
      if (!!a.el.closest('.sticks') !== !!b.el.closest('.sticks')) continue;
      if (a.el.closest('.scroller') && a.el.closest('.scroller') === b.el.closest('.scroller') && (a.el.matches('.head') || b.el.matches('.head'))) continue;
      faults.push(`overlap ${name(a.el)} and ${name(b.el)}`);
    }
  }
  const main = document.querySelector('main').getBoundingClientRect();
  const footer = document.querySelector('footer').getBoundingClientRect();
  if (main.bottom > footer.top + 1) faults.push('the page lies under the bar');
  for (const el of scope.querySelectorAll('button, a, label, h1, h2, h3, h4, p, td, th, select')) {
    const style = getComputedStyle(el);
    if (el.closest('.heard') || el.closest('.skip') || !el.checkVisibility()) continue;
    if (el.scrollWidth > el.clientWidth + 2 && style.display !== 'inline' && !el.closest('.scroller')) faults.push(`text runs out of ${name(el)}`);
  }
  return faults;
}

/** Draws a screen in a mode and tells what is wrong with it. */
async function check(context, mode, screen) {
  const page = await context.newPage();
  const faults = [];
  page.on('console', (message) => message.type() === 'error' && faults.push(`console: ${message.text()}`));
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  // As in the app's web view, where prototypes are frozen.
  await page.addInitScript(() => Object.freeze(Object.prototype));
  await page.goto(`${origin}/?fake=${screen.scene ?? 'demo'}${screen.hash}`);
  await page.waitForSelector('h1', { timeout: 20_000 });
  await page.evaluate((text) => (document.documentElement.style.fontSize = `${text * 100}%`), mode.text);
  page.setDefaultTimeout(10_000);
  try {
    await screen.steps?.(page);
  } catch (thrown) {
    faults.push(`step: ${thrown.message.split('\n')[0]}`);
  }
  await page.evaluate(() => document.fonts.ready);
  faults.push(...(await page.evaluate(layoutFaults)));
  await lengthen(page, `${screen.name}-${mode.name}`);
  await page.evaluate(axe);
  const found = await page.evaluate((runOnly) => globalThis.axe.run(document, { runOnly }), mode.axe);
  for (const violation of found.violations) {
    for (const node of violation.nodes.slice(0, 4)) faults.push(`axe ${violation.id}: ${node.target.join(' ')} ${node.failureSummary.split('\n').at(-1)?.trim() ?? ''}`);
  }
  await page.close();
  console.log([`${faults.length === 0 ? 'good ' : 'WRONG'} ${screen.name}, ${mode.name}`, ...[...new Set(faults)].slice(0, 12)].join('\n      '));
  return faults.length;
}

/** Makes the page as long as what is in it, so that all of it is looked at; pictures of it before and after. */
async function lengthen(page, name) {
  if (shots) await page.screenshot({ path: join(shots, `${name}.png`) });
  const high = await page.evaluate(() => {
    const main = document.querySelector('main');
    const dialog = document.querySelector('dialog[open]');
    return dialog ? innerHeight : innerHeight - main.clientHeight + main.scrollHeight;
  });
  // Longer pages are more than a picture can hold.
  if (high <= size.height || high >= 16_000) return;
  await page.setViewportSize({ ...size, height: high });
  if (shots) await page.screenshot({ path: join(shots, `${name}-whole.png`) });
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox', '--headless'] });
const left = modes.flatMap((mode) => screens.filter((screen) => !only || screen.name.includes(only)).map((screen) => ({ mode, screen })));
if (left.length === 0) throw new Error(`no screen is named ${only}`);
let wrong = 0;
/** As many at a time as there are cores. */
async function work() {
  const contexts = new Map();
  for (let next = left.shift(); next; next = left.shift()) {
    const { mode, screen } = next;
    if (!contexts.has(mode)) contexts.set(mode, await browser.newContext({ viewport: size, colorScheme: mode.scheme, reducedMotion: 'reduce', bypassCSP: false }));
    wrong += await check(contexts.get(mode), mode, screen);
  }
}
await Promise.all(Array.from({ length: Math.min(availableParallelism(), 8) }, work));
await browser.close();
server.close();
if (wrong > 0) {
  console.error(`${wrong} things are wrong`);
  process.exit(1);
}
