/** Who may know whom. The core knows nobody; only the data layer knows the store. */
import { describe, expect, it } from 'vitest';
import {
  codeFiles,
  type Graph,
  type Import,
  importGraph,
  importsOfTree,
  resolveImport,
  treeOf,
  wayTo,
} from './repository.ts';

type Layer =
  | 'core'
  | 'messages'
  | 'papers'
  | 'exchange'
  | 'data'
  | 'api'
  | 'server'
  | 'simulation'
  | 'ui'
  | 'app'
  | 'commands'
  | 'demo'
  | 'start'
  | 'tests'
  | 'tool';

const arrows: Readonly<Record<Layer, readonly Layer[]>> = {
  core: ['core'],
  messages: ['messages', 'core'],
  papers: ['papers', 'messages', 'core'],
  // Files for other programs, made from what is stored.
  exchange: ['exchange', 'data', 'messages', 'core'],
  simulation: ['simulation', 'core'],
  data: ['data', 'core'],
  api: ['api', 'exchange', 'papers', 'data', 'messages', 'core'],
  server: ['server', 'api', 'exchange', 'papers', 'data', 'messages', 'core'],
  ui: ['ui', 'api', 'messages', 'core'],
  app: ['app', 'ui', 'api', 'server', 'messages', 'core'],
  demo: ['demo', 'data', 'core'],
  commands: [
    'commands',
    'server',
    'api',
    'exchange',
    'papers',
    'messages',
    'simulation',
    'data',
    'core',
    'demo',
  ],
  // Next's own entry files directly under src: start-up and the request filter.
  start: ['start', 'server', 'api', 'data', 'core', 'demo'],
  tests: [
    'tests',
    'core',
    'messages',
    'papers',
    'exchange',
    'simulation',
    'data',
    'api',
    'server',
    'ui',
    'app',
    'commands',
    'demo',
    'start',
    'tool',
  ],
  tool: ['tool'],
};

const layerOf = (file: string): Layer => {
  if (file.startsWith('demo-clinic/')) return 'demo';
  if (file.startsWith('tests/')) return 'tests';
  const folder = /^src\/([a-z]+)\//.exec(file)?.[1];
  if (folder) return folder as Layer;
  return file.startsWith('src/') ? 'start' : 'tool';
};

/** Single files that more than their own layer may know, each with its reason. */
const openFiles: ReadonlyMap<string, readonly Layer[]> = new Map([
  // The names of the settings are checked by the commands before packages exist, and by the server.
  ['src/commands/environment.mjs', ['server', 'start']],
  // A start that cannot go on says so in the one way the commands do.
  ['src/commands/say.mjs', ['server']],
  // Start-up fills an empty file with the demo clinic when DEMO=1.
  ['demo-clinic/load.ts', ['server', 'start']],
  // What clinicians are shown of the trial, and their own rule tried on it; the rest of it stays with the commands.
  ['src/simulation/kept/kept-trial.ts', ['api']],
  ['src/simulation/kept/kept-row.ts', ['api']],
  ['src/simulation/kept/kept-proof.ts', ['api']],
  // The clinical clock of a demo starts at its today; the file imports nothing.
  ['demo-clinic/clinic.ts', ['server']],
]);

