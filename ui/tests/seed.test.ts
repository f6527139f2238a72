import { screen, waitFor, within } from '@testing-library/svelte';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { open } from './open';

afterEach(() => {
  vi.unstubAllGlobals();
});

/** What the device can share with. */
function device(of: { share?: unknown; clipboard?: unknown }) {
  for (const [name, value] of Object.entries(of)) Object.defineProperty(navigator, name, { value, configurable: true });
}

const names = () => [...document.querySelectorAll('a.packet strong')].map((name) => name.textContent);

describe('the seed box', () => {
  it('is sorted, searched with slips, filtered, and stays as it was left', async () => {
    const { user } = await open('#/seed');
    await screen.findByRole('link', { name: /^Tomato/ });
    expect(names()).toHaveLength(7);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Order' }), 'worth');
    expect(names()[0]).toBe('Aubergine ‘Dusk’');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Show' }), 'retired');
    expect(names()).toEqual(['Tomato ‘Used Up’']);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Show' }), 'in_use');
    await user.type(screen.getByRole('searchbox', { name: 'Find a packet' }), 'tomtao');
    await waitFor(() => expect(names()).toEqual(['Tomato ‘Amber Lantern’']));
    location.hash = '#/round';
    await screen.findByRole('heading', { name: 'Round', level: 1 });
    location.hash = '#/seed';
    const again = await screen.findByRole('searchbox', { name: 'Find a packet' });
    await waitFor(() => expect(again).toHaveValue('tomtao'));
    expect(screen.getByRole('combobox', { name: 'Order' })).toHaveValue('worth');
  });

  it('draws hundreds of packets as they come near, each with its way to the bench', async () => {
    const near = { come: () => {} };
    vi.stubGlobal(
      'IntersectionObserver',
      class {
        constructor(seen: (entries: { isIntersecting: boolean }[]) => void) {
          near.come = () => seen([{ isIntersecting: true }]);
        }
        observe() {}
        disconnect() {}
      },
    );
    const { user } = await open('#/seed', 'many');
    const drawn = () => document.querySelectorAll('a.sow').length;
    await screen.findByRole('link', { name: 'Sow it: Tomato ‘Amber Lantern’' });
    expect(screen.getByText('507 of 508 packets')).toBeVisible();
    const first = drawn();
    expect(first).toBeLessThan(100);
    for (let before = first; before < 507; before = drawn()) {
      near.come();
      await waitFor(() => expect(drawn()).toBe(Math.min(507, before + first)));
    }
    expect(document.querySelector('main li:last-child .sow')).toHaveAccessibleName(/^Sow it: .* 500’$/);
    await user.type(screen.getByRole('searchbox', { name: 'Find a packet' }), 'lantern');
    await waitFor(() => expect(drawn()).toBe(first));
  });
});

describe('a packet', () => {
  it('has its germination test counted and closed', async () => {
    const { backend, user } = await open('#/packet/p-aub');
    const sprouted = await screen.findByRole('spinbutton', { name: 'Sprouted in all, of 20' });
    await user.clear(sprouted);
    await user.type(sprouted, '9');
    await user.click(screen.getByRole('button', { name: 'Count' }));
    await user.click(screen.getByRole('button', { name: 'Close the test' }));
    const acts = backend.requests.map((request) => request.act);
    expect(acts[0]).toEqual({ do: 'count_test', test: 'g-1', sprouted: 9 });
    expect(acts[1]).toMatchObject({ do: 'close_test', test: 'g-1' });
    expect(screen.getByText(/13 of 20 sprouted: of the whole packet between 41 % and 85 %/)).toBeVisible();
  });

  it('that is F1 says that no seed is saved of it, and does not offer to', async () => {
    await open('#/packet/p-cab');
    expect(await screen.findByText(/^F1: save no seed of it/)).toBeVisible();
    expect(screen.queryByRole('button', { name: 'Save seed of it' })).toBeNull();
    expect(screen.getByText('The packet and your local rules come first.')).toBeVisible();
  });

  it('is a parent of saved seed', async () => {
    const { backend, user } = await open('#/packet/p-let');
    await user.click(await screen.findByRole('button', { name: 'Save seed of it' }));
    const sheet = screen.getByRole('dialog');
    await user.selectOptions(within(sheet).getByRole('combobox', { name: 'Saved from' }), 's-p-let-0');
    await user.click(within(sheet).getByRole('button', { name: 'Add this packet' }));
    expect(backend.requests[0]?.act).toMatchObject({
      do: 'add_packet',
      packet: { crop: 'lettuce', variety: 'Curled Butter', harvested_year: 2026, saved_from: { type: 'sowing', id: 's-p-let-0' } },
    });
  });

  it('shows the days that it states, and takes others', async () => {
    const { backend, user } = await open('#/packet/p-tomato');
    expect(await screen.findByText(/^8 to 18 days at 18 to 22 °C/)).toHaveTextContent(/it takes 46 % longer than is usual/);
    await user.click(screen.getByRole('button', { name: 'Change' }));
    const sheet = screen.getByRole('dialog');
    const typed = async (name: string, text: string) => {
      const field = within(sheet).getByRole('textbox', { name });
      await user.clear(field);
      if (text) await user.type(field, text);
    };
    // One of two is both; without a temperature the days stand alone.
    await typed('At least', '');
    await typed('At most', '10');
    await typed('At no less than', '');
    await typed('At no more than', '');
    await user.click(within(sheet).getByRole('button', { name: 'Save' }));
    expect(backend.requests[0]?.act).toMatchObject({ packet: { stated_days: { from: 10, to: 10, at: null } } });
  });

  it('is taken out of use as it is described', async () => {
    const { backend, user } = await open('#/packet/p-corn');
    await user.click(await screen.findByRole('button', { name: 'No longer used' }));
    expect(backend.requests[0]?.act).toMatchObject({ do: 'describe_packet', id: 'p-corn', retired: true, packet: { variety: 'Tall Gold' } });
  });
});

