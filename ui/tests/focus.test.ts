import { screen, waitFor, within } from '@testing-library/svelte';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { open } from './open';

/** Keys alone: goes to it and presses it. */
async function press(user: Awaited<ReturnType<typeof open>>['user'], button: HTMLElement) {
  button.focus();
  await user.keyboard('{Enter}');
}
/** What is loaded after the start has come. */
async function turn() {
  await vi.dynamicImportSettled();
  await new Promise((resolve) => setTimeout(resolve, 30));
}

describe('whoever goes by keys', () => {
  it('stays on the button that could not be pressed while it was refused', async () => {
    const { user } = await open('#/round', 'refusing');
    const [moist] = await screen.findAllByRole('button', { name: 'Moist' });
    if (!moist) throw new Error('nothing to feel');
    await press(user, moist);
    await screen.findAllByRole('alert');
    expect(document.activeElement).toBe(moist);
  });

  it('is next to what went away with its answer', async () => {
    const { user } = await open('#/tray/t-k7');
    const due = (await screen.findByRole('heading', { name: 'Due' })).closest('section');
    if (!due) throw new Error('nothing is due');
    // What is shown is canned: the answer’s part is taken away by hand.
    const [first] = within(due).getAllByRole('button');
    await turn();
    first?.focus();
    first?.closest('section.job')?.remove();
    await turn();
    expect(document.activeElement).not.toBe(document.body);
    expect(due.contains(document.activeElement) || document.activeElement?.matches('h1')).toBe(true);
    expect(user).toBeDefined();
  });

  it('stays on a stepper’s button at the end of its way', async () => {
    const { user } = await open('#/round');
    await turn();
    const fewer = (await screen.findAllByRole('button', { name: /one fewer$/ }))[0];
    if (!fewer) throw new Error('nothing is counted');
    await user.click(fewer);
    for (let press = 0; press < 40 && fewer.getAttribute('aria-disabled') !== 'true'; press += 1) await user.click(fewer);
    expect(fewer).toHaveAttribute('aria-disabled', 'true');
    expect(document.activeElement).toBe(fewer);
  });
});

describe('a screen that is left and comes back', () => {
  beforeEach(() => localStorage.clear());

  it('is where it was, on the link that was followed', async () => {
    const { session } = await open('#/trays');
    const main = screen.getByRole('main');
    const link = await screen.findByRole('link', { name: /K7/ });
    await turn();
    Object.defineProperty(main, 'scrollHeight', { value: 4000 });
    main.scrollTop = 640;
    session.router.go('tray', 't-k7');
    await screen.findByRole('heading', { name: 'Tray K7' });
    expect(main.scrollTop).toBe(0);
    session.router.go('trays');
    await waitFor(() => expect(main.scrollTop).toBe(640));
    await waitFor(() => expect(document.activeElement).toHaveAttribute('href', link.getAttribute('href')));
  });

  it('goes on where a phone had put it away, with its sheet open, but not the next day', async () => {
    vi.spyOn(navigator, 'userAgent', 'get').mockReturnValue('Mozilla/5.0 (Linux; Android 16)');
    const first = await open('#/seed');
    await turn();
    await first.user.click(await screen.findByRole('button', { name: 'Add packets' }));
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    document.dispatchEvent(new Event('visibilitychange'));
    expect(JSON.parse(localStorage.getItem('plumule-left') ?? '{}')).toMatchObject({ hash: '#/seed', opener: { name: 'Add packets', which: 0 } });
    document.body.replaceChildren();

    await open('');
    await turn();
    expect(await screen.findByRole('heading', { level: 1, name: 'Seed' })).toBeInTheDocument();
    expect(await screen.findByRole('dialog', { name: 'Add packets' })).toBeInTheDocument();
    document.body.replaceChildren();

    const left = JSON.parse(localStorage.getItem('plumule-left') ?? '{}');
    localStorage.setItem('plumule-left', JSON.stringify({ ...left, at: '2026-04-01T08:00:00' }));
    await open('');
    await turn();
    expect(location.hash).toBe('');
  });
});
