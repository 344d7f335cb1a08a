/** The document of the interface for other programs: valid, whole, and never changed so that a program breaks. */
import { readFileSync } from 'node:fs';
import { Validator } from '@seriousme/openapi-schema-validator';
import { describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import { interfaceDocument } from '#api/programs/document.ts';
import { exported, exportedAt, interfaceRoot } from '#api/programs/exported.ts';
import { run } from '#commands/exchange/interface.ts';
import { tokenScopes } from '#core/clinic/token-scopes.ts';
import { runHere } from '#tests/support/command-here.ts';
import { breaks, type InterfaceDocument } from './breaks.ts';

const kept = new URL('kept-document.json', import.meta.url);
const documentOf = (): InterfaceDocument => JSON.parse(JSON.stringify(interfaceDocument()));
const document = documentOf();
const keptDocument: InterfaceDocument = JSON.parse(readFileSync(kept, 'utf8'));

/** Every schema of the document, by where it stands. */
const schemasIn = (part: unknown, place = '#'): readonly (readonly [string, object])[] => {
  if (typeof part !== 'object' || part === null) return [];
  const at = place.split('/').at(-1)!;
  const isNamed = /\/(properties|schemas)\/[^/]+$/.test(place);
  const isSchema = isNamed || ['schema', 'items'].includes(at) || /\/(anyOf|oneOf)\/\d+$/.test(place);
  return [
    ...(isSchema ? [[place, part] as const] : []),
    ...Object.entries(part).flatMap(([name, inner]) => schemasIn(inner, `${place}/${name}`)),
  ];
};

describe('the document', () => {
  it('is OpenAPI 3.1 as a validator of others reads it, which refuses it with a fault', async () => {
    expect(document).toMatchObject({ openapi: '3.1.0' });
    expect(await new Validator().validate(interfaceDocument())).toEqual({ valid: true });
    const { info: _, ...faulty } = documentOf() as unknown as Record<string, unknown>;
    expect(await new Validator().validate(faulty)).toMatchObject({ valid: false });
  });

  it('has no schema that says nothing', () => {
    const all = schemasIn(document);
    expect(all.length).toBeGreaterThan(300);
    const says = ['$ref', 'type', 'enum', 'const', 'anyOf', 'oneOf'];
    expect(all.filter(([, schema]) => !says.some((name) => name in schema)).map(([place]) => place)).toEqual(
      [],
    );
  });

  it('names every procedure for programs, each once, and each scope', () => {
    const built = procedureLines().filter(({ path }) => path.startsWith('programs.'));
    expect(exported.map(({ procedure }) => `programs.${procedure}`).sort()).toEqual(
      built.map(({ path }) => path).sort(),
    );
    expect(new Set(exported.map(({ scope }) => scope))).toEqual(new Set(tokenScopes));
    expect(built.filter(({ kind }) => kind !== 'query')).toEqual([]);
  });

  it('lets every list be asked for what changed since', () => {
    const lists = Object.values(document.paths).filter(({ get }) => get!.operationId !== 'plan');
    expect(lists).toHaveLength(6);
    for (const { get } of lists) expect(get!.parameters.map(({ name }) => name)).toContain('changedSince');
  });

  it('is what the command writes', async () => {
    const { code, out } = await runHere(run, [], {});
    expect([code, JSON.parse(out)]).toEqual([0, document]);
    expect(await runHere(run, ['--to', 'x'], {})).toMatchObject({ code: 2 });
  });

  it('leads from an address to its procedure, and from another to none', () => {
    expect(exportedAt('/people/p-1/plan')).toMatchObject({ one: { procedure: 'plan' }, patientId: 'p-1' });
    for (const path of ['/', '/people/p-1', '/people/p-1/plan/x', '/Worklist', '/plan'])
      expect(exportedAt(path)).toBeNull();
    expect(document.servers[0]!.url).toBe(interfaceRoot);
  });
});

type Path = readonly (string | number)[];
type Change = (one: InterfaceDocument) => void;

const partAt = (one: unknown, path: Path): Record<string, unknown> & unknown[] =>
  path.reduce((part, name) => (part as Record<string, unknown>)[name], one) as never;

/** One place of the document written anew, taken out, or with one more in its list. */
const put =
  (path: Path, value: unknown): Change =>
  (one) => {
    partAt(one, path.slice(0, -1))[path.at(-1) as never] = value as never;
  };
const cut =
  (path: Path): Change =>
  (one) => {
    delete partAt(one, path.slice(0, -1))[path.at(-1) as never];
  };
const more =
  (path: Path, value: unknown): Change =>
  (one) => {
    partAt(one, path).push(value);
  };

const changed = (change: Change): InterfaceDocument => {
  const one = documentOf();
  change(one);
  return one;
};

const schemas = ['components', 'schemas'];
const session = [...schemas, 'Sessions', 'properties', 'rows', 'items'];
const ofSession = [...session, 'properties'];
const ofExercise = [...schemas, 'Plan', 'properties', 'exercises', 'items', 'properties'];
const parameters = ['paths', '/people', 'get', 'parameters'];
const text = { type: 'string' };
const parameter = (required: boolean) => ({ name: 'x', in: 'query', required, schema: text });

const breaking: readonly (readonly [string, Change, string])[] = [
  ['an address is gone', cut(['paths', '/worklist']), '/worklist is gone'],
  ['a field is gone', cut([...ofSession, 'day']), 'day is gone'],
  ['a field may be left out', put([...session, 'required'], ['id']), 'may be left out now'],
  ['a field may be null', put([...ofSession, 'day', 'type'], ['string', 'null']), 'may be null now'],
  ['a field is of another type', put([...ofSession, 'day', 'type'], 'number'), 'may be number now'],
  ['a word is new', more([...ofSession, 'kind', 'enum'], 'x'), 'a value that was not there'],
  ['a shape of a dose is new', more([...ofExercise, 'dose', 'anyOf'], text), 'a shape that was not there'],
  ['a parameter is gone', cut([...parameters, 0, 'in']), '/people?changedSince is gone'],
  ['a parameter must be sent', put([...parameters, 0, 'required'], true), 'must be sent now'],
  ['a new parameter must be sent', more(parameters, parameter(true)), '/people?x must be sent now'],
  ['fewer may be asked for', put([...parameters, 2, 'schema', 'maximum'], 199), 'takes less than before'],
  ['it stands at another root', put(['servers', 0, 'url'], '/v2'), 'the root is another one'],
];

const harmless: readonly (readonly [string, Change])[] = [
  ['a field is new', put([...ofSession, 'x'], text)],
  ['an address is new', put(['paths', '/x'], {})],
  ['a parameter is new that need not be sent', more(parameters, parameter(false))],
  ['more may be asked for', put([...parameters, 2, 'schema', 'maximum'], 201)],
  ['a description reads otherwise', put(['info', 'description'], 'x')],
];

describe('a change of the interface', () => {
  it('breaks no program that was written for the kept one', () => {
    expect(breaks(keptDocument, document)).toEqual([]);
  });

  it('that adds something is kept with the next: `npm run --silent interface > tests/api/programs/kept-document.json`', () => {
    expect(breaks(document, keptDocument)).toEqual([]);
  });

  it.each(breaking)('where %s is found', (_what, change, said) => {
    expect(breaks(document, changed(change)).join('\n')).toContain(said);
  });

  it.each(harmless)('where %s breaks nobody', (_what, change) => {
    expect(breaks(document, changed(change))).toEqual([]);
  });
});
