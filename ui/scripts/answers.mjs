// The main answers of every screen, each made so often at four sizes of window.
import { cpus } from 'node:os';

const sizes = [
  { width: 412, height: 915 },
  { width: 360, height: 740 },
  { width: 768, height: 1024 },
  { width: 1280, height: 800 },
];
/** Any tap to its picture, ms. */
const budget = 100;

/** Comes to rest after each, so that none waits for another. */
const rest = (page) => page.waitForTimeout(300);
const the = (role, name, exact = true) => (page) => page.locator('main, footer').getByRole(role, { name, exact }).first();
/** Brings it to the middle and says where it is: the looking keeps the page busy, and is over before the tap. */
async function spotOf(what) {
  await what.evaluate((el) => el.scrollIntoView({ block: 'center' }));
  // What comes near is drawn.
  await rest(what.page());
  return what.evaluate((el) => {
    const { left, top, width, height } = el.getBoundingClientRect();
    const spot = [left + width / 2, top + height / 2];
    if (!el.contains(document.elementFromPoint(...spot))) throw new Error(`something lies over ${el.textContent}`);
    return spot;
  });
}
export const press = async (page, what) => page.touchscreen.tap(...(await spotOf(what)));
const goes = (screen) => (page) => page.evaluate((screen) => (location.hash = `#/${screen}`), screen);
const letters = 'tomato';
/** A letter, or one taken back. */
const key = async (page, turn) => {
  await page.keyboard.press(letters[turn % (2 * letters.length)] ?? 'Backspace');
};

/** What is done: on which screen, what comes before each and is not measured, what is tapped or which key is pressed. */
const answers = [
  { name: 'a button that does nothing', on: 'round', tap: (page) => page.locator('#nothing') },
  { name: 'round: feel', on: 'round', tap: the('button', 'Moist') },
  { name: 'round: undo, bring back', on: 'round', tap: the('button', /^(Undo|Bring back)$/) },
  { name: 'round: all moist', on: 'round', before: (page) => press(page, the('button', /^(Undo|Bring back)$/)(page)), tap: the('button', /^All moist/) },
  { name: 'round: one more', on: 'round', tap: the('button', 'Up now: one more') },
  { name: 'round: one fewer', on: 'round', tap: the('button', 'Up now: one fewer') },
  { name: 'to the round', on: 'trays', before: goes('trays'), tap: the('link', 'Round') },
  { name: 'to the trays', on: 'round', before: goes('round'), tap: the('link', 'Trays') },
  { name: 'to the seed box', on: 'round', before: goes('round'), tap: the('link', 'Seed') },
  { name: 'to the bench', on: 'round', before: goes('round'), tap: the('link', 'Sow') },
  { name: 'to the years', on: 'round', before: goes('round'), tap: the('link', 'Year') },
  { name: 'trays: open one', on: 'trays', before: goes('trays'), tap: the('link', /^K\d/) },
  { name: 'seed: a letter', on: 'seed', key },
  { name: 'search: a letter', on: 'search', key },
];

/** What the machine's processors have done so far: in all, and nothing. */
const machine = () => cpus().map(({ times }) => [Object.values(times).reduce((sum, ms) => sum + ms), times.idle]).reduce(([a, b], [c, d]) => [a + c, b + d]);

/** A table of all of them, or of those at the widths and with the words that SIZES and ONLY give; whether one took too long. */
export async function everywhere(opened, took, taps) {
  const { SIZES, ONLY = '' } = process.env;
  let over = false;
  for (const size of sizes.filter(({ width }) => !SIZES || SIZES.split(',').includes(String(width)))) {
    const page = await opened(size);
    await page.evaluate(() => {
      const button = document.createElement('button');
      button.id = 'nothing';
      button.textContent = 'nothing';
      document.querySelector('footer').append(button);
    });
    const browser = await page.context().newCDPSession(page);
    await browser.send('Performance.enable');
    /** What the page did so far, s. */
    const did = async () => {
      const { metrics } = await browser.send('Performance.getMetrics');
      const of = (name) => metrics.find((it) => it.name === name)?.value ?? 0;
      return [of('ScriptDuration'), of('RecalcStyleDuration'), of('LayoutDuration')];
    };
    // What is drawn late is there before the first tap.
    await page.waitForTimeout(3000);
    console.log(`${size.width} x ${size.height}, ms: median and 98th percentile of ${taps}; on the mean script, style, layout; how much of the machine was idle`);
    for (const answer of answers.filter(({ name }) => name.includes(ONLY))) {
      await goes(answer.on)(page);
      await rest(page);
      if (answer.key) await page.getByRole('searchbox').fill('');
      const all = [];
      const worked = [0, 0, 0];
      const from = machine();
      for (let turn = 0; turn < taps; turn += 1) {
        if (answer.before) {
          await answer.before(page).catch(() => undefined);
          // A long round is drawn to its end before the next tap.
          await page.waitForTimeout(1200);
        }
        const spot = answer.tap ? await spotOf(answer.tap(page)) : await page.getByRole('searchbox').focus();
        await rest(page);
        await took(page);
        const before = await did();
        if (spot) await page.touchscreen.tap(...spot);
        else await answer.key(page, turn);
        await rest(page);
        for (const [kind, sum] of (await did()).entries()) worked[kind] += ((sum - before[kind]) * 1000) / taps;
        all.push((await took(page, 1)).p98);
      }
      all.sort((a, b) => a - b);
      const [median, p98] = [all[Math.floor(all.length / 2)], all[Math.min(all.length - 1, Math.floor(all.length * 0.98))]];
      over ||= p98 > budget;
      const [passed, idle] = machine().map((ms, i) => ms - from[i]);
      console.log(`${String(median).padStart(6)} ${String(p98).padStart(6)}${p98 > budget ? ' OVER' : '     '}  ${worked.map((ms) => ms.toFixed(0).padStart(5)).join('')} ${((idle / passed) * 100).toFixed(0).padStart(5)} %  ${answer.name}`);
    }
    await page.context().close();
  }
  return over;
}
