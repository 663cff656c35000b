import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';

/**
 * Makes the built page installable, and whole without a network: a service worker puts every file of the
 * build aside when it is installed. A newer one waits until the reader asks for it or has closed every window
 * (src/app/offline); nothing is ever fetched from another host.
 */
export function installable(): Plugin[] {
  return VitePWA({
    registerType: 'prompt',
    // The page registers it by itself, after the first film (src/views/showWindow.tsx).
    injectRegister: false,
    manifest: {
      name: 'Crosscoat',
      short_name: 'Crosscoat',
      description: 'Lay a coat in the computer before laying it on the part.',
      lang: 'en',
      start_url: './',
      scope: './',
      display: 'standalone',
      background_color: '#f7f4ec',
      theme_color: '#f7f4ec',
      icons: [
        { src: 'icon.svg', sizes: 'any', type: 'image/svg+xml' },
        { src: 'icon-192.png', sizes: '192x192', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png' },
        { src: 'icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
      ],
    },
    workbox: {
      globPatterns: ['**/*.{html,js,css,csv,json,svg,png,wasm}'],
      // Other pages in the same folder are none of its business.
      navigateFallback: null,
      // Its name changes with its content, so it is never fetched twice.
      dontCacheBustURLsMatching: /assets\//,
      maximumFileSizeToCacheInBytes: 8e6,
      inlineWorkboxRuntime: true,
      sourcemap: false,
      // The first window is without a network too, before it is loaded again.
      clientsClaim: true,
      skipWaiting: false,
      cleanupOutdatedCaches: true,
      // Pieces of the version before, put there for the windows that still run it.
      runtimeCaching: [{ urlPattern: /\/assets\//, handler: 'CacheFirst', options: { cacheName: 'crosscoat-earlier' } }],
    },
  });
}
