import { mount } from 'svelte';
import App from './App.svelte';
import { TauriBackend } from './backend/tauri';
import './tokens/colour.css';
import './tokens/size.css';
import './tokens/type.css';
import './styles/base.css';
import { Session } from './state/session.svelte';
import { Words } from './text/words.svelte';

async function begin(): Promise<Session> {
  if (import.meta.env.MODE === 'fake' || (import.meta.env.DEV && !('__TAURI_INTERNALS__' in window))) {
    const [{ FakeBackend, fakeWords }, { answeringLate }] = await Promise.all([import('./backend/fake'), import('./backend/fake-late')]);
    const asked = new URLSearchParams(location.search);
    const backend = new FakeBackend(asked.get('fake') ?? 'demo', asked.get('language') ?? undefined);
    return new Session(answeringLate(backend, Number(asked.get('wait') ?? 0)), new Words([fakeWords]));
  }
  return new Session(new TauriBackend(), new Words());
}

const target = document.getElementById('app');
if (target) {
  mount(App, { target, props: { session: await begin() } });
}
