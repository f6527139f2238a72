import { screen, waitFor, within } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

const jpeg = (bytes: string) => new File([bytes], 'label.jpg', { type: 'image/jpeg' });

describe('Labels', () => {
  it('prints the one that was asked for, from the label that is free', async () => {
    const { backend, user } = await open('#/labels/t-k7');
    expect(await screen.findByRole('checkbox', { name: /^K7/ })).toBeChecked();
    const first = screen.getByRole('spinbutton', { name: 'Begin at label' });
    await user.clear(first);
    await user.type(first, '5{Tab}');
    expect(screen.getByRole('img', { name: 'The first sheet: 5 to 5 of 21 printed' })).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Save as PDF' }));
    expect(await screen.findByText(/^Saved\. Print it at full size/)).toBeVisible();
    expect(backend.sheets).toEqual([
      {
        trays: ['t-k7'],
        stock: { paper: 'a4', width: 63.5, height: 38.1, left: 7.2, top: 15.1, across: 2.5, down: 0 },
        first: 5,
        cut_lines: false,
      },
    ]);
  });

  it('takes other sizes and papers', async () => {
    const { backend, user } = await open('#/labels');
    expect(await screen.findByRole('button', { name: 'Save as PDF' })).toBeDisabled();
    await user.click(screen.getByRole('button', { name: 'All of them' }));
    await user.click(screen.getByRole('radio', { name: 'Letter' }));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Size of a label' }), 'own');
    const width = screen.getByRole('textbox', { name: 'Width' });
    await user.clear(width);
    await user.type(width, '90,5');
    await user.click(screen.getByRole('checkbox', { name: 'Lines to cut along' }));
    await user.click(screen.getByRole('button', { name: 'Save as PDF' }));
    expect(screen.queryByRole('alert')?.textContent ?? '').toBe('');
    await waitFor(() => expect(backend.sheets).toHaveLength(1));
    const [sheet] = backend.sheets;
    expect(sheet?.stock).toMatchObject({ paper: 'letter', width: 90.5, height: 25.4 });
    expect(sheet?.cut_lines).toBe(true);
    expect(sheet?.trays.length).toBeGreaterThan(3);
  });

  it('says that nothing was saved when that was called off', async () => {
    const { user } = await open('#/labels/t-k7', 'refusing');
    await user.click(await screen.findByRole('button', { name: 'Save as PDF' }));
    expect(await screen.findByText('Not saved.')).toBeVisible();
  });
});

describe('Finding a tray by its label', () => {
  it('opens it by the code that was typed', async () => {
    const { user } = await open('#/find');
    await user.type(await screen.findByRole('textbox', { name: 'Code on the label' }), 'k7{Enter}');
    expect(await screen.findByRole('heading', { level: 1, name: 'Tray K7' })).toBeVisible();
  });

  it('opens it by a photo, and says what to do when that cannot be read', async () => {
    const { user } = await open('#/find');
    const choose = await screen.findByLabelText('Choose a photo of it');
    await user.upload(choose, jpeg(''));
    expect(await screen.findByRole('alert')).toHaveTextContent('No square code could be read in that photo.');
    await user.upload(choose, jpeg('label'));
    expect(await screen.findByRole('heading', { level: 1, name: 'Tray K7' })).toBeVisible();
  });

  it('says that a code is unknown and offers what may be the tray', async () => {
    const { user } = await open('#/find');
    await user.type(await screen.findByRole('textbox', { name: 'Code on the label' }), 'Z99{Enter}');
    expect(await screen.findByText('No tray here has the code Z99.')).toBeVisible();
    const lost = screen.getByRole('region', { name: 'Label lost, or not to be read' });
    const place = within(lost).getByRole('combobox', { name: 'Where it stands' });
    await waitFor(() => expect(within(place).getAllByRole('option').length).toBeGreaterThan(1));
    await user.selectOptions(place, within(place).getAllByRole('option')[1] as HTMLElement);
    expect((await within(lost).findAllByText('Fits: place')).length).toBeGreaterThan(0);
  });
});
