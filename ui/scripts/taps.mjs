// Taps and keys in Chromium slowed four times, with touch: the time from each to
// its picture, as the browser itself measures it. `round`: answers in a round of
// 200 trays. `seed`: a search among 500 packets typed and taken back, then the
// list scrolled from end to end, and how evenly its pictures came.
import { chromium, devices } from 'playwright-core';
import { preview } from 'vite';

const [what = 'round', number = '24'] = process.argv.slice(2);
const taps = Number(number);
const server = await preview({ build: { outDir: 'node_modules/.screens' }, preview: { port: 0, host: '127.0.0.1' } });
const address = server.resolvedUrls.local[0];
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox', '--headless'] });
const context = await browser.newContext({ ...devices['Pixel 7'], viewport: { width: 412, height: 915 } });
const page = await context.newPage();
await page.addInitScript(() => {
  window.taps = [];
  new PerformanceObserver((seen) => {
    for (const entry of seen.getEntries()) if (entry.interactionId) window.taps.push({ id: entry.interactionId, took: entry.duration });
  }).observe({ type: 'event', durationThreshold: 16, buffered: true });
});

async function answers() {
  for (let tap = 0; tap < taps; tap++) {
    await page.getByRole('button', { name: ['Moist', 'Dry', 'Wet'][tap % 3], exact: true }).first().tap();
    await page.waitForTimeout(400);
  }
}

async function search() {
  const words = 'tomtao lantern';
  await page.getByRole('searchbox').focus();
  for (let key = 0; key < taps; key++) {
    const turn = key % (2 * words.length);
    await page.keyboard.press(turn < words.length ? words[turn] : 'Backspace');
    await page.waitForTimeout(400);
  }
  await page.getByRole('searchbox').fill('');
}

/** Pictures while the list is swept to its end: of how many the next came more than two later. */
async function scroll(slow) {
  await page.evaluate(() => {
    window.pictures = [];
    const next = (at) => {
      window.pictures.push(at);
      requestAnimationFrame(next);
    };
    requestAnimationFrame(next);
  });
  const swept = () => page.evaluate(() => document.querySelector('main').scrollTop);
  const before = await swept();
  await slow.send('Input.synthesizeScrollGesture', { x: 200, y: 600, yDistance: -20_000, speed: 4_000, gestureSourceType: 'touch' });
  const frames = await page.evaluate(() => window.pictures);
  const gaps = frames.slice(1).map((at, i) => at - frames[i]);
  const late = gaps.filter((gap) => gap > (2.5 * 1000) / 60).length;
  return { swept: (await swept()) - before, frames: frames.length, late: late / gaps.length, longest: Math.max(...gaps) };
}

const scenes = { round: { seen: 'article', act: answers }, seed: { seen: 'listitem', act: search } };
const scene = scenes[what];
await page.goto(`${address}?fake=many#/${what}`);
await page.getByRole(scene.seen).first().waitFor();
const slow = await context.newCDPSession(page);
await slow.send('Emulation.setCPUThrottlingRate', { rate: 4 });
await scene.act();
const seen = await page.evaluate(() => window.taps);
const longest = new Map();
for (const { id, took } of seen) longest.set(id, Math.max(took, longest.get(id) ?? 0));
// One faster than the browser reports counts as its threshold.
const all = [...longest.values(), ...Array(Math.max(0, taps - longest.size)).fill(16)].sort((a, b) => a - b);
const at = (share) => all[Math.min(all.length - 1, Math.floor(all.length * share))];
const told = { taps: all.length, median: at(0.5), p98: at(0.98) };
console.log(JSON.stringify(what === 'seed' ? { ...told, scroll: await scroll(slow) } : told));
await browser.close();
await server.close();
