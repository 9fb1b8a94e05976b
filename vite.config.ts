import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { shellPlugin } from './src/web/serviceWorker/shellPlugin.ts';

export default defineConfig({
  root: 'src/web',
  plugins: [react(), shellPlugin()],
  worker: { format: 'es' },
  build: {
    outDir: '../../dist/web',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    // The content security policy allows no data: fonts or scripts, so nothing is inlined.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: {
    proxy: {
      '/api': { target: 'http://127.0.0.1:8327', changeOrigin: true, headers: { origin: 'http://127.0.0.1:8327' } },
    },
  },
});
