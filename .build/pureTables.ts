import type { Plugin } from 'vite';

/** Packages that keep every table they have, since each is made by a call when the module is read. */
const PACKAGES = /node_modules\/d3-(?:scale-chromatic|interpolate)\//;

/**
 * Tells the bundler that what these packages make at the top of a module has no effect but itself, so
 * that what nobody reads is left out: some forty colour schemes and five colour spaces, 8 KiB of the
 * page's first load.
 */
export function pureTables(): Plugin {
  return {
    name: 'crosscoat-pure-tables',
    apply: 'build',
    transform(code, id) {
      if (!PACKAGES.test(id)) return null;
      const made = this.parse(code).body
        .flatMap((statement) => (statement.type === 'VariableDeclaration' ? statement.declarations : []))
        .flatMap(({ init }) => (init?.type === 'CallExpression' ? [init] : []));
      let pure = code;
      for (const { start, end } of made.reverse()) {
        pure = `${pure.slice(0, start)}/* @__PURE__ */ (() => ${pure.slice(start, end)})()${pure.slice(end)}`;
      }
      return { code: pure, map: null };
    },
  };
}
