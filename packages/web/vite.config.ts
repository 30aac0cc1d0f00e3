import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** Paths of modules that must stay out of the first script; each names the chunk it goes to. */
const laterChunks: readonly [RegExp, string][] = [
  [/node_modules\/(zod|yaml)\//, 'sheet-language'],
  [/core\/src\/engine\/load\//, 'sheet-language'],
];

export default defineConfig(({ mode }) => ({
  base: '/',
  plugins: [react()],
  // Setting conditions replaces Vite's own list, so all of them are named.
  resolve: {
    conditions: ['source', 'module', 'browser', mode === 'production' ? 'production' : 'development'],
  },
  build: {
    outDir: 'dist-site',
    emptyOutDir: true,
    sourcemap: false,
    // Small files as data: addresses would need a wider content policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rollupOptions: {
      output: {
        manualChunks: (id: string) => laterChunks.find(([pattern]) => pattern.test(id))?.[1],
      },
    },
  },
  server: { proxy: { '/api': 'http://127.0.0.1:4180' } },
}));
