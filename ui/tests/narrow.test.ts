import { screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

const said = () => screen.getAllByRole('status').map((it) => it.textContent).join(' ');

describe('the trays', () => {
  const codes = () => [...document.querySelectorAll('section .code')].map((it) => it.textContent);

  it('are narrowed, say so, and stay so', async () => {
    const { backend, user } = await open('#/trays');
    await screen.findByRole('link', { name: /^K2 / });
    const all = codes().length;
    await user.selectOptions(screen.getByRole('combobox', { name: 'Plant' }), 'eggplant');
    expect(codes()).toEqual(['K2']);
    expect(said()).toContain(`1 of ${all} shown`);
    location.hash = '#/round';
    await screen.findByRole('heading', { name: 'Round', level: 1 });
    expect([...backend.drafts.keys()]).toContain('shown-trays');
    location.hash = '#/trays';
    await waitFor(() => expect(codes()).toEqual(['K2']));
    await user.click(screen.getByRole('button', { name: 'Show all' }));
    expect(codes()).toHaveLength(all);
    location.hash = '#/round';
    await waitFor(() => expect([...backend.drafts.keys()]).not.toContain('shown-trays'));
  });

  it('hide nothing for a place that is no more', async () => {
    const { backend } = await open('#/round');
    await backend.keepDraft('shown-trays', JSON.stringify({ place: 'gone', crop: 'gone', due: false }));
    location.hash = '#/trays';
    await screen.findByRole('link', { name: /^K2 / });
    expect(screen.queryByRole('button', { name: 'Show all' })).toBeNull();
  });

  it('of the past stand by their years, and on a tray’s page those of its code', async () => {
    await open('#/trays');
    expect(await screen.findByText('2025 (2)')).toBeInTheDocument();
    location.hash = '#/tray/t-k7';
    const heading = await screen.findByRole('heading', { name: 'Earlier with this code' });
    expect(within(heading.parentElement as HTMLElement).getByRole('link', { name: /^K7 Tomato/ })).toHaveAttribute('href', '#/tray/t-c1');
  });
});
