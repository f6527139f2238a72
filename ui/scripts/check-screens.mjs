// Loads every screen over the fake backend and fails on sideways scroll, overlap,
// small targets, motion where none is wanted, axe-core violations, anything the
// content policy blocks, and anything that moves because an answer came late. A
// screen is loaded once and then looked at in all ways: light and dark, as wide
// as small and large phones, tablets and desks are, and at 200 % text on a phone
// and a small one. Leaves pictures of each in the folder that SCREENS_DIR names,
// if it does. Only screens with the word of the first argument in their name are
// looked at, if there is one.
import { createServer } from 'node:http';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { availableParallelism } from 'node:os';
import { extname, join } from 'node:path';
import { chromium } from 'playwright-core';
import { drawn, layoutFaults, motionFaults } from './faults.mjs';
import { atRest, watchMoves } from './moved.mjs';
import { planted } from './planted.mjs';
import { screens } from './screens.mjs';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'));
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
    const body = path === '/axe.js' ? axe : readFileSync(join(dist, path === '/' ? 'index.html' : path));
    const type = types[extname(path === '/' ? '.html' : path)] ?? 'text/html';
    response.writeHead(200, { 'content-type': type, 'content-security-policy': policy, 'cache-control': type === 'text/html' ? 'no-store' : 'max-age=3600' });
    response.end(body);
  } catch {
    response.writeHead(404).end();
  }
});
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const origin = `http://127.0.0.1:${server.address().port}`;

const phone = { width: 412, height: 915 };
const small = { width: 360, height: 740 };
/** The others at which only the layout can differ. */
const sizes = [
  small,
  { width: 768, height: 1024 },
  { width: 1280, height: 800 },
];
const every = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Each answer comes so long after the one before it, ms: several pictures. */
const late = 60;
const rule = (name) => ({ type: 'rule', values: [name] });

/** Draws a screen and tells what is wrong with it. */
async function check(page, screen, said) {
  const faults = new Map();
  const add = (mode, found) => found.length > 0 && faults.set(mode, [...(faults.get(mode) ?? []), ...found]);
  const look = async (mode) => {
    await page.evaluate(drawn);
    add(mode, await page.evaluate(layoutFaults));
    if (shots) await page.screenshot({ path: join(shots, `${screen.name}-${mode}.png`) });
  };
  const whole = async (mode) => {
    if ((await lengthen(page)) && shots) await page.screenshot({ path: join(shots, `${screen.name}-${mode}-whole.png`) });
  };
  const ask = async (mode, runOnly) => add(mode, await axeFaults(page, runOnly));

  await page.setViewportSize(phone);
  await page.emulateMedia({ colorScheme: 'light' });
  await page.goto(`${origin}/?fake=${screen.scene ?? 'demo'}&language=${screen.language ?? 'en-GB'}&wait=${late}&at=${encodeURIComponent(screen.name)}${screen.hash}`);
  await page.waitForSelector('h1', { timeout: 20_000 });
  await screen.early?.(page);
  const comesToRest = async () => (await page.evaluate(atRest)) || add('light', ['never comes to rest']);
  await comesToRest();
  add('light', await page.evaluate(() => window.moved.splice(0)));
  try {
    await screen.steps?.(page);
  } catch (thrown) {
    add('step', [thrown.message.split('\n')[0]]);
  }
  await comesToRest();
  await page.evaluate(() => document.fonts.ready);
  await look('light');
  add('light', await page.evaluate(motionFaults));
  await whole('light');
  await page.addScriptTag({ url: '/axe.js' });
  await ask('light', every);

  // In the dark the same page has other colours, so that only contrast can differ.
  await page.emulateMedia({ colorScheme: 'dark' });
  await ask('dark', rule('color-contrast'));
  if (shots) {
    await page.setViewportSize(phone);
    await look('dark');
    await whole('dark');
  }

  await page.emulateMedia({ colorScheme: 'light' });
  for (const size of sizes) {
    await page.setViewportSize(size);
    await look(String(size.width));
  }

  await page.setViewportSize(phone);
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  await look('large');
  await whole('large');
  await ask('large', rule('target-size'));
  await page.setViewportSize(small);
  await look('small-large');
  add('console', said.splice(0));

  return [...faults].flatMap(([mode, found]) => [...new Set(found)].slice(0, 12).map((fault) => `${mode}: ${fault}`));
}

async function axeFaults(page, runOnly) {
  const found = await page.evaluate((runOnly) => globalThis.axe.run(document, { runOnly, resultTypes: ['violations'] }), runOnly);
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.slice(0, 4).map((node) => `axe ${id}: ${node.target.join(' ')} ${node.failureSummary.split('\n').at(-1)?.trim() ?? ''}`),
  );
}

/** Makes the page as long as what is in it, so that all of it is looked at; whether it had to. */
async function lengthen(page) {
  const high = await page.evaluate(() => {
    const main = document.querySelector('main');
    const dialog = document.querySelector('dialog[open]');
    return dialog ? innerHeight : innerHeight - main.clientHeight + main.scrollHeight;
  });
  // Longer pages are more than a picture can hold.
  if (high <= phone.height || high >= 16_000) return false;
  await page.setViewportSize({ ...phone, height: high });
  return true;
}

const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox', '--headless'] });
const left = screens.filter((screen) => !only || screen.name.includes(only));
if (left.length === 0) throw new Error(`no screen is named ${only}`);
const looked = left.length;
const began = performance.now();
let wrong = 0;
async function tell(page, screen, said) {
  const faults = await check(page, screen, said);
  wrong += faults.length;
  console.log([`${faults.length === 0 ? 'good ' : 'WRONG'} ${screen.name}`, ...faults].join('\n      '));
}
/** A screen with faults in it: a check that does not find them proves nothing. */
async function finds(page, said) {
  const found = await check(page, planted, said);
  for (const fault of planted.faults.filter((fault) => !found.some((one) => fault.test(one)))) {
    wrong += 1;
    console.log(`WRONG the planted fault ${fault} was not found`);
  }
}
/** As many at a time as there are cores, each in a page that is used again. */
async function work(number) {
  const context = await browser.newContext({ viewport: phone, hasTouch: true, reducedMotion: 'reduce', bypassCSP: false });
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  const said = [];
  page.on('console', (message) => message.type() === 'error' && said.push(message.text()));
  page.on('pageerror', (error) => said.push(error.message));
  await page.addInitScript(() => {
    // As in the app's web view, where prototypes are frozen.
    Object.freeze(Object.prototype);
    // No screen finds what another one kept.
    localStorage.clear();
    sessionStorage.clear();
  });
  await page.addInitScript(watchMoves);
  if (number === 0) await finds(page, said);
  for (let next = left.shift(); next; next = left.shift()) await tell(page, next, said);
}
await Promise.all(Array.from({ length: Math.min(availableParallelism(), 8) }, (_, number) => work(number)));
await browser.close();
server.close();
console.log(`${looked} screens in ${((performance.now() - began) / 1000).toFixed(0)} s`);
if (wrong > 0) {
  console.error(`${wrong} things are wrong`);
  process.exit(1);
}
