import { screen, waitFor, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { FakeBackend } from '../src/backend/fake';
import { open } from './open';

/** Holds back what is asked of it until it is let go. */
function hold<T extends 'notices' | 'act'>(backend: FakeBackend, name: T): () => void {
  const held: (() => void)[] = [];
  const now = backend[name] as (...asked: unknown[]) => Promise<unknown>;
  Object.assign(backend, { [name]: (...asked: unknown[]) => new Promise<void>((go) => held.push(go)).then(() => now(...asked)) });
  return () => held.splice(0).forEach((go) => go());
}
const busy = () => screen.getByRole('heading', { level: 1 }).closest('[aria-busy]')?.getAttribute('aria-busy');

it('shows a screen once all its parts are there, and not before', async () => {
  const { backend, session } = await open();
  const come = hold(backend, 'notices');
  session.router.go('settings');
  // All else is there by then.
  await screen.findByRole('heading', { name: 'Rounds and the garden' });
  await new Promise((go) => setTimeout(go, 50));
  expect(busy()).toBe('true');
  come();
  await waitFor(() => expect(busy()).toBe('false'));
});

it('does not keep the round waiting for what stands under it', async () => {
  const { backend, session } = await open('#/year');
  hold(backend, 'notices');
  session.router.go('round');
  await screen.findByRole('link', { name: /^K7/ });
  await waitFor(() => expect(busy()).toBe('false'));
});

it('shows which answer was pressed before anything comes of it, and takes no other', async () => {
  const { backend, user } = await open();
  const come = hold(backend, 'act');
  const card = (await screen.findByRole('link', { name: /^K2/ })).closest('article') as HTMLElement;
  await user.click(within(card).getByRole('button', { name: 'Moist' }));
  expect(within(card).getByRole('button', { name: 'Moist' })).toHaveClass('pressed');
  expect(within(card).getByRole('button', { name: 'Dry' })).not.toHaveClass('pressed');
  expect(within(card).getByRole('button', { name: 'Dry' })).toBeDisabled();
  come();
  await waitFor(() => expect(within(card).queryByRole('button', { name: 'Moist' })).toBeNull());
});

it('draws what follows from an answer after the picture in which it is seen to be pressed', async () => {
  const { session } = await open();
  await session.words.loadLater();
  const written = session.act({ do: 'feel', trays: ['t-k2'], feel: 'moist', water: null });
  let drawn = false;
  requestAnimationFrame(() => (drawn = true));
  await written;
  expect(drawn).toBe(true);
});
