// What runs in the page: what is wrong with how a screen is laid out, and what
// moves though the person asked for no motion. Each is sent as its source.

/** Next picture but one: what a change of size or text brings is laid out. */
export const drawn = () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));

/** What is wrong with how it is laid out. */
export function layoutFaults() {
  const faults = [];
  const name = (el) => `${el.tagName.toLowerCase()} “${(el.getAttribute('aria-label') ?? el.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 40)}”`;
  const scope = document.querySelector('dialog[open]') ?? document.body;
  // What is only laid out when it comes near is measured as when it is there.
  for (const el of scope.querySelectorAll('*')) if (getComputedStyle(el).contentVisibility === 'auto') el.style.contentVisibility = 'visible';
  for (const el of [document.documentElement, document.querySelector('main'), document.querySelector('dialog[open]')]) {
    if (!el || el.scrollWidth <= el.clientWidth + 1) continue;
    const out = [...el.querySelectorAll('*')].findLast((it) => it.getBoundingClientRect().right > el.clientWidth + 1 && !it.closest('.scroller'));
    faults.push(`sideways scroll in ${el.tagName}: ${el.scrollWidth} > ${el.clientWidth}${out ? `, by ${name(out)}` : ''}`);
  }
  const seen = [...scope.querySelectorAll('a[href], button, input, select, textarea, summary, .grid:not(.glance) [role=gridcell]')].filter((el) => {
    const style = getComputedStyle(el);
    return el.checkVisibility({ visibilityProperty: true }) && !el.closest('.skip') && style.position !== 'fixed';
  });
  const boxes = seen.map((el) => {
    // What is pressed for a radio, a tick box or a file is its whole label.
    const label = ['radio', 'checkbox', 'file'].includes(el.type) ? el.closest('label') : null;
    return { el, box: (label ?? el).getBoundingClientRect(), inline: el.tagName === 'A' && getComputedStyle(el).display === 'inline' };
  });
  for (const { el, box, inline } of boxes) {
    const least = inline ? 44 : 48;
    if (box.width < least - 0.5 || box.height < least - 0.5) {
      faults.push(`small target ${name(el)}: ${box.width.toFixed(0)} x ${box.height.toFixed(0)}`);
    }
    const scroller = el.closest('.scroller');
    if (!scroller && (box.left < -1 || box.right > innerWidth + 1)) faults.push(`cut off sideways ${name(el)}`);
  }
  // From the top down, each is compared with those that begin before it ends.
  boxes.sort((a, b) => a.box.top - b.box.top);
  for (let i = 0; i < boxes.length; i += 1) {
    for (let j = i + 1; j < boxes.length && boxes[j].box.top < boxes[i].box.bottom - 1; j += 1) {
      const [a, b] = [boxes[i], boxes[j]];
      const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
      const high = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
      if (wide <= 1 || high <= 1) continue;
      if (a.el.contains(b.el) || b.el.contains(a.el)) continue;
      // The bar and the toast lie beside the scrolling page, not over it.
      if (!!a.el.closest('main') !== !!b.el.closest('main')) continue;
      // What is scrolled out of its own strip is not there to be pressed.
      if ([a, b].some(({ el, box }) => box.bottom > (el.closest('aside')?.getBoundingClientRect().bottom ?? Infinity) + 1)) continue;
      // What sticks to the edge lies over what scrolls beneath it; either can be brought clear.
      if (!!a.el.closest('.sticks') !== !!b.el.closest('.sticks')) continue;
      if (a.el.closest('.scroller') && a.el.closest('.scroller') === b.el.closest('.scroller') && (a.el.matches('.head') || b.el.matches('.head'))) continue;
      faults.push(`overlap ${name(a.el)} and ${name(b.el)}`);
    }
  }
  const main = document.querySelector('main').getBoundingClientRect();
  const footer = document.querySelector('footer').getBoundingClientRect();
  if (main.bottom > footer.top + 1) faults.push('the page lies under the bar');
  for (const el of scope.querySelectorAll('button, a, label, h1, h2, h3, h4, p, td, th, select')) {
    const style = getComputedStyle(el);
    if (el.closest('.heard') || el.closest('.skip') || !el.checkVisibility()) continue;
    if (el.scrollWidth > el.clientWidth + 2 && style.display !== 'inline' && !el.closest('.scroller')) faults.push(`text runs out of ${name(el)}`);
  }
  // A word of up to a dozen letters that is parted; where words are small, one of less than a dozen.
  const texts = document.createTreeWalker(scope, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text; text = texts.nextNode()) {
    const el = text.parentElement;
    if (!el.checkVisibility() || el.closest('.heard, .skip, .path, script, style')) continue;
    const most = el.closest('h1, h2, h3, h4, button, a, summary, legend, th') ? 12 : 11;
    for (const { 0: word, index } of text.data.matchAll(/(?<![\p{L}\u00AD])\p{L}{3,12}(?![\p{L}\u00AD])/gu)) {
      if (word.length > most) continue;
      const range = document.createRange();
      range.setStart(text, index);
      range.setEnd(text, index + word.length);
      if (new Set([...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top))).size > 1) faults.push(`a word is parted: ${word}`);
    }
  }
  return faults;
}

/** What moves for longer than a picture, where none should: to a person who asked for no motion. */
export function motionFaults() {
  const long = (durations) => durations.split(',').some((one) => parseFloat(one) * (one.trim().endsWith('ms') ? 0.001 : 1) > 0.01);
  const faults = [];
  for (const el of document.querySelectorAll('*')) {
    for (const part of [null, '::before', '::after', '::backdrop']) {
      if (part === '::backdrop' && el.tagName !== 'DIALOG') continue;
      const style = getComputedStyle(el, part);
      const moves = (style.animationName !== 'none' && long(style.animationDuration)) || (style.transitionProperty !== 'none' && long(style.transitionDuration));
      if (moves || style.scrollBehavior === 'smooth') faults.push(`moves: ${el.tagName.toLowerCase()}.${el.classList}${part ?? ''}`);
    }
  }
  return faults;
}
