import { picture } from './picture';
import type { Session } from './session.svelte';

const restful = 'h1, h2, h3, h4, a[href], button:not(:disabled), input:not(:disabled), select:not(:disabled), textarea:not(:disabled), summary';

/**
 * Whoever goes by keys stays where they are: when what has the focus goes, as a
 * job does that was answered, the focus goes to what is next to it. Gives what
 * ends this.
 */
export function keepFocus(): () => void {
  /** What has the focus, and all that it is in. */
  let way: Element[] = [];
  const lost = () => way.length > 0 && !way[0]?.isConnected && document.activeElement === document.body;

  function rest() {
    const part = lost() && way.find((element) => element.isConnected);
    if (!part) return;
    for (let at: Element | null = part; at && at !== document.body && !at.matches('.app'); at = at.parentElement) {
      const next = at.matches('footer') ? null : at.querySelector<HTMLElement>(restful);
      if (next) return stand(next);
    }
    const title = document.querySelector<HTMLElement>('h1');
    if (title) stand(title);
  }
  function came({ target }: FocusEvent) {
    way = [];
    for (let at = target instanceof Element ? target : null; at; at = at.parentElement) way.push(at);
  }
  // Who points elsewhere has left it.
  function pointed({ target }: PointerEvent) {
    if (!(target instanceof Node && way[0]?.contains(target))) way = [];
  }

  document.addEventListener('focusin', came);
  document.addEventListener('pointerdown', pointed);
  // Screens that know better where to go have done so by the next turn.
  const observer = new MutationObserver(() => lost() && setTimeout(rest));
  observer.observe(document.body, { childList: true, subtree: true });
  return () => {
    observer.disconnect();
    document.removeEventListener('focusin', came);
    document.removeEventListener('pointerdown', pointed);
  };
}

/** Puts the focus there once the screen is whole, for what is not shown yet takes none: from the heading, which has it on the way here, not from what was gone on to meanwhile. */
export async function focusWhenWhole(session: Session, there: () => HTMLElement | false | undefined) {
  await session.settled().then(picture);
  const on = document.activeElement?.matches('h1, body') && there();
  if (on) on.focus();
}

function stand(on: HTMLElement) {
  if (/^H\d$/.test(on.tagName) && !on.hasAttribute('tabindex')) on.tabIndex = -1;
  on.focus();
}
