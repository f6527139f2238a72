import { getContext, setContext } from 'svelte';
import type { Words } from '../text/words.svelte';
import type { Session } from './session.svelte';

const key = Symbol('session');

export function provideSession(session: Session) {
  setContext(key, session);
}

export function useSession(): Session {
  return getContext<Session>(key);
}

export function useWords(): Words {
  return useSession().words;
}
