// Where whoever goes by keys is: whether that is what they look for, and what is
// wrong with how it is shown. 2.4.7 and 2.4.11 of WCAG 2.2: one sees what has the
// focus, and not all of it is hidden.
const [target] = arguments;
const it = document.activeElement;
if (it === document.body || it === document.documentElement) return { there: false, wrong: '' };
const label = ['radio', 'checkbox', 'file'].includes(it.type) ? it.closest('label') : null;
const shown = label ?? it;
const outlined = [it, label].some((part) => {
  const style = part && getComputedStyle(part);
  return style && style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2;
});
const { left, top, width, height } = shown.getBoundingClientRect();
const clear = [[0.5, 0.5], [0.1, 0.5], [0.9, 0.5], [0.5, 0.1], [0.5, 0.9]].some(([x, y]) => {
  const over = document.elementFromPoint(left + width * x, top + height * y);
  return over !== null && (shown.contains(over) || (over.contains(shown) && !over.matches('html, body, main, .app')));
});
const name = `${it.tagName.toLowerCase()} ${it.type ?? ''} “${(it.ariaLabel ?? it.labels?.[0]?.textContent ?? it.textContent).trim().slice(0, 60)}”`;
const wrong = !outlined ? 'has no outline' : !clear ? 'is hidden' : '';
return { there: it === target, wrong: wrong && `${name} ${wrong}` };
