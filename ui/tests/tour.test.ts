import { screen, waitFor, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { FakeBackend } from '../src/backend/fake';
import { open } from './open';

const strip = () => screen.findByRole('complementary', { name: 'A short tour' });
const gone = () => waitFor(() => expect(screen.queryByRole('complementary')).toBeNull());
const kept = (backend: FakeBackend) => JSON.parse(backend.drafts.get('tour') ?? 'null') as unknown;

it('goes from screen to screen beside the work, and tells of each once', async () => {
  const { backend, user } = await open('#/round', 'tour');
  for (const [head, next, hash] of [
    ['The round, 1 of 5', 'Next: At the bench', '#/sow'],
    ['At the bench, 2 of 5', 'Next: A tray’s page', '#/tray/t-k2'],
    ['A tray’s page, 3 of 5', 'Next: The seed box', '#/seed'],
    ['The seed box, 4 of 5', 'Next: The years', '#/year'],
  ] as const) {
    await within(await strip()).findByRole('heading', { name: head });
    await user.click(await screen.findByRole('button', { name: next }));
    await waitFor(() => expect(location.hash).toBe(hash));
  }
  await within(await strip()).findByRole('heading', { name: 'The years, 5 of 5' });
  await screen.findByRole('heading', { level: 1, name: 'The years' });
  await user.click(screen.getByRole('button', { name: 'That is all' }));
  await gone();
  expect(screen.getByRole('heading', { level: 1 })).toHaveFocus();
  expect(kept(backend)).toEqual({ off: false, seen: ['round', 'sow', 'tray', 'seed', 'year'] });
  // Of the work itself nothing was written.
  expect(backend.requests).toEqual([]);
});

it('stands in nobody’s way: the round is answered while it is there', async () => {
  const { backend, user } = await open('#/round', 'tour');
  await strip();
  await user.click((await screen.findAllByRole('button', { name: 'Moist' }))[0] as HTMLElement);
  expect(backend.requests[0]?.act).toMatchObject({ do: 'feel', feel: 'moist' });
  expect(await strip()).toBeVisible();
});

it('is told of when the screen was left without an answer, and then no more', async () => {
  const { backend, session, user } = await open('#/round', 'tour');
  await strip();
  await user.click(screen.getByRole('link', { name: 'Seed' }));
  await within(await strip()).findByRole('heading', { name: 'The seed box, 4 of 5' });
  expect(kept(backend)).toEqual({ off: false, seen: ['round'] });
  session.router.go('round');
  await screen.findByRole('heading', { level: 1, name: 'Round' });
  await gone();
});

it('comes back another time after “Not now”, and never after “No tour”', async () => {
  const { backend, user } = await open('#/round', 'tour');
  await user.click(within(await strip()).getByRole('button', { name: 'Not now' }));
  await gone();
  expect(screen.getByRole('heading', { level: 1 })).toHaveFocus();
  expect(kept(backend)).toBeNull();
  await user.click(screen.getByRole('link', { name: 'Sow' }));
  await screen.findByRole('heading', { name: 'Which packet?' });
  expect(screen.queryByRole('complementary')).toBeNull();
  expect(kept(backend)).toBeNull();
});

it('is turned off for good, and brought back from the settings', async () => {
  const { backend, user } = await open('#/round', 'tour');
  await user.click(within(await strip()).getByRole('button', { name: 'No tour' }));
  await gone();
  expect(kept(backend)).toEqual({ off: true, seen: [] });
  location.hash = '#/settings';
  await user.click(await screen.findByRole('button', { name: 'Show the short tour again' }));
  await within(await strip()).findByRole('heading', { name: 'The round, 1 of 5' });
  expect(location.hash).toBe('#/round');
  expect(kept(backend)).toEqual({ off: false, seen: [] });
});

it('has no page of a tray to show where there is no tray', async () => {
  const { backend } = await open('#/sow', 'tour');
  backend.trays = async () => ({ places: [], nowhere: [], set_aside: [], past: [] });
  location.hash = '#/round';
  await screen.findByRole('heading', { level: 1, name: 'Round' });
  // The bench was told of when it was left.
  expect(await within(await strip()).findByRole('button', { name: 'Next: The seed box' })).toBeVisible();
});
