import { screen, waitFor } from '@testing-library/svelte';
import { describe, expect, it } from 'vitest';
import { open } from './open';

describe('Notices in the settings', () => {
  it('say when the next comes and what it says, and send one to try', async () => {
    const { backend, user } = await open('#/settings');
    expect(await screen.findByText('They are allowed.')).toBeVisible();
    expect(screen.getByText(/^The next comes on Friday/)).toBeVisible();
    expect(screen.getByText('Greenhouse: 1 tray to feel; Leek late')).toBeVisible();
    await user.click(screen.getByRole('button', { name: 'Send a test notice' }));
    expect(await screen.findByText(/^Sent\./)).toBeVisible();
    expect(backend.tested).toBe(1);
  });

  it('say what stops them and how to change it', async () => {
    const { user } = await open('#/settings', 'refusing');
    expect(await screen.findByText(/^They are not allowed/)).toBeVisible();
    expect(screen.getByText(/Apps, Plumule, Notifications/)).toBeVisible();
    expect(screen.getByText(/Apps, Plumule, Battery/)).toBeVisible();
    expect(screen.queryByText(/^The next comes/)).toBeNull();
    await user.click(screen.getByRole('button', { name: 'Send a test notice' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('The system did not take the notice.');
  });

  it('ask to be allowed where nobody has asked', async () => {
    const { user } = await open('#/settings', 'quiet');
    await user.click(await screen.findByRole('button', { name: 'Allow notices' }));
    expect(await screen.findByText('They are allowed.')).toBeVisible();
  });
});

describe('On a computer', () => {
  it('Plumule is there when a notice is due, if that is wanted', async () => {
    const { backend, user } = await open('#/settings');
    const stay = await screen.findByRole('checkbox', { name: 'Keep running when the window is closed' });
    await user.click(stay);
    await waitFor(() => expect(backend.device.stay).toBe(true));
    await user.click(screen.getByRole('checkbox', { name: 'Start at login, without the window' }));
    await waitFor(() => expect(backend.atLogin).toBe(true));
    expect(screen.getByRole('checkbox', { name: 'Start at login, without the window' })).toBeChecked();
  });

  it('that is not asked of a phone, which shows notices by itself', async () => {
    await open('#/settings', 'refusing');
    await screen.findByText(/^They are not allowed/);
    expect(screen.queryByRole('checkbox', { name: 'Keep running when the window is closed' })).toBeNull();
  });
});

describe('The round', () => {
  it('says in a quiet line that notices do not come', async () => {
    await open('#/round', 'refusing');
    expect(await screen.findByRole('link', { name: 'Why, and what to do' })).toHaveAttribute('href', '#/settings');
  });

  it('says nothing of it while they do', async () => {
    await open('#/round');
    await waitFor(() => expect(screen.getAllByRole('article').length).toBeGreaterThan(0));
    expect(screen.queryByText(/^Notices do not reach/)).toBeNull();
  });
});

describe('A notice', () => {
  it('opens the tray it was about, and the round', async () => {
    const { backend } = await open('#/settings');
    await screen.findByText('They are allowed.');
    backend.press('t-k7');
    await waitFor(() => expect(location.hash).toBe('#/tray/t-k7'));
    backend.press('');
    await waitFor(() => expect(location.hash).toBe('#/round'));
  });

  it('that was answered is told of, and can be undone', async () => {
    const { backend, user } = await open('#/round');
    await waitFor(() => expect(screen.getAllByRole('article').length).toBeGreaterThan(0));
    backend.answerNotice();
    await user.click(await screen.findByRole('button', { name: /^Undo/ }));
    expect(backend.undone).toEqual(['from-a-notice']);
  });
});