/** Whose pages a screen belongs to; null where it is shared. */
const sideOf = (file: string): 'patient' | 'clinician' | null => {
  if (/^src\/(ui\/patient|app\/\(patient\))\//.test(file)) return 'patient';
  return /^src\/(ui\/clinician|app\/\(clinician\))\//.test(file) ? 'clinician' : null;
};

const clientPackages = ['recharts', 'react-aria-components', '@trpc/', '@tanstack/', 'zod'];

const problem = (file: string, { from, isType }: Import): string | null => {
  const target = resolveImport(file, from);
  const layer = layerOf(file);
  if (target === null) {
    if (layer === 'core') return `${file} imports ${from}: the core imports nothing from outside`;
    if (/^(drizzle-orm|libsql)/.test(from) && !['data', 'tool', 'tests'].includes(layer)) {
      return `${file} imports ${from}: only the data layer knows the store`;
    }
    if (
      file.startsWith('src/ui/patient/') &&
      !isType &&
      clientPackages.some((name) => from.startsWith(name))
    ) {
      return `${file} imports ${from}: the patient's pages stay light`;
    }
    return null;
  }
  const toward = layerOf(target);
  if (openFiles.get(target)?.includes(layer)) return null;
  if (!arrows[layer].includes(toward)) return `${file} imports ${target}: ${layer} may not know ${toward}`;
  if (layer === 'ui' && toward === 'api' && !isType && !target.startsWith('src/api/inputs/')) {
    return `${file} imports ${target}: screens know the procedures' types and inputs only`;
  }
  if (file.endsWith('/queries.ts') && target.endsWith('/commands.ts')) {
    return `${file} imports ${target}: queries never import commands`;
  }
  const [side, other] = [sideOf(file), sideOf(target)];
  return layer === 'ui' && other && side !== other
    ? `${file} imports ${target}: only the ${other}’s pages know what is theirs`
    : null;
};

const problems = (file: string, imports: readonly Import[]) =>
  imports.map((one) => problem(file, one)).filter((text) => text !== null);

/** Ways from a page of one side to a file of the other, however many files lie between. */
const meetings = (graph: Graph): readonly string[] =>
  [...graph.keys()].flatMap((file) => {
    const side = sideOf(file);
    const way = side && wayTo(graph, file, (target) => ![null, side].includes(sideOf(target)));
    return way ? [way.join(' → ')] : [];
  });

describe('every import follows an arrow of the map', () => {
  it('in all code', () => {
    const found = codeFiles('src', 'demo-clinic', 'tests').flatMap((file) =>
      problems(file, importsOfTree(treeOf(file))),
    );
    expect(found).toEqual([]);
  });

  it('names its target with the file’s extension, inside the repository', () => {
    const found = codeFiles('src', 'demo-clinic', 'tests').flatMap((file) =>
      importsOfTree(treeOf(file))
        .filter(({ from }) => /^[.#]/.test(from) && !/\.(ts|tsx|mjs|js|json|css)$/.test(from))
        .map(({ from }) => `${file} imports ${from}`),
    );
    expect(found).toEqual([]);
  });

  it('and no way along imports joins the patient’s pages and the clinician’s', () => {
    expect(meetings(importGraph('src'))).toEqual([]);
  });

  it('nor would one behind shared files be missed', () => {
    const graph = new Map([
      ['src/ui/clinician/a.tsx', ['src/ui/design-system/b.ts']],
      ['src/ui/design-system/b.ts', ['src/ui/account/c.ts']],
      ['src/ui/account/c.ts', ['src/ui/patient/d.ts']],
    ]);
    expect(meetings(graph)).toEqual([
      'src/ui/clinician/a.tsx → src/ui/design-system/b.ts → src/ui/account/c.ts → src/ui/patient/d.ts',
    ]);
  });

  it.each([
    ['src/core/a.ts', 'zod', false],
    ['src/core/a.ts', 'node:fs', false],
    ['src/core/a.ts', '#data/patients/people.ts', true],
    ['src/core/screening/a.ts', '../../data/people.ts', false],
    ['src/data/a.ts', '#api/trpc.ts', false],
    ['src/api/a.ts', 'drizzle-orm', false],
    ['src/api/a.ts', '#ui/language/words.ts', false],
    ['src/ui/clinician/a.tsx', '#data/patients/people.ts', false],
    ['src/ui/clinician/a.tsx', '#api/root.ts', false],
    ['src/ui/clinician/a.tsx', '#ui/patient/today.tsx', false],
    ['src/ui/patient/a.tsx', '../clinician/answers.ts', true],
    ['src/ui/design-system/a.tsx', '#ui/patient/today.tsx', true],
    ['src/data/worklist/queries.ts', './commands.ts', false],
    ['src/ui/patient/a.tsx', 'recharts', false],
    ['src/app/page.tsx', '#data/patients/people.ts', false],
    ['demo-clinic/a.ts', '#api/root.ts', false],
  ])('%s may not import %s', (file, from, isType) => {
    expect(problems(file, [{ from, isType }])).toHaveLength(1);
  });

  it.each([
    ['src/ui/clinician/a.tsx', '#api/root.ts', true],
    ['src/ui/clinician/a.tsx', '#api/inputs/from-descriptor.ts', false],
    ['src/api/a.ts', '#data/patients/people.ts', false],
    ['src/server/a.ts', '#commands/environment.mjs', false],
  ])('%s may import %s', (file, from, isType) => {
    expect(problems(file, [{ from, isType }])).toEqual([]);
  });
});
