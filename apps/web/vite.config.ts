import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

export default defineConfig({
  root: fileURLToPath(new URL('.', import.meta.url)),
  plugins: [react()],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    // Small files as data: addresses would need a wider content security policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        codeSplitting: {
          // What comes first takes what later groups share with it, so that the charts stay out of the first page.
          groups: [
            { name: 'base', test: /node_modules[\\/](react|react-dom|scheduler|@tanstack)[\\/]/ },
            { name: 'shapes', test: /node_modules[\\/](zod|decimal\.js)[\\/]/ },
            {
              name: 'controls',
              test: /node_modules[\\/](react-aria|react-stately|@react-|@internationalized)/,
            },
            {
              name: 'charts',
              test: /node_modules[\\/](recharts|d3-|victory-vendor|@reduxjs|react-redux|redux)/,
            },
          ],
        },
      },
    },
  },
  server: {
    host: '127.0.0.1',
    proxy: { '/api/': { target: process.env.API_URL ?? 'http://127.0.0.1:4600' } },
  },
});
