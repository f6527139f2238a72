import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import App from '../src/App.svelte';
import { FakeBackend, fakeWords } from '../src/backend/fake';
import { Session } from '../src/state/session.svelte';
import { Words } from '../src/text/words.svelte';

/** Opens the app over the fake backend, at an address. */
export async function open(hash = '#/round', scene = 'demo') {
  location.hash = hash;
  const backend = new FakeBackend(scene);
  const session = new Session(backend, new Words([fakeWords]));
  render(App, { session });
  await screen.findByRole('heading', { level: 1 });
  return { backend, session, user: userEvent.setup() };
}
