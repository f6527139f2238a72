import { screen, within } from '@testing-library/svelte';
import { expect, it } from 'vitest';
import { OVER, planDraft, planForm } from '../src/components/year/plan';
import { open } from './open';

const inDays = (days: number) => `2026-05-${String(10 + (days % 20)).padStart(2, '0')}`;

it('makes a plan for a sale with 15 in a hundred over, unless set', async () => {
  const { backend, user } = await open('#/year');
  await user.click(await screen.findByRole('button', { name: 'Make a plan' }));
  const sheet = within(screen.getByRole('dialog', { name: 'A new plan' }));
  await user.type(sheet.getByRole('combobox', { name: 'Plant' }), 'Leek');
  await user.click(sheet.getByRole('radio', { name: 'For a sale' }));
  await user.clear(sheet.getByRole('spinbutton', { name: 'Plants wanted' }));
  await user.type(sheet.getByRole('spinbutton', { name: 'Plants wanted' }), '60');
  await user.click(sheet.getByRole('button', { name: 'Save the plan' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'plan', id: null, plan: { wanted: 60, packet: null, raise_weeks: null, rhythm: { as: 'sale', over_percent: OVER } } });
});

it('changes a plan with what it says filled in', async () => {
  const { backend, user } = await open('#/year');
  await user.click(await screen.findByRole('button', { name: /^Change.*Spinach/ }));
  const sheet = within(screen.getByRole('dialog', { name: 'Change the plan' }));
  const weeks = sheet.getByRole('spinbutton', { name: 'Weeks from one sowing to the next' });
  await user.clear(weeks);
  await user.type(weeks, '2');
  await user.click(sheet.getByRole('button', { name: 'Save the plan' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'plan', id: 'plan-again', plan: { crop: 'spinach', rhythm: { as: 'every', weeks: 2, from: '2026-04-01', to: '2026-07-20' } } });
});

it('keeps what a plan says from form to draft and back', () => {
  for (const rhythm of [
    { as: 'by', day: '2026-06-01' },
    { as: 'sale', day: '2026-06-01', over_percent: 30 },
    { as: 'every', weeks: 4, from: '2026-04-01', to: '2026-06-01' },
    { as: 'true_leaves', from: '2026-04-01', to: '2026-06-01' },
  ] as const) {
    const form = { crop: 'leek', variety: 'Long', packet: 'p-1', wanted: 7, rhythm, raise_weeks: 9 };
    expect(planForm(planDraft(form, inDays))).toEqual(form);
  }
});

it('takes a plan from the round to the bench, and the sowing answers it', async () => {
  const { backend, user } = await open('#/round', 'planned');
  await user.click(await screen.findByRole('button', { name: 'Sow now' }));
  expect(await screen.findByText('This answers your plan for 12 plants.')).toBeTruthy();
  await user.click(await screen.findByRole('button', { name: 'Save the sowing' }));
  await screen.findByText('It is in the journal');
  expect(backend.requests[0]?.act).toMatchObject({ do: 'sow', packet: 'p-let', wanted: 12, plan: 'plan-again' });
});

it('shows the windows as a chart and as a table with the same days', async () => {
  const { user } = await open('#/year');
  const chart = await screen.findByRole('region', { name: 'The days to sow as a chart' });
  expect(within(chart).getAllByRole('img').length).toBeGreaterThan(5);
  const [table] = screen.getAllByText('The same as a table');
  await user.click(table as HTMLElement);
  const [row] = screen.getAllByRole('row', { name: /^Tomato/ });
  expect(row?.textContent).toContain('22 Mar to 19 Apr');
  expect(row?.textContent).toContain('26 May');
});

it('says where to give frost dates where there are none', async () => {
  await open('#/year', 'empty');
  const link = await screen.findByRole('link', { name: 'Give the frost dates' });
  expect(link.getAttribute('href')).toBe('#/settings');
});

it('keeps plants for somebody, hands them over and lets go of them', async () => {
  const { backend, user } = await open('#/year');
  await user.click(await screen.findByRole('button', { name: /^Hand over/ }));
  const sheet = within(screen.getByRole('dialog', { name: 'Tomato ‘Lantern Lane’ goes' }));
  await user.click(sheet.getByRole('button', { name: 'Write it down' }));
  expect(backend.requests[0]?.act).toEqual({ do: 'hand_over', crop: 'tomato', number: 4, how: 'sold', reservation: 'r-mk' });
  await user.click(screen.getAllByRole('button', { name: /^No longer kept/ })[0] as HTMLElement);
  expect(backend.requests[1]?.act).toEqual({ do: 'release', reservation: 'r-mk' });
});

it('keeps the plants of a tray', async () => {
  const { backend, user } = await open('#/tray/t-k7');
  await user.click((await screen.findAllByRole('button', { name: 'Keep for somebody' }))[0] as HTMLElement);
  await user.type(screen.getByRole('textbox', { name: 'For whom' }), 'JW');
  await user.click(screen.getByRole('button', { name: 'Keep them' }));
  expect(backend.requests[0]?.act).toMatchObject({ do: 'reserve', of: { type: 'plants' }, number: 1, note: 'JW' });
});
