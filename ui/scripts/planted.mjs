// A screen into which faults are put, and what has to be said of each.
const plant = (page) =>
  page.evaluate(() => {
    const main = document.querySelector('main');
    const put = (tag, words, style) => {
      const el = document.createElement(tag);
      el.textContent = words;
      for (const [name, value] of Object.entries(style)) el.style.setProperty(name, value, 'important');
      main.append(el);
    };
    put('div', 'wide', { width: '1400px' });
    put('button', 'over', { width: '90px', height: '60px' });
    put('button', 'under', { width: '90px', height: '60px', 'margin-left': '-40px' });
    put('button', 'small', { width: '30px', height: '60px' });
    put('button', '', { width: '60px', height: '60px' });
    put('button', 'Longwordatlarge', { width: '200px', height: '90px', 'white-space': 'nowrap' });
    put('h2', 'Wordtoolong', { width: '60px' });
    put('p', 'Narrowly', { width: '30px', 'overflow-wrap': 'anywhere' });
    put('p', 'pale in the dark', { color: 'light-dark(#000, #333)' });
    put('p', 'moving', { transition: 'opacity 1s' });
  });

/** Something that comes late, above what is there. */
const late = async (page) => {
  await page.getByRole('link', { name: 'K7' }).first().waitFor();
  await page.evaluate(() => {
    const el = document.createElement('p');
    el.textContent = 'late';
    document.querySelector('main').prepend(el);
  });
};

export const planted = {
  name: 'planted',
  hash: '#/round',
  early: late,
  steps: plant,
  faults: [
    ...['light', '360', '768', '1280', 'large', 'small-large'].flatMap((mode) => [
      new RegExp(`^${mode}: sideways scroll in MAIN`),
      new RegExp(`^${mode}: overlap button “over” and button “under”`),
      new RegExp(`^${mode}: small target button “small”: 30 x 60`),
    ]),
    /^light: axe button-name/,
    /^light: moves: p/,
    /^light: moved div “Round /,
    /^light: a word is parted: Wordtoolong/,
    /^light: a word is parted: Narrowly/,
    /^dark: axe color-contrast/,
    /^large: text runs out of button “Longwordatlarge”/,
  ],
};