it('asks for a count of the test on the round, and is answered there', async () => {
  const { backend, user } = await open('#/round');
  const seed = await screen.findByRole('region', { name: 'Seed' });
  await user.click(within(seed).getByRole('button', { name: 'Count' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'count_test', test: 'g-1', sprouted: 6 });
  await waitFor(() => expect(screen.queryByRole('region', { name: 'Seed' })).toBeNull());
});

it('goes through the packets one by one', async () => {
  const { backend, user } = await open('#/seed/stocktake');
  await user.click(await screen.findByRole('button', { name: 'Given away' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'take_stock', packet: 'p-pepper', found: 'given_away' });
});

describe('what to buy', () => {
  it('is put on, ticked and taken off', async () => {
    const { backend, user } = await open('#/seed/buy');
    await user.click(await screen.findByRole('checkbox', { name: /Carrot/ }));
    await user.click(screen.getByRole('button', { name: 'Put on the list: Parsnip' }));
    await user.click(screen.getByRole('button', { name: /^Take off the list: Onion/ }));
    expect(backend.requests.map((request) => request.act)).toEqual([
      { do: 'set_to_buy', item: 'i-1', standing: 'bought' },
      { do: 'want_to_buy', crop: 'parsnip', variety: '', note: '' },
      { do: 'set_to_buy', item: 'i-2', standing: 'dropped' },
    ]);
  });

  it('is shared as text, or copied where nothing can be shared to', async () => {
    const { user } = await open('#/seed/buy');
    const list = 'Seed to buy\n– Carrot ‘Long Orange’: 2 packets';
    const writeText = vi.fn(async () => {});
    device({ share: undefined, clipboard: { writeText } });
    await user.click(await screen.findByRole('button', { name: 'Share the list' }));
    expect(await screen.findByText(/on the clipboard/)).toBeVisible();
    expect(writeText).toHaveBeenCalledWith(list);
    const share = vi.fn(async () => {});
    device({ share });
    await user.click(screen.getByRole('button', { name: 'Share the list' }));
    expect(share).toHaveBeenCalledWith({ text: list });
  });
});

it('takes in a table after its columns were matched and its bad lines shown', async () => {
  const { backend, user } = await open('#/seed/import');
  const read = vi.spyOn(backend, 'readPackets');
  const file = new File(['Plant'], 'packets.csv', { type: 'text/csv' });
  await user.upload(await screen.findByLabelText('Choose a table'), file);
  expect(await screen.findByText('2 packets to add; 2 lines cannot be read.')).toBeVisible();
  expect(screen.getByText(/^Line 4:/)).toHaveTextContent('No plant is named.');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Shelf' }), 'note');
  expect(read.mock.lastCall?.[1]).toEqual({ columns: ['crop', 'variety', 'packed', 'note', 'seeds'], duplicates: false });
  await user.click(screen.getByRole('checkbox', { name: 'Add them once more all the same' }));
  await user.click(await screen.findByRole('button', { name: 'Add 3 packets' }));
  expect(backend.imported.at(-1)).toEqual({ columns: ['crop', 'variety', 'packed', 'note', 'seeds'], duplicates: true });
  expect(await screen.findByText(/^The packets are in the box/)).toBeVisible();
});
