const names = ['round', 'sow', 'trays', 'tray', 'seed', 'packet', 'year', 'labels', 'find', 'search', 'settings', 'keep', 'paper'] as const;
export type RouteName = (typeof names)[number];

export interface Route {
  name: RouteName;
  id: string;
}

export function readRoute(hash: string): Route {
  const [name = '', id = ''] = hash.replace(/^#\/?/, '').split('/');
  const known = names.find((n) => n === name) ?? 'round';
  return { name: known, id: decodeURIComponent(id) };
}

export function href(name: RouteName, id = ''): string {
  return id ? `#/${name}/${encodeURIComponent(id)}` : `#/${name}`;
}

/** Where the grower is, by the address's hash. */
export class Router {
  route: Route = $state(readRoute(location.hash));

  constructor() {
    window.addEventListener('hashchange', () => (this.route = readRoute(location.hash)));
  }

  go(name: RouteName, id = '') {
    location.hash = href(name, id);
  }
}
