import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

/** The stages in the order of the work. A stage may use the types of the stages to its left. */
const STAGES = [
  'job', 'panel', 'mix', 'air', 'gun', 'stroke', 'deposit', 'film', 'verdict', 'scheme', 'survey', 'log', 'picture', 'report',
];
const ROOT = resolve(import.meta.dirname, '..');
/** Packages that the model may stand on: all pure, none touches a page or Node. */
const MODEL_PACKAGES = ['psychrolib', 'simplex-noise', 'd3-scale', 'd3-scale-chromatic', 'd3-dsv', 'svgpath', 'valibot', '@valibot/to-json-schema', 'ml-levenberg-marquardt', 'ml-matrix', 'ical-generator', 'canonicalize', '@noble/hashes'];

interface Import {
  readonly from: string;
  /** Path from the root, or a package's name. */
  readonly to: string;
  readonly typeOnly: boolean;
}

function sourceFiles(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return sourceFiles(path);
    return /\.tsx?$/.test(name) && !name.endsWith('.d.ts') ? [path] : [];
  });
}

function isTypeOnly(clause: ts.ImportClause | undefined): boolean {
  if (clause === undefined) return false;
  if (clause.isTypeOnly) return true;
  const names = clause.namedBindings;
  return clause.name === undefined && names !== undefined && ts.isNamedImports(names) && names.elements.every((e) => e.isTypeOnly);
}

function importsOf(path: string): Import[] {
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.Latest, true);
  const found: Import[] = [];
  const add = (specifier: string, typeOnly: boolean) => {
    const to = specifier.startsWith('.') ? relative(ROOT, resolve(dirname(path), specifier)) : specifier;
    found.push({ from: relative(ROOT, path), to, typeOnly });
  };
  const visit = (node: ts.Node) => {
    if (ts.isImportDeclaration(node) && ts.isStringLiteral(node.moduleSpecifier)) {
      add(node.moduleSpecifier.text, isTypeOnly(node.importClause));
    } else if (ts.isExportDeclaration(node) && node.moduleSpecifier !== undefined && ts.isStringLiteral(node.moduleSpecifier)) {
      add(node.moduleSpecifier.text, node.isTypeOnly);
    } else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
      const [target] = node.arguments;
      if (target !== undefined && ts.isStringLiteral(target)) add(target.text, false);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const modelImports = sourceFiles(join(ROOT, 'sim')).flatMap(importsOf);
const shellImports = sourceFiles(join(ROOT, 'src')).flatMap(importsOf);

/** Second part of `sim/deposit/x.ts`: the room. `sim/index.ts` is the front door. */
function room(path: string): string {
  return path.split('/')[1]?.replace(/\.ts$/, '') ?? '';
}

/** Why an import from one room of the model to another is not allowed, or null. */
function modelFault({ from, to, typeOnly }: Import): string | null {
  if (!to.startsWith('sim/')) {
    if (to.startsWith('..') || to.startsWith('src/') || to.startsWith('tests/')) return 'leaves the model';
    const name = to.startsWith('@') ? to.split('/').slice(0, 2).join('/') : (to.split('/')[0] ?? '');
    return MODEL_PACKAGES.includes(name) ? null : 'package is not on the model’s list';
  }
  const here = room(from);
  const there = room(to);
  if (here === there || here === 'index') return null;
  if (there === 'base') return null;
  if (here === 'base') return 'base imports nothing of the model';
  if (there === 'materials') return null;
  if (here === 'materials') return 'materials import base only';
  if (here === 'run') return STAGES.includes(there) ? null : 'run imports stages';
  if (!typeOnly) return 'a stage does not call another stage';
  return STAGES.indexOf(there) >= 0 && STAGES.indexOf(there) < STAGES.indexOf(here) ? null : 'the types of a stage to the right';
}

/** Why an import in a shell is not allowed, or null. */
function shellFault({ from, to }: Import): string | null {
  const here = room(from);
  if (to.startsWith('sim/')) return to === 'sim/index.ts' || /\.(csv|json)\?url$/.test(to) ? null : 'shells enter the model by sim/index.ts';
  if (!to.startsWith('src/')) return null;
  const there = room(to);
  if (here === 'cli' && there !== 'cli' && there !== 'workshop') return 'the command line imports no page';
  if (here !== 'cli' && there === 'cli') return 'a page imports no command line';
  if (here === 'workshop' && there !== 'workshop') return 'what page and command share knows neither';
  if (here === 'canvas' && ['views', 'app', 'storage', 'worker'].includes(there)) return 'the canvas knows its scene only';
  if (here === 'views' && there === 'canvas' && !/canvas\/(spray\/)?\w*[sS]cene\.ts$/.test(to)) return 'views reach the canvas through its scene';
  if (here === 'charts' && ['views', 'app', 'canvas', 'worker', 'storage'].includes(there)) return 'charts are given their data';
  return null;
}

function faults(imports: readonly Import[], fault: (i: Import) => string | null): string[] {
  return imports.flatMap((i) => {
    const why = fault(i);
    return why === null ? [] : [`${i.from} -> ${i.to}: ${why}`];
  });
}

/** Files on an import cycle, by depth-first search; type-only imports count too in the model. */
function cycles(imports: readonly Import[]): string[] {
  const next = new Map<string, string[]>();
  for (const { from, to } of imports) next.set(from, [...(next.get(from) ?? []), to]);
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const walk = (file: string, trail: readonly string[]) => {
    if (state.get(file) === 'done') return;
    if (state.get(file) === 'open') {
      found.push([...trail.slice(trail.indexOf(file)), file].join(' -> '));
      return;
    }
    state.set(file, 'open');
    for (const target of next.get(file) ?? []) walk(target, [...trail, file]);
    state.set(file, 'done');
  };
  for (const file of next.keys()) walk(file, []);
  return found;
}

describe('the house', () => {
  it('reads every file', () => {
    expect(modelImports.length).toBeGreaterThan(50);
    expect(shellImports.length).toBeGreaterThan(20);
  });
  it('keeps the import table inside the model', () => {
    expect(faults(modelImports, modelFault)).toEqual([]);
  });
  it('lets shells in by the front door only', () => {
    expect(faults(shellImports, shellFault)).toEqual([]);
  });
  it('has no import cycle', () => {
    expect(cycles([...modelImports, ...shellImports])).toEqual([]);
  });
  it('finds a planted fault of each kind', () => {
    const planted: Import[] = [
      { from: 'sim/gun/a.ts', to: 'sim/deposit/b.ts', typeOnly: true },
      { from: 'sim/deposit/a.ts', to: 'sim/gun/b.ts', typeOnly: false },
      { from: 'sim/base/a.ts', to: 'sim/gun/b.ts', typeOnly: true },
      { from: 'sim/run/a.ts', to: 'src/app/b.ts', typeOnly: false },
      { from: 'sim/gun/a.ts', to: 'pixi.js', typeOnly: false },
    ];
    expect(faults(planted, modelFault)).toHaveLength(planted.length);
    expect(cycles([{ from: 'a', to: 'b', typeOnly: false }, { from: 'b', to: 'a', typeOnly: false }])).toEqual(['a -> b -> a']);
  });
});
