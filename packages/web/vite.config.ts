import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

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
  },
  // The server answers only to its own address, so the proxy speaks in its name.
  server: {
    proxy: {
      '/api': { target: 'http://127.0.0.1:4730', changeOrigin: true, headers: { origin: 'http://127.0.0.1:4730' } },
    },
  },
}));
