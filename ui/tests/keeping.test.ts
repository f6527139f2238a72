import { screen, waitFor, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { open } from './open';

const section = async (name: string) => within((await screen.findByRole('heading', { name })).closest('section') as HTMLElement);

it('looks inside a backup before it is restored', async () => {
  const { backend, user } = await open('#/keep', 'keep');
  const look = await screen.findAllByRole('button', { name: /^What is inside:/ });
  expect(look).toHaveLength(4);
  await user.click(look[1] as HTMLElement);
  const sheet = within(await screen.findByRole('dialog'));
  expect(sheet.getByText('57 of 57 photos verified')).toBeVisible();
  await user.click(sheet.getByRole('button', { name: 'Restore this' }));
  await screen.findByRole('heading', { name: 'Round' });
  expect(backend.tasks).toEqual([
    { work: 'look_inside', backup: '2026-04-15.db' },
    { work: 'restore', backup: '2026-04-15.db' },
  ]);
});

it('saves under a passphrase, and takes in what a file brings', async () => {
  const { backend, user } = await open('#/keep', 'keep');
  const save = await section('Save all to one file');
  await user.click(save.getByRole('checkbox', { name: 'Under a passphrase' }));
  await user.type(save.getByLabelText('Passphrase'), 'three wet leaves');
  await user.click(save.getByRole('button', { name: 'Save to a file' }));
  expect(await save.findByText('Saved and read back.')).toBeVisible();
  const take = await section("Take in another device's file");
  await user.click(take.getByRole('button', { name: 'Choose a file' }));
  expect(await take.findByText('31 new entries')).toBeVisible();
  await user.click(take.getByRole('button', { name: 'Take it in' }));
  expect(await take.findByText('Taken in.')).toBeVisible();
  expect(backend.tasks).toEqual([
    { work: 'save_archive', passphrase: 'three wet leaves' },
    { work: 'preview_archive', passphrase: null },
    { work: 'take_in_archive', passphrase: null },
  ]);
});

it('shows how far long work is, and calls it off', async () => {
  const { backend, user } = await open('#/keep', 'working');
  const check = await section('Check the journal');
  await user.click(check.getByRole('button', { name: 'Check now' }));
  expect(await check.findByText('Looking at the photos')).toBeVisible();
  expect(check.getByRole('progressbar', { name: 'How far it is' })).toHaveValue(0.4);
  expect(screen.getByRole('button', { name: 'Back up now' })).toBeDisabled();
  await user.click(check.getByRole('button', { name: 'Call it off' }));
  expect(backend.cancelled).toBe(true);
});

it('says what of a damaged journal can be saved, and brings it back', async () => {
  const { backend, user } = await open('#/round', 'damaged');
  expect(screen.getByRole('heading', { name: 'The journal is damaged' })).toBeVisible();
  expect(await screen.findByText(/^It lacks 43 entries/)).toBeVisible();
  expect(screen.getByText(/with 1,240 entries/)).toBeVisible();
  expect(screen.queryByRole('navigation')).toBeNull();
  await user.click(screen.getByRole('button', { name: 'Bring the journal back' }));
  expect(await screen.findByText('The journal is back.')).toBeVisible();
  expect(backend.tasks.map((t) => t.work)).toEqual(['look_over', 'recover']);
});

it('saves parts for other programs', async () => {
  const { backend, user } = await open('#/keep', 'keep');
  const parts = await section('For other programs');
  await user.click(parts.getByRole('button', { name: 'What is due, for a calendar' }));
  await waitFor(() => expect(parts.getByText('Saved.')).toBeVisible());
  expect(backend.exported).toEqual(['calendar']);
});
