// What a person would point at: elements of a kind, by their words. Given the
// kind, the words ("" for any) and the places to look in, outermost first, each
// [kind, words]. Exact words win over a beginning, a beginning over a part.
// Nothing (null) while a screen shows its head and the rest is still to come.
const [kind, words, within] = arguments;
const kinds = {
  button: 'button, summary, [role=button]',
  link: 'a[href]',
  field: 'input:not([type=radio], [type=checkbox]), textarea, select',
  choice: 'input[type=radio]',
  tick: 'input[type=checkbox]',
  heading: 'h1, h2, h3, h4',
  section: 'section',
  article: 'article',
  group: 'fieldset, [role=group]',
  table: 'table',
  line: 'li, tr',
};
const clean = (text) => (text ?? '').replace(/\s+/g, ' ').trim();
const text = (ids) => ids.split(' ').map((id) => document.getElementById(id)?.textContent).join(' ');

function nameOf(element) {
  const by = element.getAttribute('aria-labelledby');
  if (by) return clean(text(by));
  const label = element.getAttribute('aria-label');
  if (label) return clean(label);
  if (element.labels?.length > 0) return clean([...element.labels].map((l) => l.textContent).join(' '));
  const head = { FIELDSET: 'legend', TABLE: 'caption', SECTION: 'h1, h2, h3, h4', ARTICLE: 'h1, h2, h3, h4' }[element.tagName];
  if (head) return clean(element.querySelector(head)?.textContent);
  return clean(element.textContent);
}

function matching(root, kind, words) {
  const shown = [...root.querySelectorAll(kinds[kind])].filter((e) => e.checkVisibility({ visibilityProperty: true }));
  const wanted = clean(words).toLowerCase();
  const named = shown.map((element) => ({ element, name: nameOf(element).toLowerCase() }));
  for (const fits of [
    (name) => name === wanted,
    (name) => name.startsWith(wanted),
    (name) => name.includes(wanted),
  ]) {
    const found = named.filter(({ name }) => fits(name)).map(({ element }) => element);
    if (found.length > 0) return found;
  }
  return [];
}

if (document.querySelector('[aria-busy=true]')) return null;
// An open sheet is all that can be reached.
let roots = [[...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body];
for (const [part, named] of within) roots = roots.flatMap((root) => matching(root, part, named));
return [...new Set(roots.flatMap((root) => matching(root, kind, words)))];
