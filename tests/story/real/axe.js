// What axe-core finds wrong: each rule that is broken, and by what.
const [runOnly, done] = arguments;
// As long as what is in it: what would have to be scrolled to counts as hidden.
const long = new CSSStyleSheet();
long.replaceSync('.app { block-size: auto !important } main, dialog { overflow: visible !important; max-block-size: none !important }');
document.adoptedStyleSheets = [long];
const told = (found) => ((document.adoptedStyleSheets = []), done(found));
axe.run(document, { runOnly, resultTypes: ['violations'] }).then(
  ({ violations }) => told(violations.map(({ id, nodes }) => `${id}: ${nodes.slice(0, 3).map((node) => node.target.join(' ')).join(', ')}`)),
  (error) => told([`axe-core stopped: ${error}`]),
);
