// What comes late and moves what is there: nothing may slip away under a thumb,
// or come under it. Each is sent to the page as its source.

/** From the first picture on: notes what the browser says has moved though nobody pressed. */
export function watchMoves() {
  window.moved = [];
  const busy = () => document.querySelector('h1') === null || document.querySelector('[aria-busy=true]') !== null;
  /** Since when the screen is whole, ms. */
  let whole = Infinity;
  new MutationObserver(() => (whole = busy() ? Infinity : Math.min(whole, performance.now()))).observe(document, { subtree: true, childList: true, attributeFilter: ['aria-busy'] });
  const name = (node) => {
    const el = node instanceof Element ? node : node?.parentElement;
    return el ? `${el.tagName.toLowerCase()} “${(el.getAttribute('aria-label') ?? el.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 40)}”` : 'something';
  };
  new PerformanceObserver((seen) => {
    for (const { hadRecentInput, sources, startTime } of seen.getEntries()) {
      if (hadRecentInput) continue;
      for (const { node, previousRect: from, currentRect: to } of sources) {
        // Blank labels are not pressed; under a screen that is not shown yet the footer may grow.
        if (!node || node.matches?.('.blank') || (node.matches?.('footer') && startTime < whole + 20)) continue;
        window.moved.push(`moved ${name(node)} from ${from.x}, ${from.y} to ${to.x}, ${to.y}`);
      }
    }
  }).observe({ type: 'layout-shift', buffered: true });
}

/** Waits until all that was asked of the canned backend is answered and drawn, for some pictures on end; whether that came. */
export async function atRest() {
  const next = () => new Promise((resolve) => requestAnimationFrame(resolve));
  const waits = () => Number(document.documentElement.dataset.coming ?? 1) > 0 || document.querySelector('[aria-busy=true]') !== null;
  const until = performance.now() + 10_000;
  for (let still = 0; still < 5; still = waits() ? 0 : still + 1) {
    if (performance.now() > until) return false;
    await next();
  }
  return true;
}
