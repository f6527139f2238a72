import { screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

describe('first start', () => {
  it('opens an own journal or the demo, as chosen', async () => {
    const { user } = await open('#/round', 'choose');
    expect(screen.queryByRole('navigation')).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Start my journal' }));
    expect(await screen.findByRole('heading', { name: 'No trays yet' })).toBeVisible();
    expect(within(screen.getByRole('navigation')).getByRole('link', { name: 'Round' })).toHaveAttribute('aria-current', 'page');
  });
});

describe('a tray', () => {
  it('shows numbers that balance', async () => {
    await open('#/tray/t-k5');
    const table = await screen.findByRole('table', { name: /Cabbage .* how many are where/ });
    const rows = within(table).getAllByRole('row').map((row) => row.textContent ?? '');
    const number = (row: string) => Number(/(− )?(\d+)$/.exec(row)?.[2]);
    const [up = NaN, ...parts] = rows.map(number);
    expect(up).toBe(33);
    expect(parts.reduce((sum, part) => sum + part, 0)).toBe(up);
    expect(rows.at(-1)).toMatch(/^Still there\s*19$/);
  });

  it('has its forecast as a picture with words and as a table', async () => {
    const { user } = await open('#/tray/t-k7');
    const chart = await screen.findByRole('img', { name: /How Pepper ‘Little Bell’ comes up/ });
    expect(chart.querySelectorAll('path.count')).toHaveLength(3);
    await user.click(screen.getAllByText('The same as a table')[1] as HTMLElement);
    expect(screen.getAllByRole('columnheader', { name: 'Counted' }).length).toBeGreaterThan(0);
  });

  it('withdraws a line once that is confirmed, and shows what was withdrawn with a word', async () => {
    const { backend, user } = await open('#/tray/t-k7');
    expect(await screen.findByText('Withdrawn:')).toBeVisible();
    await user.click(screen.getByRole('button', { name: /^Withdraw: Counted in K7: 5/ }));
    expect(backend.withdrawn).toEqual([]);
    await user.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Withdraw' }));
    expect(backend.withdrawn).toEqual(['e4']);
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull());
  });

  it('writes a loss with its cause', async () => {
    const { backend, user } = await open('#/tray/t-k5');
    await user.click(await screen.findByRole('button', { name: 'Lost some' }));
    const sheet = screen.getByRole('dialog');
    await user.selectOptions(within(sheet).getByRole('combobox', { name: 'What happened' }), 'damped_off');
    await user.click(within(sheet).getByRole('button', { name: 'Write down' }));
    expect(backend.requests[0]?.act).toEqual({
      do: 'leave', plants: { type: 'sowing', id: 's-cab' }, number: 1, how: 'lost', cause: 'damped_off',
    });
  });

  it('that is not there says so, with a way back', async () => {
    await open('#/tray/nowhere');
    expect(await screen.findByRole('alert')).toHaveTextContent('This tray is not in the journal.');
    expect(screen.getByRole('link', { name: 'All trays' })).toHaveAttribute('href', '#/trays');
  });
});

it('adds packets in a row', async () => {
  const { backend, user } = await open('#/seed');
  await user.click(await screen.findByRole('button', { name: 'Add packets' }));
  const sheet = screen.getByRole('dialog');
  const plant = within(sheet).getByRole('combobox', { name: 'Plant' });
  await user.type(plant, 'aubergine');
  await user.type(within(sheet).getByRole('textbox', { name: 'Year' }), '2025');
  await user.click(within(sheet).getByRole('button', { name: 'Add this packet' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'add_packet', packet: { crop: 'eggplant', packed_year: 2025, harvested_year: null } });
  await waitFor(() => expect(within(sheet).getByRole('status')).toHaveTextContent('Aubergine is in.'));
  await waitFor(() => expect(plant).toHaveFocus());
  expect(plant).toHaveValue('');
});

describe('Settings', () => {
  it('changes units at once', async () => {
    const { backend, user } = await open('#/settings');
    expect(await screen.findByText(/15 to 20 °C/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: '°F' }));
    await waitFor(() => expect(screen.getByText(/59 to 68 °F/)).toBeVisible());
    expect(backend.device.temperature).toBe('fahrenheit');
  });

  it('sets theme and hand on the page', async () => {
    const { user } = await open('#/settings');
    await user.click(await screen.findByRole('radio', { name: 'Dark' }));
    await user.click(screen.getByRole('radio', { name: 'Left hand' }));
    await waitFor(() => expect(document.documentElement.dataset).toMatchObject({ theme: 'dark', hand: 'left' }));
  });

  it('adds a place with what its kind is usually like', async () => {
    const { backend, user } = await open('#/settings');
    await user.click(await screen.findByRole('button', { name: 'Add a place' }));
    const sheet = screen.getByRole('dialog');
    await user.selectOptions(within(sheet).getByRole('combobox', { name: 'Kind of place' }), 'heated_propagator');
    await user.type(within(sheet).getByRole('textbox', { name: 'Name' }), 'Loft bench');
    await user.click(within(sheet).getByRole('button', { name: 'Save the place' }));
    expect(backend.requests[0]?.act).toEqual({
      do: 'describe_place',
      place: {
        id: null, name: 'Loft bench', kind: 'heated_propagator', usual: { min_c: 20, max_c: 24 },
        unheated: { min_c: 14, max_c: 19 }, light: 'dim', covered: true, position: 6, retired: false,
      },
    });
  });

  it('keeps both of two habits set in a breath', async () => {
    const { backend, user } = await open('#/settings');
    await user.click(await screen.findByRole('radio', { name: 'Dark' }));
    screen.getByRole<HTMLInputElement>('radio', { name: 'inches' }).click();
    screen.getByRole<HTMLInputElement>('radio', { name: '°F' }).click();
    await waitFor(() => expect(backend.device).toMatchObject({ theme: 'dark', length: 'inch', temperature: 'fahrenheit' }));
  });

  it('keeps a time when its field is left and not while it is typed', async () => {
    const { backend, user } = await open('#/settings');
    const from = await screen.findByLabelText('Quiet from');
    await user.clear(from);
    await user.type(from, '21:30');
    expect(backend.device.quiet_from).toBe('21:00');
    await user.tab();
    await waitFor(() => expect(backend.device.quiet_from).toBe('21:30'));
  });

  it('changes the walking order', async () => {
    const { backend, user } = await open('#/settings');
    await user.click(await screen.findByRole('button', { name: 'Kitchen sill: earlier in the walk' }));
    await waitFor(() => expect(backend.requests).toHaveLength(1));
    expect(backend.requests[0]?.act).toEqual({ do: 'order_places', places: ['sill', 'prop', 'glass', 'shed'] });
  });

  it('leaves the demo only after saying that it is thrown away', async () => {
    const { user } = await open('#/settings');
    await user.click(await screen.findByRole('button', { name: 'Leave the demo' }));
    const asked = screen.getByRole('alertdialog');
    expect(asked).toHaveTextContent('thrown away whole');
    await user.click(within(asked).getByRole('button', { name: 'Throw it away' }));
    expect(await screen.findByRole('button', { name: 'Start my journal' })).toBeVisible();
  });
});
