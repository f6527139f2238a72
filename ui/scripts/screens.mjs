// The screens that are looked at: a scene of the fake backend, an address, and
// what is pressed on the way.
const press = (name, role = 'button') => async (page) => page.getByRole(role, { name }).first().click();

const sought = (typed) => async (page) => {
  await page.getByRole('searchbox').fill(typed);
  await page.getByRole('status').filter({ hasText: /Found|Nothing/ }).waitFor();
};

export const screens = [
  { name: 'start', scene: 'choose', hash: '#/round' },
  { name: 'round', hash: '#/round' },
  { name: 'tour-round', scene: 'tour', hash: '#/round', steps: (page) => page.getByRole('button', { name: 'Not now' }).waitFor() },
  { name: 'tour-tray', scene: 'tour', hash: '#/tray/t-k7', steps: (page) => page.getByRole('button', { name: 'Not now' }).waitFor() },
  { name: 'round-many', scene: 'many', hash: '#/round' },
  { name: 'round-answered', hash: '#/round', steps: press('Moist') },
  { name: 'round-empty', scene: 'empty', hash: '#/round' },
  { name: 'round-quiet', scene: 'quiet', hash: '#/round' },
  { name: 'round-refused', scene: 'refusing', hash: '#/round', steps: press('Moist') },
  { name: 'round-broken', scene: 'broken', hash: '#/trays' },
  { name: 'round-growing', scene: 'growing', hash: '#/round' },
  { name: 'round-later', hash: '#/round', steps: press('Later: into the light') },
  { name: 'round-earlier', hash: '#/round', steps: press('Writing down something earlier?') },
  { name: 'round-read', hash: '#/round', steps: press('Read') },
  { name: 'round-heat-off', hash: '#/round', steps: press('Heat off') },
  { name: 'round-prick-out', hash: '#/round', steps: press(/^Prick out$/) },
  {
    name: 'round-asks-first',
    hash: '#/round',
    steps: async (page) => {
      await page.getByRole('spinbutton', { name: 'Up now' }).first().fill('70');
      await page.getByRole('button', { name: 'Count' }).first().click();
    },
  },
  { name: 'round-season', scene: 'season', hash: '#/round' },
  { name: 'round-night', scene: 'season', hash: '#/round', steps: press('Tonight’s low') },
  { name: 'round-heat-back', scene: 'season', hash: '#/round', steps: press('Heat back on') },
  { name: 'paper-away', hash: '#/paper/away' },
  { name: 'paper-away-empty', scene: 'empty', hash: '#/paper/away' },
  { name: 'paper-round', scene: 'season', hash: '#/paper/round' },
  { name: 'settings-away', scene: 'season', hash: '#/settings' },
  {
    name: 'settings-frost',
    hash: '#/settings',
    steps: async (page) => {
      const file = { name: 'minima.csv', mimeType: 'text/csv', buffer: Buffer.from('2015-01-01,-1.0\n') };
      await page.getByLabel('Record of daily minima').setInputFiles(file);
      await page.getByText(/days were read/).scrollIntoViewIfNeeded();
      await page.getByText('One line could not be read').click();
    },
  },
  { name: 'sow', hash: '#/sow' },
  { name: 'sow-chosen', hash: '#/sow', steps: press(/Tomato/) },
  { name: 'sow-unknown-crop', hash: '#/sow/p-sal' },
  {
    name: 'sow-saved',
    hash: '#/sow/p-tomato',
    steps: async (page) => {
      await page.getByRole('button', { name: 'Save the sowing' }).click();
      await page.getByText('It is in the journal').waitFor();
    },
  },
  {
    name: 'sow-84-cells',
    hash: '#/sow/p-tomato',
    steps: async (page) => {
      await page.getByLabel('Kind').selectOption('cells-84');
      await page.getByRole('button', { name: 'Row 2, all its cells' }).click();
    },
  },
  {
    name: 'sow-84-zoomed',
    hash: '#/sow/p-tomato',
    steps: async (page) => {
      await page.getByLabel('Kind').selectOption('cells-84');
      await page.getByRole('button', { name: 'Larger cells' }).click();
      await page.getByRole('gridcell', { name: 'Row 5, cell 3' }).click();
    },
  },
  {
    name: 'sow-84-whole',
    hash: '#/sow/p-tomato',
    steps: async (page) => {
      await page.getByLabel('Kind').selectOption('cells-84');
      await page.getByRole('button', { name: 'Smaller cells' }).click();
    },
  },
  {
    name: 'sow-many-all',
    scene: 'many',
    hash: '#/sow',
    steps: press(/^All \d+ packets/),
  },
  { name: 'sow-long-chosen', scene: 'long', hash: '#/sow/p-tomato' },
  { name: 'sow-left-packets', scene: 'left', hash: '#/sow' },
  { name: 'sow-left', scene: 'left', hash: '#/sow/p-tomato' },
  { name: 'sow-inches', scene: 'inches', hash: '#/sow/p-tomato' },
  { name: 'sow-one', scene: 'one', hash: '#/sow' },
  {
    name: 'sow-many',
    scene: 'many',
    hash: '#/sow',
    steps: (page) => page.getByRole('searchbox').fill('letuce row'),
  },
  { name: 'sow-long', scene: 'long', hash: '#/sow' },
  {
    name: 'sow-long-saved',
    scene: 'long',
    hash: '#/sow/p-tomato',
    steps: async (page) => {
      await page.getByRole('button', { name: 'Save the sowing' }).click();
      await page.getByText('It is in the journal').waitFor();
    },
  },
  { name: 'sow-warnings', scene: 'warnings', hash: '#/sow/p-tomato' },
  {
    name: 'sow-warnings-tray',
    scene: 'warnings',
    hash: '#/sow/p-let',
    steps: async (page) => {
      await page.getByLabel('Compost').selectOption('garden_soil');
      await page.getByRole('button', { name: 'Deeper' }).click();
      await page.getByRole('button', { name: 'Deeper' }).click();
      await page.getByRole('button', { name: 'Deeper' }).click();
      await page.getByText('The order of work').click();
    },
  },
  {
    name: 'sow-existing',
    scene: 'warnings',
    hash: '#/sow/p-tomato',
    steps: (page) => page.getByRole('combobox', { name: 'Tray' }).selectOption('t-a4'),
  },
  { name: 'sow-another-day', hash: '#/sow/p-tomato', steps: (page) => page.getByRole('radio', { name: 'Another day' }).check() },
  { name: 'sow-batch', hash: '#/sow', steps: (page) => page.getByRole('radio', { name: 'Without seed' }).check() },
  { name: 'sow-empty', scene: 'empty', hash: '#/sow' },
  { name: 'trays', hash: '#/trays' },
  { name: 'trays-many', scene: 'many', hash: '#/trays' },
  {
    name: 'trays-past',
    hash: '#/trays',
    steps: async (page) => {
      await page.getByText('Past trays').click();
      await page.getByText('2025 (2)').click();
      await page.getByText('Set aside').click();
    },
  },
  {
    name: 'trays-narrowed',
    hash: '#/trays',
    steps: async (page) => {
      await page.getByRole('combobox', { name: 'Plant' }).selectOption('tomato');
      await page.getByRole('checkbox', { name: 'Only what needs something' }).check();
    },
  },
  { name: 'search', hash: '#/search' },
  { name: 'search-found', hash: '#/search', steps: sought('tomato') },
  { name: 'search-many', scene: 'many', hash: '#/search', steps: sought('tomato') },
  { name: 'search-none', hash: '#/search', steps: sought('marrow') },
  { name: 'trays-empty', scene: 'empty', hash: '#/trays' },
  { name: 'tray', hash: '#/tray/t-k7' },
  { name: 'tray-cabbage', hash: '#/tray/t-k5' },
  { name: 'tray-late', hash: '#/tray/t-k2' },
  { name: 'tray-late-dig', hash: '#/tray/t-k2', steps: (page) => page.getByRole('list', { name: /^What can be done/ }).getByRole('button', { name: 'Dig up two' }).click() },
  { name: 'tray-own-reason', hash: '#/tray/t-k2', steps: press('Change what you say') },
  { name: 'tray-seeds-lost', hash: '#/tray/t-k2', steps: press('Seeds lost') },
  { name: 'sow-beside', hash: '#/tray/t-k2', steps: press('Sow 9 more beside it') },
  { name: 'tray-84', hash: '#/tray/t-g9' },
  { name: 'tray-plants-photo', hash: '#/tray/t-k5', steps: (page) => page.getByText(/^Photograph /).first().click() },
  { name: 'tray-photo', hash: '#/tray/t-k7', steps: press(/^Photo of/) },
  { name: 'tray-photo-larger', hash: '#/tray/t-k7', steps: async (page) => (await press(/^Photo of/)(page), await press('Larger')(page)) },
  {
    name: 'tray-photo-missing',
    hash: '#/tray/t-k7',
    steps: async (page) => {
      await press(/^Photo of/)(page);
      await press('Next photo')(page);
      await press('Next photo')(page);
    },
  },
  {
    name: 'tray-photo-refused',
    hash: '#/tray/t-k7',
    steps: async (page) => {
      await page.getByLabel('Choose a photo', { exact: true }).setInputFiles({ name: 'leaf.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(0) });
      await page.getByText('That file is empty').waitFor();
    },
  },
  { name: 'trays-name-photo', hash: '#/trays', steps: press(/^Name it: the photo/) },
  { name: 'labels', hash: '#/labels/t-k7' },
  {
    name: 'labels-own-size',
    hash: '#/labels',
    steps: async (page) => {
      await page.getByRole('button', { name: 'All of them' }).click();
      await page.getByLabel('Size of a label').selectOption('own');
      await page.getByLabel('Lines to cut along').check();
      await page.getByRole('button', { name: 'Save as PDF' }).click();
      await page.getByText('Saved.').waitFor();
    },
  },
  { name: 'labels-empty', scene: 'empty', hash: '#/labels' },
  {
    name: 'find-unknown',
    hash: '#/find',
    steps: async (page) => {
      await page.getByLabel('Code on the label').fill('Z99');
      await page.getByRole('button', { name: 'Find', exact: true }).click();
      await page.getByText('No tray here has the code Z99.').waitFor();
    },
  },
  { name: 'find-lost', hash: '#/find', steps: (page) => page.getByLabel('Where it stands').selectOption({ index: 1 }) },
  {
    name: 'find-not-read',
    hash: '#/find',
    steps: async (page) => {
      await page.getByLabel('Choose a photo of it').setInputFiles({ name: 'label.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(0) });
      await page.getByText('No square code could be read').waitFor();
    },
  },
  { name: 'tray-gone', hash: '#/tray/nowhere' },
  { name: 'tray-lost', hash: '#/tray/t-k5', steps: press('Lost some') },
  { name: 'tray-fix', hash: '#/tray/t-k7', steps: press(/^Correct: Sown/) },
  { name: 'tray-withdraw', hash: '#/tray/t-k7', steps: press(/^Withdraw:/) },
  { name: 'seed', hash: '#/seed' },
  { name: 'seed-add', hash: '#/seed', steps: press('Add packets') },
  { name: 'seed-empty', scene: 'empty', hash: '#/seed' },
  { name: 'seed-one', scene: 'one', hash: '#/seed' },
  { name: 'seed-many', scene: 'many', hash: '#/seed' },
  { name: 'seed-many-end', scene: 'many', hash: '#/seed', steps: (page) => page.locator('main li').last().scrollIntoViewIfNeeded() },
  {
    name: 'seed-many-found',
    scene: 'many',
    hash: '#/seed',
    steps: (page) => page.getByRole('searchbox').fill('tomtao lantern 7'),
  },
  { name: 'seed-none-found', hash: '#/seed', steps: (page) => page.getByRole('searchbox').fill('quince') },
  { name: 'seed-long', scene: 'long', hash: '#/seed' },
  { name: 'seed-left', scene: 'left', hash: '#/seed' },
  { name: 'seed-now', hash: '#/seed/now' },
  { name: 'seed-now-empty', scene: 'empty', hash: '#/seed/now' },
  { name: 'seed-now-long', scene: 'long', hash: '#/seed/now' },
  { name: 'seed-now-left', scene: 'left', hash: '#/seed/now' },
  { name: 'seed-buy-left', scene: 'left', hash: '#/seed/buy' },
  { name: 'seed-buy', hash: '#/seed/buy' },
  { name: 'seed-buy-empty', scene: 'empty', hash: '#/seed/buy' },
  { name: 'seed-stocktake', hash: '#/seed/stocktake' },
  { name: 'seed-stocktake-long', scene: 'long', hash: '#/seed/stocktake' },
  { name: 'seed-stocktake-done', scene: 'one', hash: '#/seed/stocktake' },
  { name: 'seed-import', hash: '#/seed/import' },
  {
    name: 'seed-import-read',
    scene: 'long',
    hash: '#/seed/import',
    steps: async (page) => {
      await page.locator('input[type=file]').setInputFiles({ name: 'packets.csv', mimeType: 'text/csv', buffer: Buffer.from('Plant') });
      await page.getByText('lines cannot be read').waitFor();
    },
  },
  { name: 'packet', hash: '#/packet/p-cab' },
  { name: 'packet-photos', hash: '#/packet/p-tomato' },
  { name: 'packet-photo', hash: '#/packet/p-tomato', steps: press(/^Photo of/) },
  { name: 'packet-long', scene: 'long', hash: '#/packet/p-aub' },
  { name: 'packet-left', scene: 'left', hash: '#/packet/p-aub' },
  { name: 'packet-testing', hash: '#/packet/p-aub' },
  { name: 'packet-edit', hash: '#/packet/p-cab', steps: press('Change') },
  { name: 'packet-test', hash: '#/packet/p-cab', steps: press('Start a germination test') },
  { name: 'packet-count', hash: '#/packet/p-cab', steps: press('Count seeds left') },
  { name: 'packet-save-seed', hash: '#/packet/p-let', steps: press('Save seed of it') },
  { name: 'packet-gone', hash: '#/packet/nowhere' },
  { name: 'year', hash: '#/year' },
  { name: 'year-a-plan', hash: '#/year/plan-late' },
  {
    name: 'year-compared',
    hash: '#/year',
    steps: async (page) => {
      await page.getByLabel('First').selectOption({ index: 1 });
      await page.getByLabel('Second').selectOption({ index: 2 });
    },
  },
  { name: 'year-empty', scene: 'empty', hash: '#/year' },
  { name: 'year-plan', hash: '#/year', steps: press('Make a plan') },
  {
    name: 'year-plan-again',
    hash: '#/year',
    steps: async (page) => {
      await page.getByRole('button', { name: /^Change.*Spinach/ }).click();
    },
  },
  {
    name: 'year-windows-table',
    hash: '#/year',
    steps: async (page) => {
      await page.getByText('The same as a table').first().click();
    },
  },
  { name: 'year-keep', hash: '#/year', steps: press('Keep plants for somebody') },
  { name: 'year-hand-over', hash: '#/year', steps: press(/^Hand over/) },
  { name: 'round-planned', scene: 'planned', hash: '#/round' },
  { name: 'sow-for-plan', scene: 'planned', hash: '#/round', steps: press('Sow now') },
  { name: 'settings', hash: '#/settings' },
  { name: 'settings-refused', scene: 'refusing', hash: '#/settings' },
  { name: 'settings-place', hash: '#/settings', steps: press('Add a place') },
  { name: 'start-file', scene: 'choose', hash: '#/round', steps: async (page) => {
    await page.getByRole('button', { name: 'I have a file' }).click();
    await page.getByRole('button', { name: 'Choose a file' }).click();
    await page.getByText('57 of 57 photos verified').waitFor();
  } },
  { name: 'damaged', scene: 'damaged', hash: '#/round', steps: (page) => page.getByText('In all, 1,283').waitFor() },
  { name: 'keep', scene: 'keep', hash: '#/keep' },
  { name: 'round-newer', scene: 'newer', hash: '#/round' },
  { name: 'keep-demo', hash: '#/keep' },
  { name: 'keep-working', scene: 'working', hash: '#/keep', steps: press('Check now') },
  { name: 'keep-checked', scene: 'keep', hash: '#/keep', steps: async (page) => {
    await page.getByRole('button', { name: 'Check now' }).click();
    await page.getByText('One thing is not as it should be').waitFor();
  } },
  { name: 'keep-inside', scene: 'keep', hash: '#/keep', steps: async (page) => {
    await page.getByRole('button', { name: /^What is inside/ }).first().click();
    await page.getByRole('button', { name: 'Restore this' }).waitFor();
  } },
  { name: 'keep-brings', scene: 'keep', hash: '#/keep', steps: async (page) => {
    await page.getByRole('button', { name: 'Choose a file' }).first().click();
    await page.getByRole('button', { name: 'Take it in' }).waitFor();
  } },
  { name: 'keep-move', scene: 'keep', hash: '#/keep', steps: (page) => page.getByText('Step by step').click() },
  { name: 'settings-leave', hash: '#/settings', steps: press('Leave the demo') },
  // In the other languages.
  ...['en-US', 'de'].flatMap((language) =>
    [['round', '#/round'], ['sow', '#/sow/p-tomato'], ['tray', '#/tray/t-k5'], ['seed', '#/seed'], ['seed-buy', '#/seed/buy'], ['year', '#/year'], ['settings', '#/settings']].map(([name, hash]) => ({
      name: `${language}-${name}`,
      language,
      hash,
    })),
  ),
  { name: 'de-answered', language: 'de', hash: '#/round', steps: press('Feucht') },
];
