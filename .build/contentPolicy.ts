import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';

/**
 * What the built page may load and run: its own files and nothing else. Pictures may also come from memory
 * (a photograph of a test card, a map to save), and so may the style sheets named by `styles`: texts of the
 * reports that are shown in a frame, which is under the same policy. No script is ever made from text.
 */
function policy(styles: readonly string[]): string {
  const hashes = styles.map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`);
  return [
    "default-src 'none'",
    "script-src 'self'",
    `style-src 'self' ${hashes.join(' ')}`,
    "img-src 'self' blob: data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "form-action 'none'",
    "base-uri 'none'",
  ].join('; ');
}

/**
 * Writes a Content-Security-Policy into the built page, so that it holds on any host. Only into the built
 * one: the developer's server puts scripts of its own into the page.
 */
export function contentPolicy(styles: readonly string[]): Plugin {
  return {
    name: 'crosscoat-content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: policy(styles) }, injectTo: 'head-prepend' },
    ],
  };
}
