import { svelte } from '@sveltejs/vite-plugin-svelte';
import { svelteTesting } from '@testing-library/svelte/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig(({ mode }) => ({
  base: './',
  clearScreen: false,
  plugins: [svelte(), ...(mode === 'test' ? [svelteTesting()] : [])],
  server: {
    port: 1420,
    strictPort: true,
    host: process.env.TAURI_DEV_HOST || false,
    watch: { ignored: ['**/src-tauri/**'] },
  },
  build: {
    target: 'es2022',
    sourcemap: false,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        // What the start needs comes in one piece: each more is a way to the shell and back.
        codeSplitting: { groups: [{ name: 'start', test: /src\/main\.ts$/ }] },
      },
    },
  },
  test: {
    environment: 'happy-dom',
    include: ['tests/**/*.test.ts'],
    setupFiles: ['tests/setup.ts'],
    restoreMocks: true,
    testTimeout: 60_000,
  },
}));
