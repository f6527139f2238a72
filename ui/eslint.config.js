import globals from 'globals';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import svelteConfig from './svelte.config.js';

const onlyTauriFile = {
  'no-restricted-imports': [
    'error',
    { patterns: [{ group: ['@tauri-apps/*'], message: 'Only src/backend/tauri.ts talks to the shell.' }] },
  ],
};

const apart = (domain, others) => ({
  files: [`src/components/${domain}/**`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          { group: ['@tauri-apps/*'] },
          { group: [...others.map((o) => `**/${o}/*`), '**/views/*'], message: 'Shared parts know no domain.' },
        ],
      },
    ],
  },
});

export default ts.config(
  { ignores: ['dist/', 'node_modules/', 'src/backend/generated/'] },
  ...ts.configs.recommended,
  ...svelte.configs.recommended,
  {
    languageOptions: { globals: { ...globals.browser, ...globals.node } },
    rules: {
      ...onlyTauriFile,
      '@typescript-eslint/no-explicit-any': 'error',
      'svelte/no-navigation-without-resolve': 'off',
      'svelte/prefer-svelte-reactivity': 'off',
    },
  },
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: { parserOptions: { parser: ts.parser, svelteConfig } },
  },
  { files: ['src/backend/tauri.ts'], rules: { 'no-restricted-imports': 'off' } },
  apart('shared', ['tray', 'round', 'seed', 'sow', 'settings']),
  apart('tray', ['round', 'seed', 'sow', 'settings']),
  apart('seed', ['round', 'tray', 'sow', 'settings']),
  apart('settings', ['round', 'tray', 'sow', 'seed']),
);
