import { screen, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { open } from './open';

const choices = async () => within(await screen.findByRole('list', { name: 'What can be done about Aubergine ‘Dusk’' }));

it('says the verdict once, with the advised choice first', async () => {
  await open('#/tray/t-k2');
  const group = await choices();
  expect(screen.getAllByText(/^Nothing more is likely/)).toHaveLength(1);
  expect(group.getAllByRole('button').map((b) => b.textContent?.trim())).toEqual([
    'Dig up two',
    'Sow 9 more beside it',
    'Sow 7 of aubergine ‘Early Moon’ 2026',
    'Sow another packet',
    'Move to Kitchen sill',
    'Wait until Sunday 19 April',
    'Give it up',
  ]);
});

it('says what each choice would give', async () => {
  await open('#/tray/t-k2');
  const given = (await choices()).getAllByRole('listitem').map((item) => item.querySelector('p')?.textContent ?? '');
  expect(given.filter((text) => /\d/.test(text))).toHaveLength(6);
});

it('takes what was found in one tap', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: 'Dig up two' }));
  expect(screen.getByText(/about 6 in 10/)).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'One firm, one soft' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'dig_up', sowing: 's-aub', firm: 1, soft: 1 });
});

it('takes a better packet, with the number it wants', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: /Early Moon/ }));
  expect(await screen.findByRole('spinbutton', { name: 'Seeds' })).toHaveValue(7);
  await user.click(screen.getByRole('button', { name: 'Save the sowing' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'sow', packet: 'p-pepper', seeds: { as: 'exact', number: 7 }, again_of: 's-aub' });
});

it('shows the grower’s own reason beside ours, and takes it changed', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  expect(await screen.findByText('Eaten and too cold.')).toBeVisible();
  expect(screen.getByText(/two cells were scratched open/)).toBeVisible();
  await user.click(screen.getByRole('button', { name: 'Change what you say' }));
  await user.click(screen.getByRole('checkbox', { name: 'Too cold' }));
  await user.click(screen.getByRole('checkbox', { name: 'Spilt or knocked over' }));
  await user.click(screen.getByRole('button', { name: 'Write down' }));
  expect(backend.requests[0]?.act).toEqual({
    do: 'explain', sowing: 's-aub', causes: ['eaten', 'spilt'], text: 'Mice, I think: two cells were scratched open.',
  });
});

it('takes seeds lost before anything came up', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click(await screen.findByRole('button', { name: 'Seeds lost' }));
  await user.click(screen.getByRole('button', { name: 'Write down' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'seeds_lost', sowing: 's-aub', number: 6, cause: 'eaten' });
});

it('waits until the day that was named', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: /^Wait/ }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'put_off', until: { as: 'day', day: '2026-04-19' } });
  expect(backend.requests[0]?.act).toHaveProperty('job', expect.stringContaining('it_is_late'));
});

it('moves it to the place that was named', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: /^Move/ }));
  expect(backend.requests[0]?.act).toEqual({ do: 'move', trays: ['t-k2'], place: 'sill' });
});

it('takes firm and soft seeds', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: 'Dig up two' }));
  await user.click(screen.getByRole('button', { name: 'Soft: one more' }));
  await user.click(screen.getByRole('button', { name: 'Soft: one more' }));
  await user.click(screen.getByRole('button', { name: 'Write down' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'dig_up', sowing: 's-aub', firm: 0, soft: 2 });
});

it('gives it up', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: 'Give it up' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'nothing_came_up', sowing: 's-aub' });
});

it('fills in the bench to sow more beside it, tied to the old sowing', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: 'Sow 9 more beside it' }));
  expect(await screen.findByRole('spinbutton', { name: 'Seeds' })).toHaveValue(9);
  expect(screen.getByRole('spinbutton', { name: 'Plants wanted' })).toHaveValue(5);
  await user.click(screen.getByRole('button', { name: 'Save the sowing' }));
  expect(backend.requests[0]?.act).toMatchObject({
    do: 'sow',
    packet: 'p-aub',
    seeds: { as: 'exact', number: 9 },
    wanted: 5,
    again_of: 's-aub',
  });
});

it('asks for another packet where this one is not worth it', async () => {
  const { backend, user } = await open('#/tray/t-k2');
  await user.click((await choices()).getByRole('button', { name: 'Sow another packet' }));
  await user.click(await screen.findByRole('button', { name: /^Pepper/ }));
  await user.click(await screen.findByRole('button', { name: 'Save the sowing' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'sow', packet: 'p-pepper', wanted: 5, again_of: 's-aub' });
});

it('shows a verdict on the page before the job is due, without putting off', async () => {
  await open('#/tray/t-k7');
  const group = within(await screen.findByRole('list', { name: 'What can be done about Tomato ‘Amber Lantern’' }));
  expect(group.queryByRole('button', { name: /^Wait/ })).toBeNull();
  expect(group.getByRole('button', { name: 'Dig up two' })).toBeVisible();
});

it('says why it did badly, with facts and what to try', async () => {
  await open('#/tray/t-k2');
  const why = within(await screen.findByRole('region', { name: 'Why Aubergine ‘Dusk’ did badly' }));
  expect(why.getAllByRole('heading').map((h) => h.textContent)).toEqual([
    'Likely old seed: that may have cost about 3 seedlings.',
    'Possibly dried out: that may have cost about one seedling.',
  ]);
  expect(why.getByText('Once not felt for 6 days.')).toBeVisible();
  expect(why.getByText(/fair trial/)).toBeVisible();
});

it('shows what came up of a packet so far', async () => {
  await open('#/packet/p-tomato');
  expect(await screen.findByText('Your own 2 sowings: 14 of 18')).toBeVisible();
  await open('#/sow/p-tomato');
  expect((await screen.findAllByText('Your own 2 sowings: 14 of 18')).length).toBeGreaterThan(0);
});
