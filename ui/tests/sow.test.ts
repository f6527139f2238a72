import { fireEvent, screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import type { Act } from '../src/backend/generated/types';
import { open } from './open';

type Sow = Extract<Act, { do: 'sow' }>;
const sow: Sow = {
  do: 'sow',
  packet: 'p-tomato',
  into: { tray: 'new', code: null, container: 'cells', rows: 6, columns: 4, compost: 'seed', place: 'prop', covered: false },
  cells: [0, 1, 2, 3, 4, 5, 6, 7, 8, 9],
  seeds: { as: 'exact', number: 10 },
  depth_mm: 7,
  wanted: 6,
  again_of: null,
  treatment: { soaked_hours: null, chipped: false, cold_weeks: null },
  plan: null,
};
const save = 'Save the sowing';
const cell = (row: number, column: number) => screen.getByRole('gridcell', { name: new RegExp(`^Row ${row}, cell ${column}(,|$)`) });
const marked = () => screen.getAllByRole('gridcell', { selected: true }).length;

describe('Sow', () => {
  it('is three taps for a known packet: Sow, the packet, save', async () => {
    const { backend, user } = await open('#/round');
    await user.click(screen.getByRole('link', { name: 'Sow' }));
    // The screen is loaded when it is opened: on a busy machine that takes a while.
    await user.click(await screen.findByRole('button', { name: /Tomato ‘Amber Lantern’/ }, { timeout: 20_000 }));
    await user.click(await screen.findByRole('button', { name: save }));
    // The fake advises 1.4 seeds a plant and one more; the propagator suits best.
    await waitFor(() => expect(backend.requests.map((r) => r.act)).toEqual([sow]));
    const label = await screen.findByRole('group', { name: 'The label' });
    expect(label).toHaveTextContent(/K10.*Tomato ‘Amber Lantern’.*16 Apr/);
  });

  it('shows the numbers the app gives, and asks again for other odds, plants and seeds in a cell', async () => {
    const { backend, user } = await open('#/sow/p-tomato');
    expect(await screen.findByText('10 cells with one seed in each give 6 plants or more, 9 times in 10.')).toBeVisible();
    await user.click(screen.getByRole('radio', { name: '19 in 20' }));
    await user.click(screen.getByRole('button', { name: 'Plants wanted: one more' }));
    await user.click(screen.getByRole('button', { name: 'Seeds in each cell: one more' }));
    expect(await screen.findByText('6 cells with 2 seeds in each give 7 plants or more, 19 times in 20.')).toBeVisible();
    expect(marked()).toBe(6);
    expect(screen.getByRole('spinbutton', { name: 'Seeds' })).toHaveValue(12);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Kind' }), 'pot');
    expect(await screen.findByText('11 seeds give 7 plants or more, 19 times in 20.')).toBeVisible();
    await user.click(screen.getByRole('button', { name: save }));
    await waitFor(() => expect(backend.requests).toHaveLength(1));
    expect(backend.requests[0]?.act).toMatchObject({ seeds: { as: 'exact', number: 11 }, wanted: 7, cells: [] });
  });

  it('takes seeds and cells as they are set by hand', async () => {
    const { backend, user } = await open('#/sow/p-tomato');
    await waitFor(() => expect(marked()).toBe(10));
    await user.click(screen.getByRole('button', { name: 'Row 6, all its cells' }));
    expect(marked()).toBe(14);
    await user.click(screen.getByRole('button', { name: 'Column 1, all its cells' }));
    expect(marked()).toBe(16);
    await user.click(cell(1, 1));
    await user.click(screen.getByRole('radio', { name: /^Kitchen sill/ }));
    await user.click(screen.getByRole('checkbox', { name: 'Covered' }));
    await user.click(screen.getByRole('button', { name: save }));
    const act = { ...sow, seeds: { as: 'exact', number: 15 }, cells: [1, 2, 3, 4, 5, 6, 7, 8, 9, 12, 16, 20, 21, 22, 23] };
    await waitFor(() => expect(backend.requests[0]?.act).toEqual({ ...act, into: { ...sow.into, place: 'sill', covered: true } }));
  });

  it('takes what was done to the seed before, as the crop wants it', async () => {
    const { backend, user } = await open('#/sow/p-tomato', 'warnings');
    expect(await screen.findByText('Soak the seed in lukewarm water for 12 to 24 hours.')).toBeVisible();
    await user.click(screen.getByRole('checkbox', { name: 'Soaked in water' }));
    await user.click(screen.getByRole('button', { name: 'Hours in water: one more' }));
    await user.click(screen.getByRole('checkbox', { name: /^In the cold first/ }));
    await user.click(screen.getByRole('button', { name: save }));
    await waitFor(() => expect(backend.requests[0]?.act).toMatchObject({ treatment: { soaked_hours: 19, chipped: false, cold_weeks: 5 } }));
  });

  it('says where none come up, and which place suits best', async () => {
    await open('#/sow/p-tomato');
    expect(await screen.findByRole('radio', { name: /^Shed.*None come up here: too cold below 10\s°C/ })).toBeVisible();
    expect(screen.getByRole('radio', { name: /^Propagator.*Suits best.*Up in 6 to 9 days: 22 Apr to 25 Apr/ })).toBeChecked();
  });

  it('shows what speaks against a place, a tray, a compost and a depth', async () => {
    const { user } = await open('#/sow/p-tomato', 'warnings');
    expect(await screen.findByText(/^Late in the season/)).toBeVisible();
    expect(screen.getByText(/while you are away/)).toBeVisible();
    await user.click(screen.getByRole('radio', { name: /^Kitchen sill/ }));
    expect(screen.queryByText(/while you are away/)).toBeNull();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Compost' }), 'garden_soil');
    expect(screen.getByText(/^Garden soil sets hard/)).toBeVisible();
    for (let i = 0; i < 2; i += 1) await user.click(screen.getByRole('button', { name: 'Deeper' }));
    expect(screen.getByText(/^Deeper than usual/)).toBeVisible();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Tray' }), 't-a4');
    expect(screen.getByText(/more than a week apart/)).toBeVisible();
  });

  it('does not offer cells that are taken', async () => {
    const { backend, user } = await open('#/sow/p-tomato');
    await user.selectOptions(await screen.findByRole('combobox', { name: 'Tray' }), 't-a4');
    expect(cell(1, 1)).toHaveAttribute('aria-disabled', 'true');
    expect(cell(1, 1)).toHaveAccessibleName('Row 1, cell 1, taken');
    // Ten are advised and eight are free.
    expect(marked()).toBe(8);
    expect(screen.getByText(/only 8 free cells/)).toBeVisible();
    await user.click(cell(1, 1));
    await user.click(screen.getByRole('button', { name: save }));
    await waitFor(() => expect(backend.requests[0]?.act).toMatchObject({ cells: [4, 5, 6, 7, 8, 9, 10, 11], seeds: { number: 8 } }));
  });

  it('is dated back in one tap', async () => {
    const { backend, user } = await open('#/sow/p-tomato');
    await user.click(await screen.findByRole('radio', { name: 'Yesterday evening' }));
    await user.click(screen.getByRole('button', { name: save }));
    expect(await screen.findByRole('group', { name: 'The label' })).toHaveTextContent('15 Apr');
    expect(backend.requests[0]?.happened).toBe('2026-04-15T18:00:00');
  });

  it('puts the next packet into the same tray, and the same again into a new one', async () => {
    const { backend, user } = await open('#/sow/p-tomato');
    await user.click(await screen.findByRole('button', { name: save }));
    await user.click(await screen.findByRole('button', { name: 'Same again' }));
    await waitFor(() => expect(backend.requests).toHaveLength(2));
    expect(backend.requests[1]?.act).toEqual({ ...sow, again_of: 's-new' });
    await user.click(await screen.findByRole('button', { name: 'Next packet into K10 too' }));
    await user.click(await screen.findByRole('button', { name: /Pepper ‘Little Bell’/ }));
    await screen.findByText(/^10 cells with/);
    await user.click(screen.getByRole('button', { name: save }));
    await waitFor(() => expect(backend.requests).toHaveLength(3));
    expect(backend.requests[2]?.act).toMatchObject({ packet: 'p-pepper', into: { tray: 'existing', id: 't-k7' }, cells: [5, 6, 7, 8, 9, 10, 11, 12, 13, 14] });
  });

  it('repeats the last sowing with one tap', async () => {
    const { backend, user } = await open('#/sow');
    await user.click(await screen.findByRole('button', { name: 'Same again' }));
    expect(await screen.findByRole('group', { name: 'The label' })).toHaveTextContent('Lettuce ‘Curled Butter’');
    expect(backend.requests[0]?.act).toMatchObject({ packet: 'p-let', again_of: 's-let', seeds: { number: 12 } });
    await user.click(screen.getByRole('button', { name: 'Undo' }));
    expect(await screen.findByRole('heading', { name: 'It was taken back' })).toBeVisible();
    expect(screen.queryByRole('group', { name: 'The label' })).toBeNull();
  });

  it('finds a packet without its accents, and with a slip', async () => {
    const { user } = await open('#/sow');
    const search = await screen.findByRole('searchbox', { name: 'Find a packet' });
    const found = () => within(screen.getByRole('list', { name: 'Which packet?' })).getAllByRole('listitem').map((item) => item.textContent);
    await user.type(search, 'echinacea');
    expect(found()).toEqual([expect.stringContaining('Échinacée')]);
    await user.clear(search);
    await user.type(search, 'lantren');
    expect(found()).toEqual([expect.stringContaining('Amber Lantern')]);
    await user.clear(search);
    await user.type(search, 'xyz');
    expect(screen.getByText('No packet like that.')).toBeVisible();
  });

  it('starts cuttings of a plant the crop book does not know', async () => {
    const { backend, user } = await open('#/sow');
    await user.click(await screen.findByRole('radio', { name: 'Without seed' }));
    await user.type(screen.getByRole('combobox', { name: 'Plant' }), 'Rosemary');
    await user.click(screen.getByRole('button', { name: 'Save' }));
    await waitFor(() =>
      expect(backend.requests[0]?.act).toMatchObject({ do: 'start_batch', origin: 'cuttings', crop: 'Rosemary', number: 6, cells: [0, 1, 2, 3, 4, 5] }),
    );
  });
});

describe('the cells of a tray', () => {
  async function tray() {
    const opened = await open('#/sow/p-tomato');
    await opened.user.selectOptions(await screen.findByRole('combobox', { name: 'Kind' }), 'cells-84');
    await opened.user.click(screen.getByRole('button', { name: 'All' }));
    await opened.user.click(screen.getByRole('button', { name: 'None' }));
    return opened;
  }

  it('are walked with arrows, marked with space, and with shift as one walks', async () => {
    const { user } = await tray();
    cell(1, 1).focus();
    await user.keyboard('{ArrowRight}{ArrowDown} ');
    expect(cell(2, 2)).toHaveFocus();
    expect(cell(2, 2)).toHaveAttribute('aria-selected', 'true');
    await user.keyboard('{Shift>}{ArrowRight}{ArrowRight}{/Shift}');
    expect(marked()).toBe(3);
    await user.keyboard('{Control>}{End}{/Control}');
    expect(cell(12, 7)).toHaveFocus();
    expect(screen.getAllByRole('gridcell').filter((it) => it.tabIndex === 0)).toEqual([cell(12, 7)]);
  });

  it('are marked by a drag, with a finger only when drawing is on', async () => {
    const { user } = await tray();
    const at = (target: Element) => (document.elementFromPoint = () => target);
    const drag = async (pointerType: string) => {
      await fireEvent.pointerDown(cell(1, 1), { pointerType, button: 0 });
      for (const to of [cell(1, 2), cell(2, 2)]) {
        at(to);
        await fireEvent.pointerMove(to, { pointerType });
      }
      await fireEvent.pointerUp(cell(2, 2), { pointerType });
    };
    await drag('touch');
    expect(screen.queryAllByRole('gridcell', { selected: true })).toEqual([]);
    await user.click(screen.getByRole('button', { name: 'Mark by drawing' }));
    await drag('touch');
    expect(marked()).toBe(3);
    await drag('mouse');
    expect(screen.queryAllByRole('gridcell', { selected: true })).toEqual([]);
  });

  it('are drawn anew one by one: a tap changes no other cell', async () => {
    const { user } = await tray();
    const changed: Node[] = [];
    const observer = new MutationObserver((seen) => changed.push(...seen.filter((it) => it.attributeName === 'aria-selected').map((it) => it.target)));
    observer.observe(screen.getByRole('grid'), { subtree: true, attributes: true, childList: true });
    await user.click(cell(5, 3));
    await waitFor(() => expect(marked()).toBe(1));
    expect(changed).toEqual([cell(5, 3)]);
    observer.disconnect();
  });

  it('zoom', async () => {
    const { user } = await tray();
    const side = () => screen.getByRole('grid').style.getPropertyValue('--side-of-cell');
    expect(side()).toBe('48px');
    await user.click(screen.getByRole('button', { name: 'Larger cells' }));
    expect(side()).toBe('72px');
    expect(within(screen.getByRole('grid')).getAllByRole('columnheader')).toHaveLength(7);
    expect(screen.getByRole('button', { name: 'Larger cells' })).toHaveAttribute('aria-disabled', 'true');
  });

  it('are brought nearer before one is marked where they are too small for a finger', async () => {
    const { user } = await tray();
    await user.click(screen.getByRole('button', { name: 'Smaller cells' }));
    const grid = screen.getByRole('grid');
    expect(grid.style.getPropertyValue('--side-of-cell')).toBe('30px');
    await user.click(cell(5, 3));
    expect(screen.queryAllByRole('gridcell', { selected: true })).toEqual([]);
    await waitFor(() => expect(cell(5, 3)).toHaveFocus());
    expect(grid.style.getPropertyValue('--side-of-cell')).toBe('48px');
    await user.click(cell(5, 3));
    expect(marked()).toBe(1);
  });
});
