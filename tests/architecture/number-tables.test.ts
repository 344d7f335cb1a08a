/**
 * A table of numbers stands beside its source. A table is a list or record written out at the
 * top of a file with eight numbers or more, five of them different; its file must cite a source, or declare its numbers
 * as clinic choices.
 */
import { describe, expect, it } from 'vitest';
import { codeFiles, lineOf, type Node, parse, textOf, treeOf, withoutComments } from './repository.ts';

const fewestNumbers = 8;
const fewestDifferent = 5;

/** Tables of numbers that are no figures of a source, each with its reason. */
const allowed: ReadonlyMap<string, string> = new Map([
  [
    'src/core/exercises/',
    'How an exercise is set up (seat height, angle, hand height); its load is computed from this by cited models.',
  ],
  [
    'src/core/figures/',
    'How a drawn body stands and how thick its strokes are: a picture, from which nothing is computed.',
  ],
  [
    'src/core/record/',
    'Bounds of entry: they keep out slips of the finger, and nothing is computed from them.',
  ],
  ['src/core/prescribing/dose-request.ts', 'The same: bounds of what a clinician may ask for.'],
  ['src/core/assessment/measures/blood-pressure.ts', 'The same: bounds of what may be measured.'],
]);

const isAllowed = (file: string) => [...allowed.keys()].some((place) => file.startsWith(place));

const isFunction = (node: Node): boolean => /Function/.test(node.type);
const isTable = (node: Node): boolean => node.type === 'ArrayExpression' || node.type === 'ObjectExpression';

const children = (node: Node): readonly Node[] =>
  Object.values(node)
    .flat()
    .filter((value): value is Node => typeof value === 'object' && value !== null && 'type' in value);

/** Numbers in a literal, those inside functions left out. */
const numbersIn = (node: Node): readonly number[] => {
  if (isFunction(node)) return [];
  if (node.type === 'Literal') return typeof node.value === 'number' ? [node.value] : [];
  return children(node).flatMap(numbersIn);
};

const isNumberTable = (node: Node): boolean => {
  const numbers = numbersIn(node);
  return numbers.length >= fewestNumbers && new Set(numbers).size >= fewestDifferent;
};

/** The outermost tables at the top level of a file. */
const tablesOf = (node: Node): readonly Node[] => {
  if (isFunction(node)) return [];
  if (isTable(node)) return isNumberTable(node) ? [node] : [];
  return children(node).flatMap(tablesOf);
};

/** Input descriptors carry bounds of entry, which keep out slips of the finger and are no figures of a source. */
const isDescriptor = (text: string): boolean => /\bkind: '(number|integer|list|record|enum)'/.test(text);

const namesItsSource = (text: string): boolean =>
  /\bcitations?\b|\bCitation\b|\bsource: '|\bClinicSetting\b|\bsupport:/.test(text);

describe('no table of numbers without its source', () => {
  it('in any file of the core', () => {
    const found = codeFiles('src/core')
      .filter((file) => !file.startsWith('src/core/sources/') && !isAllowed(file))
      .filter((file) => !namesItsSource(withoutComments(file)))
      .flatMap((file) =>
        tablesOf(treeOf(file))
          .filter((table) => !isDescriptor(textOf(file).slice(table.start, table.end)))
          .map((table) => `${file}:${lineOf(file, table.start)}`),
      );
    expect(found).toEqual([]);
  });

  it('would find one, and lets eight numbers beside a citation pass', () => {
    const table = 'export const bands = [1, 2, 3, 4, 5, 6, 7, 8];';
    expect(tablesOf(parse(table, 'x.ts'))).toHaveLength(1);
    expect(tablesOf(parse('export const f = () => [1, 2, 3, 4, 5, 6, 7, 8];', 'x.ts'))).toHaveLength(0);
    expect(namesItsSource(table)).toBe(false);
    expect(namesItsSource(`${table} export const citation: Citation = x;`)).toBe(true);
  });
});
