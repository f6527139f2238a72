import { screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { found } from '../src/backend/fake-search';
import type { SearchView } from '../src/backend/generated/types';
import { open } from './open';

const field = () => screen.findByRole('searchbox', { name: 'What are you looking for?' });
const said = () => screen.getAllByRole('status').map((it) => it.textContent).join(' ');

describe('the search', () => {
  it('asks once for what is typed in a breath, and says how many there are', async () => {
    const { backend, user } = await open('#/search');
    expect(await screen.findByRole('button', { name: '14 May' })).toBeVisible();
    await user.type(await field(), 'tomato');
    await waitFor(() => expect(said()).toContain('Found: 2 trays, one sowing, one packet, 2 plans, 2 things to buy and 2 notes.'));
    expect(backend.sought).toEqual(['tomato']);
    expect(screen.queryByRole('button', { name: '14 May' })).toBeNull();
    expect(within(screen.getByRole('region', { name: 'Packets' })).getByRole('link')).toHaveAttribute('href', '#/packet/p-tomato');
    const notes = within(screen.getByRole('region', { name: 'Notes' }));
    expect(notes.getByRole('link', { name: /lean over/ })).toHaveAttribute('href', '#/tray/t-k7');
    expect(notes.queryByRole('link', { name: /Fewer tomatoes/ })).toBeNull();
  });

  it('leads to a plan and to the list of what to buy, and to nothing that is over', async () => {
    const { user } = await open('#/search');
    await user.type(await field(), 'tomato');
    const plans = within(await screen.findByRole('region', { name: 'Plans' }));
    expect(plans.getByText(/for the sale on.*, done with$/).closest('a')).toBeNull();
    const items = within(screen.getByRole('region', { name: 'To buy' }));
    expect(items.getAllByRole('link')).toHaveLength(1);
    expect(items.getByRole('link', { name: /from the mill shop/ })).toHaveAttribute('href', '#/seed/buy');
    await user.click(plans.getByRole('link', { name: /Stoutgate/ }));
    await screen.findByRole('heading', { name: 'The years', level: 1 });
    await waitFor(() => expect(screen.getByRole('heading', { name: /Stoutgate/ })).toHaveFocus());
  });

  it('lets go of an answer that comes after a later one', async () => {
    const { backend, user } = await open('#/search');
    const answers = new Map<string, (view: SearchView) => void>();
    backend.search = (typed) => new Promise((resolve) => answers.set(typed, resolve));
    const input = await field();
    await user.type(input, 'tom');
    await waitFor(() => expect(answers.has('tom')).toBe(true));
    await user.clear(input);
    await user.type(input, 'marrow');
    await waitFor(() => expect(answers.has('marrow')).toBe(true));
    answers.get('marrow')?.(found('marrow', false));
    await waitFor(() => expect(said()).toContain('Nothing fits “marrow”.'));
    answers.get('tom')?.(found('tom', false));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(said()).toContain('Nothing fits “marrow”.');
    expect(screen.queryByRole('region', { name: 'Packets' })).toBeNull();
  });

  it('is there again when one comes back from a page, and Escape clears it', async () => {
    const { user } = await open('#/search');
    await user.type(await field(), 'tomato');
    await user.click(await screen.findByRole('link', { name: /^K7 / }));
    await screen.findByRole('heading', { name: 'Tray K7', level: 1 });
    location.hash = '#/search';
    const input = await field();
    expect(input).toHaveValue('tomato');
    expect(screen.getByRole('region', { name: 'Trays' })).toBeVisible();
    input.focus();
    await user.keyboard('{Escape}');
    expect(input).toHaveValue('');
    expect(await screen.findByRole('button', { name: '14 May' })).toBeVisible();
  });

  it('is walked through by arrows', async () => {
    const { user } = await open('#/search');
    const input = await field();
    await user.type(input, 'tomato');
    const first = await screen.findByRole('link', { name: /^K7 / });
    await user.keyboard('{ArrowDown}');
    expect(first).toHaveFocus();
    await user.keyboard('{ArrowDown}{ArrowUp}{ArrowUp}');
    expect(input).toHaveFocus();
  });

  it('lists few until all are asked for, and says when there are more than are told', async () => {
    const { user } = await open('#/search', 'many');
    await user.type(await field(), 'tomato');
    await waitFor(() => expect(said()).toContain('more than 50 trays'));
    const trays = () => within(screen.getByRole('region', { name: 'Trays' }));
    expect(trays().getAllByRole('listitem')).toHaveLength(8);
    await user.click(trays().getByRole('button', { name: 'Show all 50' }));
    expect(trays().getAllByRole('listitem')).toHaveLength(50);
    expect(trays().getByText(/newest 50/)).toBeVisible();
  });

  it('begins with a stroke, but not while something is typed', async () => {
    const { user } = await open('#/trays');
    await user.keyboard('/');
    const input = await field();
    await waitFor(() => expect(input).toHaveFocus());
    await user.keyboard('5/4');
    expect(input).toHaveValue('5/4');
    await waitFor(() => expect(said()).toContain('Found'));
  });
});
