import { screen, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { open } from './open';

it('takes leggy or sturdy for an answer', async () => {
  const { backend, user } = await open('#/round', 'growing');
  await user.click(await screen.findByRole('button', { name: 'Long and thin' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'notice', plants: { type: 'sowing', id: 's-let' }, sight: 'leggy' });
});

it('feeds a tray and empties one, a tap each', async () => {
  const { backend, user } = await open('#/round', 'growing');
  await user.click(await screen.findByRole('button', { name: 'Fed' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'feed', tray: 't-h3' });
  await user.click(screen.getByRole('button', { name: 'Empty it' }));
  expect(backend.requests[1]?.act).toEqual({ do: 'empty', tray: 't-k5' });
});

it('shows a tray that stands nowhere, to be given its place', async () => {
  const { backend, user } = await open('#/round', 'growing');
  const nowhere = within(await screen.findByRole('region', { name: 'Trays without a place' }));
  const places = await nowhere.findAllByRole('button', { name: /sill/ });
  await user.click(places[0] as HTMLElement);
  expect(backend.requests[0]?.act).toMatchObject({ do: 'move', trays: ['t-k9'] });
});

it('offers a lamp for a mixed tray, with the caution', async () => {
  const { backend, user } = await open('#/round');
  expect((await screen.findAllByText(/protected socket/)).length).toBeGreaterThan(0);
  await user.click(screen.getByRole('button', { name: 'A lamp hangs over it' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'dismiss' });
});
