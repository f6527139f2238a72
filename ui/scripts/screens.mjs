// The screens that are looked at: a scene of the fake backend, an address, and
// what is pressed on the way.
const press = (name, role = 'button') => async (page) => page.getByRole(role, { name }).first().click();

export const screens = [
  { name: 'start', scene: 'choose', hash: '#/round' },
  { name: 'round', hash: '#/round' },
  { name: 'round-answered', hash: '#/round', steps: press('Moist') },
  { name: 'round-empty', scene: 'empty', hash: '#/round' },
  { name: 'round-quiet', scene: 'quiet', hash: '#/round' },
  { name: 'round-refused', scene: 'refusing', hash: '#/round', steps: press('Moist') },
  { name: 'round-broken', scene: 'broken', hash: '#/trays' },
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
  { name: 'sow-batch', hash: '#/sow', steps: (page) => page.getByRole('radio', { name: 'Without seed' }).check() },
  { name: 'sow-empty', scene: 'empty', hash: '#/sow' },
  { name: 'trays', hash: '#/trays' },
  {
    name: 'trays-past',
    hash: '#/trays',
    steps: async (page) => {
      await page.getByText('Past trays').click();
      await page.getByText('Set aside').click();
    },
  },
  { name: 'trays-empty', scene: 'empty', hash: '#/trays' },
  { name: 'tray', hash: '#/tray/t-k7' },
  { name: 'tray-cabbage', hash: '#/tray/t-k5' },
  { name: 'tray-late', hash: '#/tray/t-k2' },
  { name: 'tray-late-dig', hash: '#/tray/t-k2', steps: (page) => page.getByRole('group', { name: /^What can be done/ }).getByRole('button', { name: 'Dig up two' }).click() },
  { name: 'sow-beside', hash: '#/tray/t-k2', steps: press('Sow 9 more beside it') },
  { name: 'tray-84', hash: '#/tray/t-g9' },
  { name: 'tray-gone', hash: '#/tray/nowhere' },
  { name: 'tray-lost', hash: '#/tray/t-k5', steps: press('Lost some') },
  { name: 'tray-withdraw', hash: '#/tray/t-k7', steps: press(/^Withdraw:/) },
  { name: 'seed', hash: '#/seed' },
  { name: 'seed-add', hash: '#/seed', steps: press('Add packets') },
  { name: 'seed-empty', scene: 'empty', hash: '#/seed' },
  { name: 'settings', hash: '#/settings' },
  { name: 'settings-place', hash: '#/settings', steps: press('Add a place') },
  { name: 'settings-leave', hash: '#/settings', steps: press('Leave the demo') },
];
