import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const below = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Where the workroom's server listens while the page is being worked on. */
const server = `http://127.0.0.1:${process.env.EASEWRIGHT_PORT ?? '8420'}`;

export default defineConfig({
  root: below('web'),
  base: '/',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: below('dist/web'),
    emptyOutDir: true,
    target: 'es2022',
    // The page's content policy allows no data: addresses for scripts and fonts, so nothing is written into another file.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  server: {
    host: '127.0.0.1',
    port: 8410,
    strictPort: true,
    fs: { allow: [below('.')] },
    proxy: { '/api': { target: server, changeOrigin: true, headers: { origin: server } } },
  },
});
